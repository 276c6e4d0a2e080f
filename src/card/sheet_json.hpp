// SPDX-License-Identifier: MIT
#pragma once
// A sheet as a value of JSON.

#include <nlohmann/json.hpp>
#include <string>

#include "platewright/card/sheet.hpp"

namespace platewright {

/// What `write_json` writes; of the arrays the one named alone, where `only` names one.
nlohmann::ordered_json json_of_sheet(const Sheet& sheet, const std::string& only = "");

}  // namespace platewright
