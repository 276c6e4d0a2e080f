// SPDX-License-Identifier: MIT
// Whatever a thermometer's log says, it is a curve in order, or there are problems; and no table is
// met by less than it asks.

#include <cstddef>
#include <cstdint>
#include <fstream>
#include <string>

#include "fuzz/insist.hpp"
#include "platewright/files/read_core_log.hpp"
#include "platewright/heat/lethality.hpp"
#include "support/folder.hpp"

namespace {

using namespace platewright;
using platewright::test::insist;

LethalityStandard falling_holds() {
  LethalityStandard out;
  for (const int degrees : {54, 60, 66, 71}) {
    out.steps.push_back({Temperature::celsius(degrees),
                         Duration::of(fraction(720, 10 * (degrees - 53)), units::minute)});
  }
  out.steps.push_back({Temperature::celsius(74), Duration{}});
  return out;
}

void check_curve(const CoreCurve& curve) {
  const std::vector<CoreReading>& readings = curve.readings();
  insist(readings.size() >= 2, "a curve has two readings");
  for (std::size_t i = 1; i < readings.size(); ++i) {
    insist(readings[i - 1].at < readings[i].at, "readings stand in order");
    insist(readings[i].at - readings[i - 1].at <= longest_log_gap(), "a curve has no gap");
  }
  const Duration all = readings.back().at - readings.front().at;
  const LethalityCheck check = check_lethality(curve, falling_holds());
  bool reached_all_below = true;
  for (const StepHeld& held : check.steps) {
    insist(held.held <= all, "nothing is held longer than the log goes");
    insist(!held.reached || reached_all_below, "who reaches a step reaches those below");
    reached_all_below = held.reached;
    if (!held.met) continue;
    insist(held.reached && held.held >= held.step.hold, "a step is met by its whole hold");
    insist(*held.met <= readings.back().at, "a step is met within the log");
  }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  static const platewright::test::TemporaryFolder folder;
  const std::string file = (folder.path() / "log.csv").string();
  std::ofstream(file, std::ios::binary)
      .write(reinterpret_cast<const char*>(data), static_cast<std::streamsize>(size));
  ProblemList problems;
  const auto curve = read_core_log(file, problems);
  insist(curve.has_value() != problems.has_errors(), "a curve, or errors");
  if (curve) check_curve(*curve);
  return 0;
}
