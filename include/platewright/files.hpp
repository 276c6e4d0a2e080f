// SPDX-License-Identifier: MIT
#pragma once
// Books, worksheets and price lists read from files.

#include "platewright/files/check_files.hpp"
#include "platewright/files/exercise_file.hpp"
#include "platewright/files/file_schema.hpp"
#include "platewright/files/problem_text.hpp"
#include "platewright/files/quotable_line.hpp"
#include "platewright/files/read_book.hpp"
#include "platewright/files/read_class.hpp"
#include "platewright/files/read_core_log.hpp"
#include "platewright/files/read_vessel.hpp"
#include "platewright/files/read_worksheet.hpp"
#include "platewright/files/take_in_prices.hpp"
#include "platewright/files/take_in_recipe.hpp"
#include "platewright/files/time_zones.hpp"
