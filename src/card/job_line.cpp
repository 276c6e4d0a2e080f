// SPDX-License-Identifier: MIT
#include "platewright/card/job_line.hpp"

#include <algorithm>

#include "card/json_document.hpp"
#include "card/sheet_json.hpp"
#include "platewright/card/problem_sheet.hpp"
#include "platewright/card/writers.hpp"
#include "platewright/problem/catalogue/jobs.hpp"

namespace platewright {
namespace {

/// No word of a command line holds a zero byte.
bool is_word(const Json& value) {
  return value.is_string() && value.get_ref<const std::string&>().find('\0') == std::string::npos;
}

std::vector<std::string> words_of(const Json& list, std::string_view line) {
  const bool texts =
      list.is_array() && !list.empty() && std::all_of(list.begin(), list.end(), is_word);
  if (!texts) throw Failure(problems::job_unread(line));
  return list.get<std::vector<std::string>>();
}

}  // namespace

Job read_job(std::string_view line) {
  // Nothing is thrown for what is no JSON: it is said in our own words.
  const Json read = Json::parse(line.begin(), line.end(), nullptr, false);
  if (!read.is_object()) return {words_of(read, line), {}};
  const auto id = read.find("id");
  const auto words = read.find("words");
  const bool named = id != read.end() && (id->is_string() || id->is_number_integer());
  if (!named || words == read.end() || read.size() != 2) throw Failure(problems::job_unread(line));
  return {words_of(*words, line), id->dump()};
}

std::string write_answer(const JobAnswer& answer) {
  Json out{{"version", json_version}, {"line", answer.line}};
  if (!answer.id.empty()) out["id"] = Json::parse(answer.id);
  out["exit"] = answer.exit_code;
  if (answer.sheet) out["sheet"] = json_of_sheet(*answer.sheet, answer.section);
  if (!answer.text.empty()) out["text"] = answer.text;
  if (!answer.problems.all().empty()) {
    out["problems"] = json_of_sheet(problem_sheet(answer.problems, {}))["arrays"]["problems"];
  }
  return json_line(out);
}

}  // namespace platewright
