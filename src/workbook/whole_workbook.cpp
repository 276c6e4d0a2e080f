// SPDX-License-Identifier: MIT
#include "workbook/whole_workbook.hpp"

#include <map>
#include <optional>
#include <set>
#include <string>
#include <utility>

#include "workbook/inflated.hpp"

namespace platewright {
namespace {

/// A whole number in its lowest bytes first; nothing where the file ends before it does.
std::optional<std::size_t> number_at(std::string_view file, std::size_t at, std::size_t bytes) {
  if (at > file.size() || file.size() - at < bytes) return std::nullopt;
  std::size_t out = 0;
  for (std::size_t i = bytes; i > 0; --i) {
    out = out * 256 + static_cast<unsigned char>(file[at + i - 1]);
  }
  return out;
}

/// The texts of an archive's parts by their names, read by the list at its end (ZIP, APPNOTE 4.3);
/// nothing where one can't be read.
std::optional<std::map<std::string, std::string>> parts_of(std::string_view file) {
  const std::size_t end = file.rfind("PK\5\6");
  constexpr std::size_t size_of_end = 22;
  if (end == std::string_view::npos || file.size() - end != size_of_end) return std::nullopt;
  const auto count = number_at(file, end + 10, 2);
  auto at = number_at(file, end + 16, 4);
  std::map<std::string, std::string> out;
  for (std::size_t i = 0; count && at && i < *count; ++i) {
    const auto method = number_at(file, *at + 10, 2);
    const auto packed = number_at(file, *at + 20, 4);
    const auto size = number_at(file, *at + 24, 4);
    const auto name_size = number_at(file, *at + 28, 2);
    const auto extra = number_at(file, *at + 30, 2);
    const auto remark = number_at(file, *at + 32, 2);
    const auto local = number_at(file, *at + 42, 4);
    constexpr std::size_t deflated = 8;
    if (method != deflated || !local || *local > file.size()) return std::nullopt;
    const auto local_name = number_at(file, *local + 26, 2);
    const auto local_extra = number_at(file, *local + 28, 2);
    if (!local_name || !local_extra) return std::nullopt;
    const std::size_t begin = *local + 30 + *local_name + *local_extra;
    if (begin > file.size() || file.size() - begin < *packed) return std::nullopt;
    auto text = inflated(file.substr(begin, *packed), *size);
    if (!text) return std::nullopt;
    out.emplace(file.substr(*at + 46, *name_size), *std::move(text));
    at = *at + 46 + *name_size + *extra + *remark;
  }
  if (!count || !at) return std::nullopt;
  return out;
}

std::size_t times_in(std::string_view text, std::string_view words) {
  std::size_t out = 0;
  for (std::size_t at = text.find(words); at != std::string_view::npos;
       at = text.find(words, at + words.size())) {
    ++out;
  }
  return out;
}

/// Whether the element that it begins with is closed at its end.
bool is_closed(std::string_view part) {
  part = part.substr(0, part.find_last_not_of("\r\n") + 1);
  const std::size_t root = part.find('<', part.find("?>"));
  if (root == std::string_view::npos) return false;
  const std::string_view name =
      part.substr(root + 1, part.find_first_of(" />\n", root + 1) - root - 1);
  return part.ends_with("</" + std::string(name) + ">");
}

std::size_t cells_of(const WorkbookSheet& sheet) {
  std::set<std::pair<unsigned, unsigned>> out;
  for (const WorkbookCell& cell : sheet.cells) out.emplace(cell.row, cell.column);
  return out.size();
}

}  // namespace

bool is_whole(std::string_view file, const Workbook& workbook) {
  const auto parts = parts_of(file);
  if (!parts) return false;
  for (const auto& [name, text] : *parts) {
    if (!is_closed(text)) return false;
  }
  for (std::size_t i = 0; i < workbook.sheets.size(); ++i) {
    const auto sheet = parts->find("xl/worksheets/sheet" + std::to_string(i + 1) + ".xml");
    if (sheet == parts->end()) return false;
    if (times_in(sheet->second, "<c r=") != cells_of(workbook.sheets[i])) return false;
  }
  const auto words = parts->find("xl/sharedStrings.xml");
  if (words == parts->end()) return true;
  const std::string count = " uniqueCount=\"" + std::to_string(times_in(words->second, "<si>"));
  return words->second.find(count + "\"") != std::string::npos;
}

}  // namespace platewright
