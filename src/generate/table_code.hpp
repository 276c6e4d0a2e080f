// SPDX-License-Identifier: MIT
#pragma once
// Each table's rows as C++ text.

#include <string>
#include <string_view>
#include <vector>

#include "platewright/problem/problem_list.hpp"
#include "yaml/node.hpp"

namespace platewright::generate {

/// A file of a table, read.
struct TableFile {
  std::string file;
  yaml::Node root;
};

/// Names that were met, with the place of each, so that none stands for two things.
class NamesSeen {
 public:
  void add(const std::string& what, const std::string& name, const Place& place,
           ProblemList& problems);

 private:
  std::vector<std::pair<std::string, Place>> seen_;
};

/// The two headers made from the units: the named units and the run-time rows.
struct UnitsText {
  std::string named_units;
  std::string rows;
};
UnitsText units_text(const std::vector<TableFile>& files, ProblemList& problems);

std::string densities_text(const std::vector<TableFile>& files,
                           const std::vector<TableFile>& unit_files, ProblemList& problems);
std::string pieces_text(const std::vector<TableFile>& files,
                        const std::vector<TableFile>& unit_files, ProblemList& problems);
std::string cuts_text(const std::vector<TableFile>& files, ProblemList& problems);
/// `table` is `produce` or `grain`.
std::string goods_text(std::string_view table, const std::vector<TableFile>& files,
                       ProblemList& problems);
std::string vessels_text(const std::vector<TableFile>& files, ProblemList& problems);
std::string safety_text(const std::vector<TableFile>& files, ProblemList& problems);
/// The part of it that is about steps: their rules, and rates of thawing.
std::string step_rows_text(const std::vector<TableFile>& files, ProblemList& problems);
std::string lethality_text(const std::vector<TableFile>& files, ProblemList& problems);
std::string times_text(const std::vector<TableFile>& files, ProblemList& problems);
std::string allergens_text(const std::vector<TableFile>& files, ProblemList& problems);

}  // namespace platewright::generate
