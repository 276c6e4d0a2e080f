// SPDX-License-Identifier: MIT
#pragma once
// The bodies of platewright/problem/catalogue/yields.hpp.

#include <utility>

#include "platewright/problem/catalogue/yields.hpp"

namespace platewright::problems {

PLATEWRIGHT_BODY Problem stage_unknown(std::string_view found, std::string help) {
  return make_problem("stage-unknown", in_quotes(found),
                      "a stage: purchased, thawed, trimmed, cooked, carved or served",
                      help.empty() ? "write one of these words" : std::move(help));
}

PLATEWRIGHT_BODY Problem loss_unknown(std::string_view found, std::string help) {
  return make_problem("loss-unknown", in_quotes(found),
                      "a loss: purge, trim, bone, skin, cooking, carving or water taken up",
                      help.empty() ? "write one of these words" : std::move(help));
}

PLATEWRIGHT_BODY Problem yield_not_positive(std::string_view found) {
  return make_problem("yield-not-positive", "a yield of " + std::string(found), "a yield above 0",
                      "write the weight that comes out over the weight that goes in, as 72 %");
}

PLATEWRIGHT_BODY Problem yield_too_large(std::string_view found, std::string_view most,
                                         bool missing_sign) {
  return make_problem(
      "yield-too-large", "a yield of " + std::string(found),
      "at most " + std::string(most) + " here: only goods that take up water weigh more afterwards",
      missing_sign ? "write the % where it was forgotten, as in 70 % or 0.70"
                   : "check which weight is over which: what comes out over what went in");
}

PLATEWRIGHT_BODY Problem meat_yield_above_one(std::string_view found) {
  return make_problem("meat-yield-above-one", "a yield of " + std::string(found) + " for meat",
                      "at most 1, as meat loses weight",
                      "check which weight is over which; where the meat takes up brine or water, "
                      "say so with `water taken up`");
}

PLATEWRIGHT_BODY Problem spread_without_samples(std::string_view deviation) {
  return make_problem(
      "spread-without-samples",
      "a standard deviation of " + std::string(deviation) + " without the number of samples",
      "a standard deviation of two samples or more",
      "add the number of samples, or take the standard deviation out");
}

PLATEWRIGHT_BODY Problem spread_upside_down(std::string_view low, std::string_view high) {
  return make_problem("spread-upside-down",
                      "a range from " + std::string(low) + " to " + std::string(high),
                      "a range from the lowest to the highest yield, both above 0",
                      "correct the lowest or the highest yield");
}

PLATEWRIGHT_BODY Problem ladder_empty() {
  return make_problem("ladder-empty", "a ladder without a rung", "one rung or more",
                      "add a rung, or say that nothing is lost");
}

PLATEWRIGHT_BODY Problem stages_out_of_order(std::string_view from, std::string_view to) {
  return make_problem("stages-out-of-order", std::string(from) + " to " + std::string(to),
                      "stages in the order purchased, thawed, trimmed, cooked, carved, served",
                      "swap the two stages");
}

PLATEWRIGHT_BODY Problem rungs_not_joined(std::string_view ends, std::string_view begins) {
  return make_problem("rungs-not-joined",
                      "a rung that ends at " + std::string(ends) + " before one that begins at " +
                          std::string(begins),
                      "each rung to begin where the one before it ends",
                      "add the rung that is missing, or correct the stages");
}

PLATEWRIGHT_BODY Problem loss_held_twice(std::string_view loss, std::string_view first,
                                         std::string_view second) {
  return make_problem("loss-held-twice",
                      std::string(loss) + " in the rung " + std::string(first) +
                          " and again in the rung " + std::string(second),
                      "each loss in one rung only",
                      "use a yield that does not hold this loss yet, or leave one rung out");
}

PLATEWRIGHT_BODY Problem stage_missing(std::string_view wanted, std::string_view stages,
                                       std::string_view rungs) {
  return make_problem("stage-missing", "no stage " + std::string(wanted) + " on this ladder",
                      "one of its stages: " + std::string(stages),
                      rungs.empty() ? "weigh at this stage, or ask for one that is there"
                                    : "write under `tested yields` " + std::string(rungs) +
                                          ", or ask for a stage that is there");
}

namespace detail {

PLATEWRIGHT_BODY std::string name_from(std::string_view table) {
  return "a name from the table of yields (" + std::string(table) + ")";
}

/// The help, or where to look if no name is near.
PLATEWRIGHT_BODY std::string or_list(std::string help) {
  if (!help.empty()) return help;
  return "list the names with `platewright tables`, or give a yield of your own";
}

}  // namespace detail

PLATEWRIGHT_BODY Problem cut_unknown(std::string_view name, std::string help) {
  return make_problem("cut-unknown", in_quotes(name), detail::name_from("cut"),
                      detail::or_list(std::move(help)));
}

PLATEWRIGHT_BODY Problem produce_unknown(std::string_view name, std::string help) {
  return make_problem("produce-unknown", in_quotes(name), detail::name_from("produce"),
                      detail::or_list(std::move(help)));
}

PLATEWRIGHT_BODY Problem grain_unknown(std::string_view name, std::string help) {
  return make_problem("grain-unknown", in_quotes(name), detail::name_from("grain"),
                      detail::or_list(std::move(help)));
}

PLATEWRIGHT_BODY Problem yield_unknown(std::string_view name, std::string help) {
  return make_problem("yield-unknown", in_quotes(name), detail::name_from("yield"),
                      detail::or_list(std::move(help)));
}

PLATEWRIGHT_BODY Problem yield_name_twice(std::string_view name) {
  return make_problem("yield-name-twice", in_quotes(name) + " twice",
                      "each name once among the rows of yields",
                      "rename one row; one that is prepared in another way says how");
}

PLATEWRIGHT_BODY Problem yield_name_ambiguous(std::string_view name, std::string_view rows) {
  return make_problem("yield-name-ambiguous", in_quotes(name) + " stands for several rows",
                      "one of: " + std::string(rows), "write the full name of the row");
}

}  // namespace platewright::problems
