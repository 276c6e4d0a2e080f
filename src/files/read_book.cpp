// SPDX-License-Identifier: MIT
#include "platewright/files/read_book.hpp"

#include <algorithm>
#include <atomic>
#include <deque>
#include <filesystem>
#include <map>
#include <set>
#include <string_view>
#include <unordered_map>
#include <unordered_set>

#include "files/fetched_file.hpp"
#include "files/file_kind.hpp"
#include "files/in_parallel.hpp"
#include "files/reading.hpp"
#include "platewright/book/check_book.hpp"
#include "platewright/costing/current_prices.hpp"
#include "platewright/problem/catalogue/books.hpp"
#include "platewright/problem/catalogue/files.hpp"
#include "yaml/read_yaml.hpp"

namespace platewright {
namespace reading {
namespace {

/// Whether it is a path without `.`, `..` and empty parts, as nearly all are.
bool is_plain(std::string_view path) {
  if (path.starts_with('/')) path.remove_prefix(1);
  while (true) {
    const std::string_view part = path.substr(0, path.find('/'));
    if (part.empty() || part == "." || part == "..") return false;
    if (part.size() == path.size()) return true;
    path.remove_prefix(part.size() + 1);
  }
}

std::string plain_path(const std::string& path) {
  return is_plain(path) ? path : std::filesystem::path(path).lexically_normal().string();
}

/// The file named in `beside`, by its own path.
std::string found_beside(const std::string& beside, const std::string& name) {
  if (name.starts_with('/')) return name;
  // Without a slash it is a file of this folder.
  return plain_path(beside.substr(0, beside.rfind('/') + 1) + name);
}

/// Loads the files named and all that they name, each once.
class Loader {
 public:
  explicit Loader(ProblemList& problems) : problems_(problems) {}

  std::deque<BookFile> load(const std::vector<std::string>& files) {
    for (const std::string& file : files) load_one(file, nullptr);
    // The list grows while it is walked: files name further files.
    for (std::size_t i = 0; i < files_.size(); ++i) {
      if (i == walked_ahead_) fetch_ahead();
      const std::string file = files_[i].file;
      yaml::Fields top(files_[i].root(), {file, problems_}, {}, keys_of(files_[i].kind));
      const yaml::Node* with = top.find("with");
      if (with == nullptr) continue;
      const Place place = top.place(*with, "with");
      for (const std::string& name : top.texts("with")) {
        const std::string beside = found_beside(file, name);
        if (is_list_without_brackets(name, beside)) {
          problems_.add(at(problems::wrong_shape(in_quotes(name), "a list of files",
                                                 "write it between brackets: [" + name + "]"),
                           place));
          left_any_out_ = true;
        } else {
          files_[i].with.push_back(plain_path(beside));
          load_one(beside, &place);
        }
      }
    }
    return std::move(files_);
  }

  /// All files that were opened, or that there was an attempt to open.
  std::vector<std::string> seen() const {
    std::vector<std::string> out(seen_.begin(), seen_.end());
    std::sort(out.begin(), out.end());
    return out;
  }
  /// Whether a file is missing from what was loaded, so that names may be missing too.
  bool left_any_out() const { return left_any_out_; }

 private:
  static bool is_list_without_brackets(const std::string& name, const std::string& file) {
    return name.find(", ") != std::string::npos && !std::filesystem::exists(file);
  }

  /// `named_at` is the place in the file that names this one; null for one of the command line.
  void load_one(const std::string& file, const Place* named_at) {
    const std::string plain = plain_path(file);
    if (too_large_ || !seen_.insert(plain).second) return;
    if (!load_unseen(plain, named_at)) left_any_out_ = true;
  }

  /// Fetches at once what the files name that are not walked yet, where that is worth it.
  void fetch_ahead() {
    std::vector<std::string> names;
    for (; walked_ahead_ < files_.size(); ++walked_ahead_) {
      const BookFile& file = files_[walked_ahead_];
      for (const std::string& name : names_with(file.root())) {
        std::string beside = found_beside(file.file, name);
        if (seen_.count(beside) != 0) continue;
        if (fetched_.try_emplace(beside).second) names.push_back(std::move(beside));
      }
    }
    if (!are_many(names.size())) return;
    std::vector<FetchedFile*> fetched;
    for (const std::string& name : names) fetched.push_back(&fetched_.at(name));
    std::atomic<std::size_t> bytes = bytes_;
    std::atomic<std::size_t> values = values_;
    in_parallel(names.size(), [&](std::size_t i) {
      if (bytes > most_bytes || values > most_values) return;
      *fetched[i] = fetch_file(names[i]);
      bytes += fetched[i]->bytes;
      values += fetched[i]->values;
    });
  }

