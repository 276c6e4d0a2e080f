// SPDX-License-Identifier: MIT
// Files as they stand on the disk, and standard input.

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <filesystem>

#include "platewright/problem/catalogue/files.hpp"
#include "yaml/read_yaml.hpp"

namespace platewright::yaml {
namespace {

/// All that can be read, or more than the bound. False where reading failed. A text of the size
/// that is expected takes two calls of the system.
bool read_up_to(int descriptor, std::size_t bound, std::size_t expected, std::string& text) {
  constexpr std::size_t at_a_time = 65536;
  std::size_t size = 0;
  while (size <= bound) {
    text.resize(size + (expected > size ? expected - size : at_a_time));
    const ssize_t got = ::read(descriptor, text.data() + size, text.size() - size);
    if (got < 0 && errno != EINTR) return false;
    if (got > 0) size += static_cast<std::size_t>(got);
    if (got == 0) break;
  }
  text.resize(size);
  return true;
}

/// One byte more than the file has, so that its end is met; a huge one is not taken at its word.
std::size_t size_expected(const struct stat& file, const Bounds& bounds) {
  if (file.st_size < 0) return 0;
  return std::min(static_cast<std::size_t>(file.st_size), bounds.bytes) + 1;
}

std::optional<std::string> bounded(bool was_read, std::string text, const std::string& file,
                                   ProblemList& problems, const Bounds& bounds) {
  const Place place{file, 1, 1, {}};
  if (!was_read) {
    problems.add(at(problems::file_not_readable(file), place));
    return std::nullopt;
  }
  if (text.size() > bounds.bytes) {
    problems.add(at(problems::file_too_large("more than " + std::to_string(bounds.bytes) + " bytes",
                                             bounds.bytes),
                    place));
    return std::nullopt;
  }
  return text;
}

/// Standard input can be read once, and is asked for more than once.
const std::optional<std::string>& standard_input(std::size_t bound) {
  static const std::optional<std::string> all = [bound]() -> std::optional<std::string> {
    std::string text;
    if (!read_up_to(STDIN_FILENO, bound, 0, text)) return std::nullopt;
    return text;
  }();
  return all;
}

/// The file that is there under this name with the ending of a book; empty where there is none.
std::string with_an_ending(const std::string& file) {
  for (const char* ending : {".yaml", ".yml"}) {
    std::filesystem::path path(file);
    path += ending;
    std::error_code unknown;
    if (std::filesystem::is_regular_file(path, unknown)) return path.filename().string();
  }
  return {};
}

}  // namespace

std::optional<std::string> read_file(const std::string& file, ProblemList& problems,
                                     const Bounds& bounds) {
  struct stat found {};
  if (::stat(file.c_str(), &found) != 0 && (errno == ENOENT || errno == ENOTDIR)) {
    problems.add(at(problems::file_not_there(file, with_an_ending(file)), Place{file, 1, 1, {}}));
    return std::nullopt;
  }
  // The type is asked for before the file is opened, since opening a device may do something, and
  // again after it; a pipe that nobody writes into is not waited for.
  int descriptor = -1;
  if (S_ISREG(found.st_mode)) {
    do {
      descriptor = ::open(file.c_str(), O_RDONLY | O_NONBLOCK | O_CLOEXEC | O_NOCTTY);
    } while (descriptor < 0 && errno == EINTR);
  }
  std::string text;
  const bool was_read = descriptor >= 0 && ::fstat(descriptor, &found) == 0 &&
                        S_ISREG(found.st_mode) &&
                        read_up_to(descriptor, bounds.bytes, size_expected(found, bounds), text);
  if (descriptor >= 0) ::close(descriptor);
  return bounded(was_read, std::move(text), file, problems, bounds);
}

std::optional<std::string> read_named(const std::string& file, ProblemList& problems,
                                      const Bounds& bounds) {
  if (file != standard_input_name) return read_file(file, problems, bounds);
  const auto& text = standard_input(bounds.bytes);
  return bounded(text.has_value(), text.value_or(""), file, problems, bounds);
}

}  // namespace platewright::yaml
