// SPDX-License-Identifier: MIT
// A folder to begin with.

#include <filesystem>
#include <optional>
#include <system_error>

#include "cli/commands.hpp"
#include "cli/held_signals.hpp"
#include "cli/open_book.hpp"
#include "cli/starter_files.hpp"
#include "cli/write_file.hpp"
#include "platewright/files/file_schema.hpp"
#include "platewright/problem/catalogue/files.hpp"

namespace platewright::cli {
namespace {

namespace fs = std::filesystem;

/// The file in the folder whose name comes first; empty where there is none.
std::string file_in(const std::string& folder) {
  std::error_code error;
  fs::directory_iterator entry;
  do {
    entry = fs::directory_iterator(folder, error);
  } while (error == std::errc::interrupted);
  std::string out;
  while (!error && entry != fs::directory_iterator()) {
    std::string name = entry->path().filename().string();
    if (out.empty() || name < out) out = std::move(name);
    entry.increment(error);
  }
  if (error) throw Failure(problems::file_not_writable(folder, error.message()));
  return out;
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
    if (inner_) fs::remove(*inner_, nothing_to_do_about_it);
    if (made_) fs::remove(folder_, nothing_to_do_about_it);
  }

  void write(const std::string& name, const std::string& text) {
    written_.push_back((fs::path(folder_) / name).string());
    write_file(written_.back(), text);
  }
  /// One folder in it, for what is not the cook's to change.
  void make_inner(const char* name) {
    inner_ = fs::path(folder_) / name;
    std::error_code error;
    fs::create_directory(*inner_, error);
    if (error) throw Failure(problems::file_not_writable(inner_->string(), error.message()));
  }
  void keep() { kept_ = true; }

 private:
  std::string folder_;
  std::vector<std::string> written_;
  std::optional<fs::path> inner_;
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
  out += "  schema/           what an editor needs, to help you with the keys\n";
  out += "\nEverything in them is invented. Go into the folder and try:\n";
  out += "  cd " + typed_folder(folder) + "\n";
  for (const char* command : {"check event.yaml", "card roast-pork.yaml --pieces 4",
                              "order event.yaml", "quote event.yaml", "day event.yaml"}) {
    out += "  platewright " + std::string(command) + "\n";
  }
  return out + "Then open event.yaml in an editor for plain text, and write your own over it.\n";
}

const char* const schema_folder = "schema";

std::string schema_file(FileKind kind) {
  return std::string(schema_folder) + "/" + std::string(name_of(kind)) + ".json";
}

/// In front of the text the line by which editors that have a YAML language server find the schema.
std::string text_of(const StarterFile& file) {
  return "# yaml-language-server: $schema=" + schema_file(file.kind) + "\n" + file.text;
}

void fill(FilledFolder& folder) {
  for (const StarterFile& file : starter_event()) folder.write(file.name, text_of(file));
  folder.make_inner(schema_folder);
  for (const FileKind kind :
       {FileKind::recipe, FileKind::larder, FileKind::event, FileKind::tables, FileKind::prices}) {
    folder.write(schema_file(kind), file_schema(kind));
  }
  folder.keep();
}

}  // namespace

Result run(const NewArguments& arguments, const CommonOptions&, ProblemList&) {
  return from_argument("folder", [&] {
    const HeldSignals held;
    FilledFolder folder(arguments.folder);
    fill(folder);
    Result result;
    result.plain = what_next(arguments.folder);
    return result;
  });
}

}  // namespace platewright::cli