  bool load_unseen(const std::string& plain, const Place* named_at) {
    if (const auto known = fetched_.find(plain); known != fetched_.end() && known->second.tree) {
      bytes_ += known->second.bytes;
      if (is_too_large(named_at, plain)) return false;
      return take_tree(std::move(known->second.tree), plain, named_at);
    }
    ProblemList unread;
    // What another file names is a file: only the user has a standard input.
    const auto text =
        named_at == nullptr ? yaml::read_named(plain, unread) : yaml::read_file(plain, unread);
    for (Problem problem : unread.all()) {
      if (named_at != nullptr) problem.place = *named_at;
      problems_.add(std::move(problem));
    }
    if (!text) return false;
    bytes_ += text->size();
    if (is_too_large(named_at, plain)) return false;
    if (!may_be_ours(*text, plain, problems_)) return false;
    auto root = yaml::read_yaml(*text, plain, problems_);
    if (!root) return false;
    return take_tree(std::make_shared<const yaml::Node>(std::move(*root)), plain, named_at);
  }

  bool take_tree(std::shared_ptr<const yaml::Node> tree, const std::string& plain,
                 const Place* named_at) {
    if (!tree->is_map()) {
      problems_.add(at(problems::wrong_shape(yaml::shape_of(*tree), "a map of keys"),
                       yaml::place_of(*tree, plain)));
      return false;
    }
    values_ += values_in(*tree);
    if (is_too_large(named_at, plain)) return false;
    see_price_list(*tree, plain);
    const auto kind = kind_among(book_kinds, *tree);
    if (!kind) {
      problems_.add(at(problems::not_a_book(), yaml::place_of(*tree, plain)));
      return false;
    }
    BookFile loaded{plain, std::move(tree), *kind, named_at == nullptr, MeasuringSystem::us};
    const bool whole = !is_broken_larder(loaded);
    files_.push_back(std::move(loaded));
    return whole;
  }

  /// Every file is within its own bounds, but there may be any number of them.
  bool is_too_large(const Place* named_at, const std::string& file) {
    constexpr std::size_t most_files = 20'000;
    const auto check = [&](std::size_t found, std::size_t most, std::string_view what) {
      if (found <= most || too_large_) return;
      too_large_ = true;
      problems_.add(at(problems::book_too_large(most, what),
                       named_at == nullptr ? Place{file, 1, 1, {}} : *named_at));
    };
    check(bytes_, most_bytes, "bytes");
    check(values_, most_values, "values");
    check(seen_.size(), most_files, "files");
    return too_large_;
  }

  /// A larder without its ingredients: they are not a map, which its reader reports.
  static bool is_broken_larder(const BookFile& file) {
    if (file.kind != FileKind::larder) return false;
    return std::any_of(
        file.root().entries.begin(), file.root().entries.end(),
        [](const auto& entry) { return entry.first.text == "larder" && !entry.second.is_map(); });
  }

  /// The supplier's list beside a file that says how to read it.
  void see_price_list(const yaml::Node& root, const std::string& file) {
    for (const auto& [key, value] : root.entries) {
      if (key.text == "price list") seen_.insert(found_beside(file, value.text));
    }
  }

  static constexpr std::size_t most_bytes = 16U << 20U;
  static constexpr std::size_t most_values = 1'000'000;

  ProblemList& problems_;
  std::unordered_set<std::string> seen_;
  std::unordered_map<std::string, FetchedFile> fetched_;
  std::size_t walked_ahead_ = 0;  ///< what the files before it name was fetched
  bool left_any_out_ = false;
  std::size_t bytes_ = 0;
  std::size_t values_ = 0;
  bool too_large_ = false;
  std::deque<BookFile> files_;
};

/// Whose measures a file is written in: its own, else those of the nearest file that it names under
/// `with`, to any depth, else US customary. What else is read in the same run changes nothing.
class Measures {
 public:
  Measures(const std::deque<BookFile>& files, ProblemList& problems) {
    for (const BookFile& file : files) {
      yaml::Fields top(file.root(), {file.file, problems}, {}, keys_of(file.kind));
      const auto own = top.read<MeasuringSystem>(
          "measures", [](const std::string& text) { return read_system(text); });
      with_[file.file] = file.with;
      if (own) known_[file.file] = *own;
    }
    spread();
  }

  MeasuringSystem of(const std::string& file) const {
    const auto known = known_.find(file);
    return known == known_.end() ? MeasuringSystem::us : known->second;
  }

 private:
  /// From the files that say it to those that name them, one step further each time, so that the
  /// nearest comes first; of equally near ones the one that is named first counts.
  void spread() {
    std::map<std::string, std::vector<std::string>> named_by;
    for (const auto& [file, names] : with_) {
      for (const std::string& name : names) named_by[name].push_back(file);
    }
    std::vector<std::string> reached;
    for (const auto& [file, system] : known_) reached.push_back(file);
    while (!reached.empty()) {
      std::map<std::string, MeasuringSystem> next;
      for (const std::string& file : reached) {
        for (const std::string& user : named_by[file]) {
          if (known_.count(user) == 0) next.emplace(user, first_known_below(user));
        }
      }
      reached.clear();
      for (const auto& [file, system] : next) reached.push_back(file);
      known_.insert(next.begin(), next.end());
    }
  }

