// SPDX-License-Identifier: MIT
// Packs as suppliers write them.

#include "files/pack_content.hpp"

#include "support/catch.hpp"
#include "support/problem_of.hpp"

using namespace platewright;
using namespace platewright::reading;
using namespace platewright::test;

namespace {

struct Pack {
  Book book{MeasuringSystem::us, built_in_tables(), {}, {}, {}, {}, {}};
  BookFile file{"larder.yaml", nullptr, FileKind::larder, true};
  ProblemList problems;

  std::string read(const std::string& text) {
    return amount_text(pack_content(text, {file, book, problems}));
  }
  std::string refused(const std::string& text) {
    return problem_of([&] { read(text); }).id;
  }
};

}  // namespace

TEST_CASE("packs in a case, by a sign or by the trade's bar") {
  Pack pack;
  CHECK(pack.read("6 x 5 lb") == "30 lb");
  CHECK(pack.read("6x5 lb") == "30 lb");
  CHECK(pack.read("6 \u00D7 2.5 kg") == "15 kg");
  CHECK(pack.read("6/5 LB") == "30 lb");
  CHECK(pack.read("12/750 mL") == "9000 mL");
  CHECK(pack.read("4/2.5 kg") == "10 kg");
  CHECK(pack.read("1/50 lb") == "50 lb");
  CHECK(pack.read("4/1 gal") == pack.read("4 gal"));
  CHECK(pack.read("6/#10") == pack.read("6 x 1 #10 can"));
}

TEST_CASE("a count of a pack") {
  Pack pack;
  CHECK(pack.read("30 ct") == pack.read("30"));
  CHECK(pack.read("24ct") == pack.read("24"));
  CHECK(pack.read("6/10 count") == pack.read("60"));
}

TEST_CASE("a part of a measure stays one") {
  Pack pack;
  CHECK(pack.read("1/2 gal") == "1/2 gal");
  CHECK(pack.read("3/4 lb") == "3/4 lb");
  CHECK(pack.read("1 1/2 lb") == "1 1/2 lb");
}

TEST_CASE("what may be either is asked for") {
  Pack pack;
  CHECK(pack.refused("1/5 gal") == "pack-ambiguous");
  CHECK(pack.refused("6/8 oz") == "pack-ambiguous");
  CHECK(pack.refused("2/4 lb") == "pack-ambiguous");
  CHECK(pack.refused("5/16 oz") == "pack-ambiguous");
  CHECK(pack.refused("a case") == "pack-malformed");
  CHECK(pack.refused("6 xl") == "unit-unknown");
}
