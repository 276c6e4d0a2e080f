// SPDX-License-Identifier: MIT
#pragma once
// The book: all that a kitchen has written down, with the built-in tables.

#include "platewright/book/book.hpp"
#include "platewright/book/builders.hpp"
#include "platewright/book/check_book.hpp"
#include "platewright/book/checked_files.hpp"
#include "platewright/book/file_kind.hpp"
#include "platewright/book/kitchen_for.hpp"
#include "platewright/book/tables.hpp"
