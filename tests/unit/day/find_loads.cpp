// SPDX-License-Identifier: MIT
#include "platewright/day/find_loads.hpp"

#include "platewright/day/oven_conflict.hpp"
#include "support/catch.hpp"

using namespace platewright;

namespace {

OvenTask task(Minute soonest, Minute latest, Minute lasts, int fahrenheit, std::int64_t pans) {
  OvenTask out;
  out.soonest = soonest;
  out.latest = latest;
  out.settings = {{lasts, Temperature::fahrenheit(fahrenheit)}};
  out.pans = pans;
  out.on_a_rack = {1};
  out.racks_high = {1};
  return out;
}

std::vector<std::size_t> all(const std::vector<OvenTask>& tasks) {
  std::vector<std::size_t> out;
  for (std::size_t i = 0; i < tasks.size(); ++i) out.push_back(i);
  return out;
}

FoundLoads found(const std::vector<OvenRoom>& rooms, const std::vector<OvenTask>& tasks) {
  return find_loads(rooms, tasks, all(tasks));
}

}  // namespace

TEST_CASE("what fits goes in at the latest") {
  const auto out = found({{4, 15}}, {task(0, 100, 60, 325, 4)});
  REQUIRE(out.loads);
  REQUIRE(out.loads->size() == 1);
  CHECK(out.loads->front().begins == 100);
  CHECK(out.loads->front().pans == 4);
  CHECK(out.loads->front().racks == 4);
  CHECK(out.looked_at_all);
}

TEST_CASE("what does not fit at once goes in twice, the first load as late as the second allows") {
  const auto out = found({{4, 15}}, {task(0, 100, 60, 325, 6)});
  REQUIRE(out.loads);
  REQUIRE(out.loads->size() == 2);
  CHECK((*out.loads)[0].begins == 100);
  CHECK((*out.loads)[0].pans == 4);
  CHECK((*out.loads)[1].begins == 40);
  CHECK((*out.loads)[1].pans == 2);
}

TEST_CASE("two loads that may not wait do not fit into one oven") {
  const auto out = found({{4, 15}}, {task(100, 100, 60, 325, 6)});
  CHECK_FALSE(out.loads);
  CHECK(out.looked_at_all);
}

TEST_CASE("one temperature is shared, two are not") {
  CHECK(found({{4, 15}}, {task(50, 50, 60, 325, 2), task(70, 70, 60, 325, 2)}).loads);
  CHECK_FALSE(found({{4, 15}}, {task(50, 50, 60, 325, 2), task(70, 70, 60, 350, 2)}).loads);
}

TEST_CASE("an oven takes its time from one temperature to another, and none for the same") {
  CHECK_FALSE(found({{4, 15}}, {task(0, 0, 60, 325, 4), task(74, 74, 60, 350, 4)}).loads);
  CHECK(found({{4, 15}}, {task(0, 0, 60, 325, 4), task(75, 75, 60, 350, 4)}).loads);
  CHECK(found({{4, 15}}, {task(0, 0, 60, 325, 4), task(60, 60, 60, 325, 4)}).loads);
}

TEST_CASE("loads with two settings share an oven only while they ask for the same") {
  OvenTask browned = task(0, 0, 20, 450, 1);
  browned.settings.push_back({40, Temperature::fahrenheit(325)});
  CHECK_FALSE(found({{4, 15}}, {browned, task(10, 10, 60, 325, 1)}).loads);
  CHECK(found({{4, 15}}, {browned, task(20, 20, 60, 325, 1)}).loads);
}

TEST_CASE("a pan that stands high takes the racks above it") {
  OvenTask high = task(0, 0, 60, 325, 3);
  high.racks_high = {2};
  CHECK_FALSE(found({{5, 15}}, {high}).loads);
  const auto out = found({{6, 15}}, {high});
  REQUIRE(out.loads);
  CHECK(out.loads->front().racks == 6);
}

TEST_CASE("several small pans stand on one rack") {
  OvenTask small = task(0, 0, 60, 325, 5);
  small.on_a_rack = {2};
  const auto out = found({{3, 15}}, {small});
  REQUIRE(out.loads);
  CHECK(out.loads->front().racks == 3);
}

TEST_CASE("what has no pans that are known takes an oven to itself") {
  OvenTask unknown = task(0, 0, 60, 325, 1);
  unknown.whole_oven = true;
  CHECK_FALSE(found({{4, 15}}, {unknown, task(0, 0, 60, 325, 1)}).loads);
  CHECK(found({{4, 15}}, {unknown, task(60, 60, 60, 325, 1)}).loads);
}

TEST_CASE("a search that may not go on says so") {
  const std::vector<OvenTask> tasks{task(0, 1000, 60, 325, 4), task(0, 1000, 60, 350, 4)};
  const auto out = find_loads({{4, 15}}, tasks, all(tasks), {}, 3);
  CHECK_FALSE(out.loads);
  CHECK_FALSE(out.looked_at_all);
}

TEST_CASE("a conflict names those that are in each other's way, and what would do") {
  // The middle one is in nobody's way.
  const std::vector<OvenTask> tasks{task(90, 100, 60, 325, 4), task(0, 0, 30, 325, 1),
                                    task(120, 130, 60, 350, 4)};
  std::int64_t left = most_load_trials;
  const OvenConflict out = oven_conflict({{4, 15}}, tasks, all(tasks), {}, left);
  CHECK(out.tasks == std::vector<std::size_t>{0, 2});
  CHECK(out.looked_at_all);
  CHECK(out.one_more_oven == std::size_t(0));
  // 130 - 15 - 60 = 55 is 35 min before the soonest of the first.
  REQUIRE(out.sooner.size() == 2);
  CHECK(out.sooner[0].task == 0);
  CHECK(out.sooner[0].minutes == 60);
  CHECK(left < most_load_trials);
}
