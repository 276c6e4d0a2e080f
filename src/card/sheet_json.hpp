// SPDX-License-Identifier: MIT
#pragma once
// A sheet as a value of JSON.

#include <string>

#include "card/json_document.hpp"
#include "platewright/card/sheet.hpp"

namespace platewright {

/// What `write_json` writes; of the arrays the one named alone, where `only` names one.
Json json_of_sheet(const Sheet& sheet, const std::string& only = "");

}  // namespace platewright