  MeasuringSystem first_known_below(const std::string& user) const {
    const std::vector<std::string>& names = with_.at(user);
    const auto known = std::find_if(names.begin(), names.end(), [&](const std::string& name) {
      return known_.count(name) != 0;
    });
    return known_.at(*known);
  }

  std::map<std::string, MeasuringSystem> known_;
  std::map<std::string, std::vector<std::string>> with_;
};

/// Gives each file its measures; those of the first file are the book's.
MeasuringSystem set_measures(std::deque<BookFile>& files, ProblemList& problems) {
  const Measures measures(files, problems);
  for (BookFile& file : files) file.measures = measures.of(file.file);
  return files.empty() ? MeasuringSystem::us : files.front().measures;
}

}  // namespace

Book book_of_files(std::deque<BookFile> files, bool whole, ProblemList& problems) {
  Book book;
  book.measures = set_measures(files, problems);
  set_currencies(files, book, problems);
  std::vector<BookFile> tables;
  for (const BookFile& file : files) {
    book.files.push_back(file.file);
    if (file.kind == FileKind::tables) tables.push_back(file);
  }
  // Own units and weights first, since larders are written in them; larders before what
  // stands on them.
  read_own_tables(tables, book, problems);
  for (const BookFile& file : files) read_kitchen({file, book, problems});
  const auto read_all = [&](FileKind kind, void (*read)(const Reading&)) {
    for (const BookFile& file : files) {
      if (file.kind == kind) read({file, book, problems});
    }
  };
  read_all(FileKind::larder, read_larder);
  if (whole) read_all(FileKind::prices, read_prices);
  read_recipes(files, book, problems);
  read_all(FileKind::event, read_event);
  book.prices = with_newest_first(std::move(book.prices));
  files.clear();
  tables.clear();
  // Where a file is missing, so is what it names: no more is said of that until it can be read.
  if (whole) problems.add_all(check(book));
  return book;
}

Book read_what_can_be(const std::vector<std::string>& names, ProblemList& problems) {
  Loader loader(problems);
  std::deque<BookFile> files = loader.load(names);
  return book_of_files(std::move(files), !loader.left_any_out(), problems);
}

namespace {

/// The event's file, those of the command line that hold no event, and all that these name: in the
/// order in which they would be loaded by themselves.
std::deque<BookFile> files_of_event(const BookFile& event, const std::deque<BookFile>& files) {
  std::deque<BookFile> out;
  std::set<std::string> seen;
  const auto take = [&](const BookFile& file) {
    if (seen.insert(file.file).second) out.push_back(file);
  };
  take(event);
  for (const BookFile& file : files) {
    if (file.named && file.kind != FileKind::event) take(file);
  }
  // The list grows while it is walked.
  for (std::size_t i = 0; i < out.size(); ++i) {
    const std::vector<std::string> named = out[i].with;
    for (const std::string& name : named) {
      const auto found = std::find_if(files.begin(), files.end(),
                                      [&](const BookFile& file) { return file.file == name; });
      if (found != files.end()) take(*found);
    }
  }
  return out;
}

bool are_the_same(const std::deque<BookFile>& some, const std::deque<BookFile>& others) {
  return std::equal(
      some.begin(), some.end(), others.begin(), others.end(),
      [](const BookFile& left, const BookFile& right) { return left.file == right.file; });
}

}  // namespace

}  // namespace reading

std::vector<std::string> files_read_for(const std::vector<std::string>& names) {
  ProblemList not_asked_for;
  reading::Loader loader(not_asked_for);
  loader.load(names);
  return loader.seen();
}

std::optional<Book> read_book(const std::vector<std::string>& names, ProblemList& problems) {
  Book book = reading::read_what_can_be(names, problems);
  if (problems.has_errors()) return std::nullopt;
  return book;
}

std::optional<EventBooks> read_events_apart(const std::vector<std::string>& names,
                                            ProblemList& problems) {
  reading::Loader loader(problems);
  const std::deque<reading::BookFile> files = loader.load(names);
  const bool whole = !loader.left_any_out();
  EventBooks out{reading::book_of_files(files, whole, problems), {}};
  for (const reading::BookFile& file : files) {
    if (file.kind != FileKind::event || problems.has_errors()) continue;
    const auto own_files = reading::files_of_event(file, files);
    if (reading::are_the_same(own_files, files)) {
      out.apart.push_back(out.together);
      continue;
    }
    // What one of them alone is warned of has been said of all.
    ProblemList own;
    out.apart.push_back(reading::book_of_files(own_files, whole, own));
    if (own.has_errors()) problems.add_all(own);
  }
  if (problems.has_errors()) return std::nullopt;
  return out;
}

}  // namespace platewright
