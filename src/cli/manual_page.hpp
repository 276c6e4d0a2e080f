// SPDX-License-Identifier: MIT
#pragma once
// The manual page, in the language of `man` (man-pages(7), groff_man(7)).

#include <string>

#include "cli/command_page.hpp"

namespace platewright::cli {

std::string manual_page(const ProgramPage& program);

}  // namespace platewright::cli
