// SPDX-License-Identifier: MIT
// A folder to begin with.

#include <filesystem>
#include <system_error>

#include "cli/commands.hpp"
#include "cli/held_signals.hpp"
#include "cli/open_book.hpp"
#include "cli/starter_files.hpp"
#include "cli/write_file.hpp"
#include "platewright/problem/catalogue/files.hpp"

namespace platewright::cli {
namespace {

namespace fs = std::filesystem;

/// Some file in the folder, by its name; empty where there is none.
std::string file_in(const std::string& folder) {
  std::error_code error;
  fs::directory_iterator first;
  do {
    first = fs::directory_iterator(folder, error);
  } while (error == std::errc::interrupted);
  if (error) throw Failure(problems::file_not_writable(folder, error.message()));
  return first == fs::directory_iterator() ? "" : first->path().filename().string();
}

/// A folder that is filled as a whole or left as it was: what was written is taken away again
/// unless `keep` was said.
class FilledFolder {
 public:
  explicit FilledFolder(std::string folder) : folder_(std::move(folder)) {
    std::error_code error;
    if (fs::is_directory(folder_, error)) {
      const std::string holds = file_in(folder_);
      if (!holds.empty()) throw Failure(problems::folder_not_free(folder_, holds));
    } else if (fs::exists(folder_, error)) {
      throw Failure(problems::folder_not_free(folder_, ""));
    } else {
      made_ = fs::create_directory(folder_, error);
      if (error == std::errc::no_such_file_or_directory) {
        throw Failure(problems::output_folder_not_there(folder_));
      }
      if (error) throw Failure(problems::file_not_writable(folder_, error.message()));
    }
  }
  FilledFolder(const FilledFolder&) = delete;
  FilledFolder& operator=(const FilledFolder&) = delete;
  ~FilledFolder() {
    if (kept_) return;
    std::error_code nothing_to_do_about_it;
    for (const std::string& file : written_) fs::remove(file, nothing_to_do_about_it);
    if (made_) fs::remove(folder_, nothing_to_do_about_it);
  }

  void write(const StarterFile& file) {
    const std::string name = (fs::path(folder_) / file.name).string();
    written_.push_back(name);
    write_file(name, file.text);
  }
  void keep() { kept_ = true; }

 private:
  std::string folder_;
  std::vector<std::string> written_;
  bool made_ = false;
  bool kept_ = false;
};

/// As it is typed: in quotes where a shell would take it for two words.
std::string typed_folder(const std::string& folder) {
  const bool plain = folder.find_first_not_of(
                         "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_./") ==
                     std::string::npos;
  return plain ? folder : "\"" + folder + "\"";
}

std::string what_next(const std::string& folder) {
  std::string out = "Written into " + folder + ":\n";
  for (const StarterFile& file : starter_event()) {
    out += "  " + std::string(file.name) + std::string(18 - std::string(file.name).size(), ' ') +
           file.about + "\n";
  }
  out += "\nEverything in them is invented. Go into the folder and try:\n";
  out += "  cd " + typed_folder(folder) + "\n";
  for (const char* command : {"check event.yaml", "card roast-pork.yaml --pieces 4",
                              "order event.yaml", "quote event.yaml", "day event.yaml"}) {
    out += "  platewright " + std::string(command) + "\n";
  }
  return out + "Then open event.yaml in an editor for plain text, and write your own over it.\n";
}

}  // namespace

Result run(const NewArguments& arguments, const CommonOptions&, ProblemList&) {
  return from_argument("folder", [&] {
    const HeldSignals held;
    FilledFolder folder(arguments.folder);
    for (const StarterFile& file : starter_event()) folder.write(file);
    folder.keep();
    Result result;
    result.plain = what_next(arguments.folder);
    return result;
  });
}

}  // namespace platewright::cli
