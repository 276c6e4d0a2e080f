// SPDX-License-Identifier: MIT
#pragma once
// The floor of workbooks: what a spreadsheet opens.

#include "platewright/workbook/event_workbook.hpp"
#include "platewright/workbook/workbook.hpp"
#include "platewright/workbook/write_workbook.hpp"
