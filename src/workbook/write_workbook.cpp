// SPDX-License-Identifier: MIT
#include "platewright/workbook/write_workbook.hpp"

#include <unistd.h>
#include <xlsxwriter.h>

#include <cstdio>
#include <ctime>
#include <map>
#include <memory>
#include <tuple>
#include <utility>

#include "platewright/number/nearest_double.hpp"
#include "platewright/problem/catalogue/workbooks.hpp"
#include "workbook/cell_text.hpp"
#include "workbook/whole_workbook.hpp"

namespace platewright {
namespace {

void check(lxw_error error) {
  if (error != LXW_NO_ERROR) throw Failure(problems::workbook_not_written(lxw_strerror(error)));
}

/// A file without a name, so that nothing is left behind whatever goes wrong.
class UnnamedFile {
 public:
  UnnamedFile() : file_(std::tmpfile()) {
    if (file_ == nullptr) throw Failure(problems::workbook_not_written("no temporary file"));
  }
  UnnamedFile(const UnnamedFile&) = delete;
  UnnamedFile& operator=(const UnnamedFile&) = delete;
  ~UnnamedFile() { static_cast<void>(std::fclose(file_)); }

  /// By which it can be opened once more.
  std::string name() const { return "/dev/fd/" + std::to_string(::fileno(file_)); }

  std::string content() const {
    std::string out;
    std::string part(1U << 16U, '\0');
    std::rewind(file_);
    for (std::size_t got = 1; got > 0;) {
      got = std::fread(part.data(), 1, part.size(), file_);
      out.append(part, 0, got);
    }
    if (std::ferror(file_) != 0 || out.empty()) {
      throw Failure(problems::workbook_not_written("the temporary file can't be read"));
    }
    return out;
  }

 private:
  std::FILE* file_;
};

/// One format for each way of showing a cell.
class Formats {
 public:
  Formats(lxw_workbook* book, const Currency& currency)
      : book_(book), digits_(currency.minor_digits()) {}

  lxw_format* of(const WorkbookCell& cell) {
    const bool whole = cell.look == CellLook::number && is_whole(figure_of(cell));
    lxw_format*& out = made_[{cell.look, cell.role, whole}];
    if (out == nullptr) out = make(cell.look, cell.role, whole);
    return out;
  }

 private:
  static Rational figure_of(const WorkbookCell& cell) {
    if (const auto* formula = std::get_if<Formula>(&cell.content)) return formula->value;
    const auto* number = std::get_if<Rational>(&cell.content);
    return number == nullptr ? Rational() : *number;
  }

  std::string number_format(CellLook look, bool whole) const {
    const std::string places = digits_ == 0 ? "" : "." + std::string(digits_, '0');
    switch (look) {
      case CellLook::number:
        return whole ? "#,##0" : "#,##0.00##";
      case CellLook::share:
        return "0.0##%";
      case CellLook::money:
        return "#,##0" + places;
      case CellLook::price:
        return "#,##0" + (places.empty() ? ".0" : places) + "####";
      case CellLook::words:
      case CellLook::note:
      case CellLook::title:
      case CellLook::heading:
        break;
    }
    return "General";
  }

  lxw_format* make(CellLook look, CellRole role, bool whole) const {
    lxw_format* out = workbook_add_format(book_);
    if (out == nullptr) check(LXW_ERROR_MEMORY_MALLOC_FAILED);
    format_set_num_format(out, number_format(look, whole).c_str());
    if (look == CellLook::note) format_set_italic(out);
    if (look == CellLook::title) format_set_font_size(out, 16);
    if (look == CellLook::title || look == CellLook::heading || role == CellRole::total) {
      format_set_bold(out);
    }
    if (look == CellLook::heading) format_set_bottom(out, LXW_BORDER_THIN);
    if (role == CellRole::total) format_set_top(out, LXW_BORDER_THIN);
    if (role == CellRole::input) {
      constexpr lxw_color_t pale_yellow = 0xFFF2CC;
      format_set_bg_color(out, pale_yellow);
      format_set_border(out, LXW_BORDER_THIN);
    }
    return out;
  }

  lxw_workbook* book_;
  unsigned digits_;
  std::map<std::tuple<CellLook, CellRole, bool>, lxw_format*> made_;
};

void write_cell(lxw_worksheet* sheet, const WorkbookCell& cell, lxw_format* format) {
  const auto column = static_cast<lxw_col_t>(cell.column);
  if (const auto* number = std::get_if<Rational>(&cell.content)) {
    check(worksheet_write_number(sheet, cell.row, column, nearest_double(*number), format));
  } else if (const auto* formula = std::get_if<Formula>(&cell.content)) {
    check(worksheet_write_formula_num(sheet, cell.row, column, ("=" + formula->text).c_str(),
                                      format, nearest_double(formula->value)));
  } else {
    const std::string text = cell_text(std::get<std::string>(cell.content));
    check(worksheet_write_string(sheet, cell.row, column, text.c_str(), format));
  }
}

void write_sheet(lxw_workbook* book, const WorkbookSheet& sheet, Formats& formats) {
  lxw_worksheet* out = workbook_add_worksheet(book, cell_text(sheet.name).c_str());
  if (out == nullptr) check(LXW_ERROR_PARAMETER_VALIDATION);
  for (std::size_t i = 0; i < sheet.widths.size(); ++i) {
    const auto column = static_cast<lxw_col_t>(i);
    check(worksheet_set_column(out, column, column, sheet.widths[i], nullptr));
  }
  for (const WorkbookCell& cell : sheet.cells) write_cell(out, cell, formats.of(cell));
  worksheet_set_landscape(out);
  worksheet_fit_to_pages(out, 1, 0);
}

void set_properties(lxw_workbook* book, std::string title) {
  constexpr std::time_t always_the_same = 946684800;  // 2000-01-01, so that bytes do not change
  lxw_doc_properties properties{};
  properties.title = title.data();
  properties.created = always_the_same;
  check(workbook_set_properties(book, &properties));
}

/// What the library makes of it, all of it or not.
std::string written_once(const Workbook& workbook) {
  const UnnamedFile file;
  std::unique_ptr<lxw_workbook, decltype(&lxw_workbook_free)> book(
      workbook_new(file.name().c_str()), &lxw_workbook_free);
  if (!book) check(LXW_ERROR_MEMORY_MALLOC_FAILED);
  Formats formats(book.get(), workbook.currency);
  for (const WorkbookSheet& sheet : workbook.sheets) write_sheet(book.get(), sheet, formats);
  set_properties(book.get(), cell_text(workbook.title));
  check(workbook_close(book.release()));
  return file.content();
}

}  // namespace

std::string write_workbook(const Workbook& workbook) {
  // The library does not look whether its temporary files took what it wrote. A full disk is found
  // by what lacks at the end; a single fault, which may be anywhere, by a second writing.
  std::string out = written_once(workbook);
  if (!is_whole(out, workbook) || out != written_once(workbook)) {
    throw Failure(problems::workbook_not_written("its temporary files did not take all of it"));
  }
  return out;
}

}  // namespace platewright
