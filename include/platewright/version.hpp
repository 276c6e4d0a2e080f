// SPDX-License-Identifier: MIT
#pragma once
// Which version of the library this is.

/// `MAJOR.MINOR.PATCH`, as the package names it.
#define PLATEWRIGHT_VERSION "0.1.0"
