// SPDX-License-Identifier: MIT
// Stands in for `write_workbook.cpp` where libxlsxwriter is not there.

#include "platewright/problem/catalogue/workbooks.hpp"
#include "platewright/problem/failure.hpp"
#include "platewright/workbook/write_workbook.hpp"

namespace platewright {

std::string write_workbook(const Workbook&) {
  throw Failure(problems::workbook_not_built());
}

}  // namespace platewright
