// SPDX-License-Identifier: MIT
#include "platewright/files/read_class.hpp"

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <map>
#include <set>
#include <system_error>

#include "platewright/files/read_worksheet.hpp"
#include "platewright/problem/catalogue/files.hpp"
#include "platewright/problem/catalogue/worksheets.hpp"
#include "yaml/read_yaml.hpp"

namespace platewright {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t most_students = 1000;

bool is_folder(const std::string& name) {
  std::error_code unknown;
  return fs::is_directory(name, unknown);
}

bool may_be_worksheet(const fs::path& path) {
  const std::string ending = path.extension().string();
  return (ending == ".yaml" || ending == ".yml") && path.filename().string().front() != '.';
}

/// The files of a folder in the order of their names; no more than the bound and one.
std::vector<std::string> files_of_folder(const std::string& folder, ProblemList& problems) {
  std::set<std::string> out;
  std::error_code failed;
  fs::directory_iterator entry;
  do {
    entry = fs::directory_iterator(folder, failed);
  } while (failed == std::errc::interrupted);
  for (; !failed && entry != fs::directory_iterator() && out.size() <= most_students;
       entry.increment(failed)) {
    std::error_code unknown;
    if (may_be_worksheet(entry->path()) && !entry->is_directory(unknown)) {
      out.insert(entry->path().lexically_normal().string());
    }
  }
  if (failed) {
    problems.add(at(problems::file_not_readable(folder), Place{folder, 1, 1, {}}));
  } else if (out.empty()) {
    problems.add(at(problems::class_folder_empty(folder), Place{folder, 1, 1, {}}));
  }
  return {out.begin(), out.end()};
}

/// True where the files together are within the bound of a run. Those that are not there have their
/// problem when they are read.
bool fit_in_one_run(const std::vector<std::string>& files, ProblemList& problems) {
  constexpr std::uintmax_t most_bytes = 16U << 20U;
  std::uintmax_t bytes = 0;
  for (const std::string& file : files) {
    std::error_code unknown;
    const std::uintmax_t size = fs::file_size(file, unknown);
    if (unknown) continue;
    bytes += size;
    if (bytes <= most_bytes) continue;
    problems.add(at(problems::book_too_large(most_bytes, "bytes"), Place{file, 1, 1, {}}));
    return false;
  }
  return true;
}

/// The name of the file without its ending; the whole path where several files have that name.
std::vector<std::string> names_of_students(const std::vector<std::string>& files) {
  std::map<std::string, int> times;
  for (const std::string& file : files) ++times[fs::path(file).stem().string()];
  std::vector<std::string> out;
  for (const std::string& file : files) {
    const std::string name = fs::path(file).stem().string();
    out.push_back(times[name] > 1 ? file : name);
  }
  return out;
}

}  // namespace

std::vector<std::string> worksheet_files(const std::vector<std::string>& names,
                                         ProblemList& problems) {
  std::vector<std::string> out;
  std::set<std::string> seen;
  const auto add = [&](const std::string& file) {
    if (seen.insert(file).second) out.push_back(file);
  };
  for (const std::string& name : names) {
    if (is_folder(name)) {
      for (const std::string& file : files_of_folder(name, problems)) add(file);
    } else {
      add(fs::path(name).lexically_normal().string());
    }
    if (out.size() <= most_students) continue;
    problems.add(at(problems::class_too_large(most_students), Place{name, 1, 1, {}}));
    return {};
  }
  return out;
}

bool name_a_class(const std::vector<std::string>& names) {
  return names.size() > 1 || std::any_of(names.begin(), names.end(), is_folder);
}

std::vector<StudentSheet> read_class(const std::vector<std::string>& names, const Book& book,
                                     ProblemList& problems) {
  const std::vector<std::string> files = worksheet_files(names, problems);
  if (!fit_in_one_run(files, problems)) return {};
  const std::vector<std::string> students = names_of_students(files);
  std::vector<StudentSheet> out;
  for (std::size_t i = 0; i < files.size(); ++i) {
    auto sheet = read_worksheet(files[i], book, problems);
    if (!sheet) continue;
    if (sheet->trim_answers.empty() && sheet->cooking_answers.empty()) {
      problems.add(at(problems::class_without_answers(students[i]), Place{files[i], 1, 1, {}}));
    }
    out.push_back({students[i], std::move(*sheet)});
  }
  return out;
}

}  // namespace platewright
