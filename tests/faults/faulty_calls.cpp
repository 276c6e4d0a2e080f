// A library that is loaded before the C library and lets one call of the system go wrong:
// FAULT_AT=N is the call, counted from 1; FAULT_KIND is EIO, ENOSPC, EINTR, short or kill;
// FAULT_MET is a file that is made when that call is reached.

#include <dlfcn.h>
#include <fcntl.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <unistd.h>

#include <cerrno>
#include <csignal>
#include <cstdarg>
#include <cstdlib>
#include <string>

namespace {

std::string setting(const char* name) {
  const char* const text = std::getenv(name);
  return text == nullptr ? std::string() : std::string(text);
}

/// Whether this call is the one; a kill happens here.
bool is_the_one() {
  static const long wanted = std::strtol(setting("FAULT_AT").c_str(), nullptr, 10);
  static long calls = 0;
  if (++calls != wanted) return false;
  const std::string met = setting("FAULT_MET");
  const long made = syscall(SYS_openat, AT_FDCWD, met.c_str(), O_WRONLY | O_CREAT, 0600);
  if (made >= 0) syscall(SYS_close, made);
  if (setting("FAULT_KIND") == "kill") syscall(SYS_kill, getpid(), SIGKILL);
  return true;
}

bool is_short() {
  return setting("FAULT_KIND") == "short";
}

/// -1, and errno as wanted.
int failed() {
  const std::string kind = setting("FAULT_KIND");
  errno = kind == "EINTR" ? EINTR : kind == "ENOSPC" ? ENOSPC : EIO;
  return -1;
}

bool fails() {
  return is_the_one() && !is_short();
}

/// Of a call that Linux never interrupts.
bool fails_uninterrupted() {
  return is_the_one() && !is_short() && setting("FAULT_KIND") != "EINTR";
}

template <class Function>
Function* next(const char* name) {
  return reinterpret_cast<Function*>(dlsym(RTLD_NEXT, name));
}

mode_t mode_among(int flags, std::va_list rest) {
  return (flags & O_CREAT) == 0 ? 0 : static_cast<mode_t>(va_arg(rest, unsigned));
}

}  // namespace

extern "C" {

int open(const char* name, int flags, ...) {
  std::va_list rest;
  va_start(rest, flags);
  const mode_t mode = mode_among(flags, rest);
  va_end(rest);
  if (fails()) return failed();
  return next<int(const char*, int, ...)>("open")(name, flags, mode);
}

int openat(int folder, const char* name, int flags, ...) {
  std::va_list rest;
  va_start(rest, flags);
  const mode_t mode = mode_among(flags, rest);
  va_end(rest);
  if (fails()) return failed();
  return next<int(int, const char*, int, ...)>("openat")(folder, name, flags, mode);
}

ssize_t read(int file, void* to, std::size_t size) {
  if (is_the_one()) {
    if (!is_short()) return failed();
    size = size > 7 ? 7 : size;
  }
  return next<ssize_t(int, void*, std::size_t)>("read")(file, to, size);
}

ssize_t write(int file, const void* from, std::size_t size) {
  if (is_the_one()) {
    if (!is_short()) return failed();
    size = size > 7 ? 7 : size;
  }
  return next<ssize_t(int, const void*, std::size_t)>("write")(file, from, size);
}

/// Interrupted or not, the file is closed.
int close(int file) {
  const bool fault = fails();
  const int result = next<int(int)>("close")(file);
  return fault ? failed() : result;
}

int stat(const char* name, struct stat* found) noexcept {
  return fails_uninterrupted() ? failed()
                               : next<int(const char*, struct stat*)>("stat")(name, found);
}

int fstat(int file, struct stat* found) noexcept {
  return fails_uninterrupted() ? failed() : next<int(int, struct stat*)>("fstat")(file, found);
}

int access(const char* name, int mode) noexcept {
  return fails_uninterrupted() ? failed() : next<int(const char*, int)>("access")(name, mode);
}

int fsync(int file) {
  return fails() ? failed() : next<int(int)>("fsync")(file);
}

int fchmod(int file, mode_t mode) noexcept {
  return fails() ? failed() : next<int(int, mode_t)>("fchmod")(file, mode);
}

int fchown(int file, uid_t user, gid_t group) noexcept {
  return fails() ? failed() : next<int(int, uid_t, gid_t)>("fchown")(file, user, group);
}

int renameat(int from_folder, const char* from, int to_folder, const char* to) noexcept {
  if (fails()) return failed();
  return next<int(int, const char*, int, const char*)>("renameat")(from_folder, from, to_folder,
                                                                   to);
}

int unlinkat(int folder, const char* name, int flags) noexcept {
  return fails() ? failed() : next<int(int, const char*, int)>("unlinkat")(folder, name, flags);
}

}  // extern "C"
