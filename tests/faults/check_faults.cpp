// Every call of the system that a command makes goes wrong once, in every way, and the program is
// killed before each: `check_faults PROGRAM LIBRARY`. The output is the old text or the new one,
// whole; what went wrong is said; nothing is left beside it, but by a kill.

#include <exception>
#include <filesystem>
#include <iostream>
#include <stdexcept>
#include <string>
#include <vector>

#include "support/folder.hpp"
#include "support/process.hpp"

namespace platewright::test {
namespace {

namespace fs = std::filesystem;

constexpr const char* larder =
    "currency: USD\nlarder:\n  salt: {buy: [{pack: 3 lb, price: 2.00}], allergens: none}\n";
constexpr const char* soup =
    "recipe: soup\nwith: larder.yaml\nmakes: 10 portions\ningredients:\n  - salt: 1 lb\n";
const std::string old_text = "an older sheet\n";

/// One way of going wrong; `is_noticed` where the command can't just go on.
struct Kind {
  const char* name;
  bool is_noticed;
};
constexpr Kind kinds[] = {
    {"EIO", true}, {"ENOSPC", true}, {"EINTR", false}, {"short", false}, {"kill", true}};

class Trial {
 public:
  Trial(std::string program, std::string library)
      : program_(std::move(program)), library_(std::move(library)) {
    write_file(folder_.path() / "larder.yaml", larder);
    write_file(folder_.path() / "soup.yaml", soup);
    fs::create_directory(folder_.path() / "out");
    const Outcome outcome = run_with({});
    if (outcome.exit != 0) throw std::runtime_error("without a fault: " + outcome.complained);
    new_text_ = read_file(output());
    if (new_text_.find("soup") == std::string::npos) throw std::runtime_error("no sheet");
  }

  /// Whether a command has complained of this.
  bool has_said(const std::string& id) const {
    return said_.find("problem " + id + "\n") != std::string::npos;
  }

  /// Goes on from call to call until there is none of that number. False where any went badly.
  bool each_call(const Kind& kind, bool output_is_there, int& calls) {
    bool good = true;
    for (int at = 1; at < 1000; ++at) {
      fs::remove_all(folder_.path() / "out");
      fs::create_directory(folder_.path() / "out");
      if (output_is_there) write_file(output(), old_text);
      fs::remove(met());
      const Outcome outcome =
          run_with({"FAULT_AT=" + std::to_string(at), std::string("FAULT_KIND=") + kind.name,
                    "FAULT_MET=" + met().string(), "LD_PRELOAD=" + library_,
                    "ASAN_OPTIONS=verify_asan_link_order=0"});
      if (!fs::exists(met())) break;
      ++calls;
      said_ += outcome.complained;
      const std::string wrong = complaint(kind, outcome, output_is_there);
      if (wrong.empty()) continue;
      good = false;
      std::cout << kind.name << " at call " << at << ": " << wrong << "\n" << outcome.complained;
    }
    return good;
  }

 private:
  fs::path output() const { return folder_.path() / "out" / "card.txt"; }
  fs::path met() const { return folder_.path() / "met"; }

  Outcome run_with(const std::vector<std::string>& settings) const {
    std::vector<std::string> words{"env"};
    words.insert(words.end(), settings.begin(), settings.end());
    words.insert(words.end(), {program_, "cost", "soup.yaml", "--output", "out/card.txt"});
    return run(words, folder_.path(), 30);
  }

  std::string complaint(const Kind& kind, const Outcome& outcome, bool output_was_there) const {
    const bool killed = std::string(kind.name) == "kill";
    const std::string text = fs::exists(output()) ? read_file(output()) : "";
    const bool is_old = output_was_there ? text == old_text : !fs::exists(output());
    if (text != new_text_ && !is_old) return "neither the old text nor the new one";
    if (outcome.exit == 0 && text != new_text_) return "done, it says, and it is not";
    if (!kind.is_noticed && outcome.exit != 0) return "given up over what is no fault";
    if (killed) return outcome.exit == 128 + 9 ? "" : "not killed";
    if (outcome.exit != 0 && outcome.complained.find("problem ") == std::string::npos) {
      return "nothing is said";
    }
    for (const auto& entry : fs::directory_iterator(output().parent_path())) {
      if (entry.path() != output()) return "left behind: " + entry.path().filename().string();
    }
    return {};
  }

  std::string program_;
  std::string library_;
  TemporaryFolder folder_;
  std::string new_text_;
  std::string said_;
};

}  // namespace
}  // namespace platewright::test

int main(int count, char** arguments) {
  using namespace platewright::test;
  try {
    if (count != 3) throw std::runtime_error("check_faults PROGRAM LIBRARY");
    Trial trial(arguments[1], arguments[2]);
    bool good = true;
    int calls = 0;
    for (const Kind& kind : kinds) {
      for (const bool output_is_there : {false, true}) {
        good = trial.each_call(kind, output_is_there, calls) && good;
      }
    }
    for (const char* id :
         {"file-not-readable", "file-not-writable", "output-no-room", "output-not-kept"}) {
      if (trial.has_said(id)) continue;
      good = false;
      std::cout << "nothing was said of " << id << "\n";
    }
    std::cout << calls << " calls went wrong\n";
    // Fewer than these would say that the library saw none of the calls.
    return good && calls >= 100 ? 0 : 1;
  } catch (const std::exception& error) {
    std::cerr << error.what() << "\n";
    return 2;
  }
}
