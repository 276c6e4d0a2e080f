// SPDX-License-Identifier: MIT
#include "cli/write_file.hpp"

#include <fcntl.h>
#include <poll.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>
#include <filesystem>
#include <optional>
#include <random>
#include <utility>

#include "cli/held_signals.hpp"
#include "platewright/problem/catalogue/files.hpp"
#include "platewright/problem/failure.hpp"

namespace platewright::cli {
namespace {

namespace fs = std::filesystem;

/// What the system's answer means for whoever wants the file.
Failure failure_to_write(const std::string& file, int error) {
  switch (error) {
    case ENOENT:
    case ENOTDIR:
      return Failure(problems::output_folder_not_there(file));
    case EISDIR:
      return Failure(problems::output_is_folder(file));
    case ENAMETOOLONG:
      return Failure(problems::output_name_too_long(file));
    case ENOSPC:
    case EDQUOT:
      return Failure(problems::output_no_room(file));
    case EFBIG:
      return Failure(problems::output_above_limit(file));
    default:
      return Failure(problems::file_not_writable(file, std::strerror(error)));
  }
}

/// An open file, closed with the object.
class Descriptor {
 public:
  explicit Descriptor(int number) : number_(number) {}
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;
  ~Descriptor() {
    if (number_ >= 0) ::close(number_);
  }
  int number() const { return number_; }
  bool is_open() const { return number_ >= 0; }
  /// False where the system reports only now that something was not written. An interrupted call
  /// has closed the file all the same (Linux, close(2)).
  bool close() { return ::close(std::exchange(number_, -1)) == 0 || errno == EINTR; }

 private:
  int number_;
};

/// Repeats a call that a signal interrupted.
template <class Call>
int uninterrupted(Call&& call) {
  int result = call();
  while (result < 0 && errno == EINTR) result = call();
  return result;
}

void write_all(int descriptor, std::string_view text, const std::string& file) {
  while (!text.empty()) {
    const ssize_t taken = ::write(descriptor, text.data(), text.size());
    if (taken > 0) {
      text.remove_prefix(static_cast<std::size_t>(taken));
    } else if (taken < 0 && errno == EAGAIN) {
      pollfd room{descriptor, POLLOUT, 0};
      ::poll(&room, 1, -1);
    } else if (taken == 0 || errno != EINTR) {
      throw failure_to_write(file, taken == 0 ? EIO : errno);
    }
  }
}

/// Where the text goes in the end: a link is followed as far as it leads, to a file that need not
/// be there yet.
fs::path behind_links(const std::string& file) {
  constexpr int most_links = 40;  // as the Linux kernel follows
  fs::path target(file);
  for (int i = 0; i < most_links; ++i) {
    std::error_code error;
    if (!fs::is_symlink(fs::symlink_status(target, error))) return target;
    const fs::path next = fs::read_symlink(target, error);
    if (error) throw failure_to_write(file, error.value());
    target = next.is_absolute() ? next : target.parent_path() / next;
  }
  throw failure_to_write(file, ELOOP);
}

/// What stands there now; nothing where the file is new.
std::optional<struct stat> found_at(const fs::path& target, const std::string& file) {
  struct stat found {};
  if (::stat(target.c_str(), &found) == 0) return found;
  if (errno != ENOENT) throw failure_to_write(file, errno);
  return std::nullopt;
}

std::string random_name() {
  static constexpr char letters[] = "abcdefghijklmnopqrstuvwxyz0123456789";
  std::random_device random;
  std::string out = ".platewright-";
  for (int i = 0; i < 12; ++i) out += letters[random() % (sizeof letters - 1)];
  return out;
}

/// A file of its own beside the target, taken away again unless it took the target's place. Its
/// name was free, and nobody's link is followed.
class Beside {
 public:
  Beside(const fs::path& target, const std::string& file, mode_t mode)
      : file_(file),
        folder_(uninterrupted([&] {
          const fs::path parent = target.parent_path();
          return ::open(parent.empty() ? "." : parent.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
        })),
        final_name_(target.filename()) {
    if (!folder_.is_open()) throw failure_to_write(file_, errno);
    constexpr int most_tries = 100;
    for (int i = 0; i < most_tries; ++i) {
      name_ = random_name();
      number_ = uninterrupted([&] {
        return ::openat(folder_.number(), name_.c_str(),
                        O_WRONLY | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC, mode);
      });
      if (number_ >= 0) return;
      if (errno != EEXIST) break;
    }
    throw failure_to_write(file_, errno);
  }
  Beside(const Beside&) = delete;
  Beside& operator=(const Beside&) = delete;
  ~Beside() {
    if (number_ >= 0) ::close(number_);
    if (!in_place_) ::unlinkat(folder_.number(), name_.c_str(), 0);
  }

  int number() const { return number_; }

  /// Owner and mode of the file that is there; of the owner, what this user may give.
  void take_over(const struct stat& old) {
    [[maybe_unused]] const int as_far_as_may_be = ::fchown(number_, old.st_uid, old.st_gid);
    check(uninterrupted([&] { return ::fchmod(number_, old.st_mode & 07777U); }));
  }

  /// The disk has the text before the name stands for it, and the name before this returns.
  void take_the_place() {
    check(uninterrupted([&] { return ::fsync(number_); }));
    Descriptor text(std::exchange(number_, -1));
    if (!text.close()) throw failure_to_write(file_, errno);
    check(uninterrupted([&] {
      return ::renameat(folder_.number(), name_.c_str(), folder_.number(), final_name_.c_str());
    }));
    in_place_ = true;
    // Some disks know no such order for folders, and say EINVAL.
    const int kept = uninterrupted([&] { return ::fsync(folder_.number()); });
    if (kept != 0 && errno != EINVAL) throw Failure(problems::output_not_kept(file_));
  }

 private:
  void check(int result) const {
    if (result != 0) throw failure_to_write(file_, errno);
  }

  const std::string& file_;
  Descriptor folder_;
  std::string final_name_;
  std::string name_;
  int number_ = -1;
  bool in_place_ = false;
};

/// A device or a pipe: there is nothing to keep whole, and nothing to put in its place.
void write_through(const fs::path& target, const std::string& file, std::string_view text) {
  Descriptor there(
      uninterrupted([&] { return ::open(target.c_str(), O_WRONLY | O_NOCTTY | O_CLOEXEC); }));
  if (!there.is_open()) throw failure_to_write(file, errno);
  write_all(there.number(), text, file);
  if (!there.close()) throw failure_to_write(file, errno);
}

}  // namespace

void write_file(const std::string& file, std::string_view text) {
  const fs::path target = behind_links(file);
  const auto old = found_at(target, file);
  if ((old && S_ISDIR(old->st_mode)) || !target.has_filename())
    throw failure_to_write(file, EISDIR);
  if (old && !S_ISREG(old->st_mode)) return write_through(target, file, text);
  // Another file in its place would get around what protects this one.
  if (old && ::access(target.c_str(), W_OK) != 0) throw failure_to_write(file, errno);
  const HeldSignals held;
  Beside beside(target, file, old ? 0600 : 0666);
  write_all(beside.number(), text, file);
  if (old) beside.take_over(*old);
  beside.take_the_place();
}

void write_standard_output(std::string_view text) {
  write_all(STDOUT_FILENO, text, "standard output");
}

}  // namespace platewright::cli
