// SPDX-License-Identifier: MIT
// A library that is loaded before the C library and lets one call of the system go wrong:
// FAULT_AT=N is the call, counted from 1; FAULT_KIND is EIO, ENOSPC, EINTR, short or kill;
// FAULT_MET is a file that is made when that call is reached. With FAULT_LOG none goes wrong, and
// that file gets a line for each call: what it is about.

#include <dlfcn.h>
#include <fcntl.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <unistd.h>

#include <cerrno>
#include <csignal>
#include <cstdarg>
#include <cstdio>
#include <cstdlib>
#include <string>

namespace {

std::string setting(const char* name) {
  const char* const text = std::getenv(name);
  return text == nullptr ? std::string() : std::string(text);
}

/// Adds a line to a file, or makes it.
void add_line(const std::string& file, const std::string& line) {
  const long made =
      syscall(SYS_openat, AT_FDCWD, file.c_str(), O_WRONLY | O_CREAT | O_APPEND, 0600);
  if (made < 0) return;
  syscall(SYS_write, made, (line + "\n").c_str(), line.size() + 1);
  syscall(SYS_close, made);
}

/// What the open file is called.
std::string name_of(int file) {
  char name[4096];
  const std::string link = "/proc/self/fd/" + std::to_string(file);
  const long size = syscall(SYS_readlinkat, AT_FDCWD, link.c_str(), name, sizeof name);
  return size < 0 ? "" : std::string(name, static_cast<std::size_t>(size));
}
std::string name_of(const char* name) {
  return name;
}
std::string name_of(std::FILE* file) {
  return name_of(fileno(file));
}

/// Whether this call is the one; a kill happens here.
bool is_the_next(const std::string& name) {
  static const long wanted = std::strtol(setting("FAULT_AT").c_str(), nullptr, 10);
  static const std::string log = setting("FAULT_LOG");
  static long calls = 0;
  if (!log.empty()) add_line(log, name);
  if (++calls != wanted) return false;
  add_line(setting("FAULT_MET"), name);
  if (setting("FAULT_KIND") == "kill") syscall(SYS_kill, getpid(), SIGKILL);
  return true;
}

template <class File>
bool is_the_one(File file) {
  return is_the_next(name_of(file));
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

template <class File>
bool fails(File file) {
  return is_the_one(file) && !is_short();
}

/// Of a call that Linux never interrupts, and of a stream, which goes on by itself.
template <class File>
bool fails_uninterrupted(File file) {
  return is_the_one(file) && !is_short() && setting("FAULT_KIND") != "EINTR";
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
  if (fails(name)) return failed();
  return next<int(const char*, int, ...)>("open")(name, flags, mode);
}

int openat(int folder, const char* name, int flags, ...) {
  std::va_list rest;
  va_start(rest, flags);
  const mode_t mode = mode_among(flags, rest);
  va_end(rest);
  if (fails(name)) return failed();
  return next<int(int, const char*, int, ...)>("openat")(folder, name, flags, mode);
}

ssize_t read(int file, void* to, std::size_t size) {
  if (is_the_one(file)) {
    if (!is_short()) return failed();
    size = size > 7 ? 7 : size;
  }
  return next<ssize_t(int, void*, std::size_t)>("read")(file, to, size);
}

ssize_t write(int file, const void* from, std::size_t size) {
  if (is_the_one(file)) {
    if (!is_short()) return failed();
    size = size > 7 ? 7 : size;
  }
  return next<ssize_t(int, const void*, std::size_t)>("write")(file, from, size);
}

/// Interrupted or not, the file is closed.
int close(int file) {
  const bool fault = fails(file);
  const int result = next<int(int)>("close")(file);
  return fault ? failed() : result;
}

int stat(const char* name, struct stat* found) noexcept {
  return fails_uninterrupted(name) ? failed()
                                   : next<int(const char*, struct stat*)>("stat")(name, found);
}

int fstat(int file, struct stat* found) noexcept {
  return fails_uninterrupted(file) ? failed() : next<int(int, struct stat*)>("fstat")(file, found);
}

int access(const char* name, int mode) noexcept {
  return fails_uninterrupted(name) ? failed() : next<int(const char*, int)>("access")(name, mode);
}

int fsync(int file) {
  return fails(file) ? failed() : next<int(int)>("fsync")(file);
}

int fchmod(int file, mode_t mode) noexcept {
  return fails(file) ? failed() : next<int(int, mode_t)>("fchmod")(file, mode);
}

int fchown(int file, uid_t user, gid_t group) noexcept {
  return fails(file) ? failed() : next<int(int, uid_t, gid_t)>("fchown")(file, user, group);
}

int renameat(int from_folder, const char* from, int to_folder, const char* to) noexcept {
  if (fails(to)) return failed();
  return next<int(int, const char*, int, const char*)>("renameat")(from_folder, from, to_folder,
                                                                   to);
}

int unlinkat(int folder, const char* name, int flags) noexcept {
  return fails(name) ? failed() : next<int(int, const char*, int)>("unlinkat")(folder, name, flags);
}

int mkdir(const char* name, mode_t mode) noexcept {
  return fails_uninterrupted(name) ? failed() : next<int(const char*, mode_t)>("mkdir")(name, mode);
}

// A workbook is made in files of the C library.

std::FILE* fopen(const char* name, const char* mode) {
  if (!fails_uninterrupted(name)) {
    return next<std::FILE*(const char*, const char*)>("fopen")(name, mode);
  }
  failed();
  return nullptr;
}

std::FILE* fopen64(const char* name, const char* mode) {
  if (!fails_uninterrupted(name)) {
    return next<std::FILE*(const char*, const char*)>("fopen64")(name, mode);
  }
  failed();
  return nullptr;
}

std::FILE* tmpfile() {
  if (!fails_uninterrupted("a temporary file")) return next<std::FILE*()>("tmpfile")();
  failed();
  return nullptr;
}

std::size_t fwrite(const void* from, std::size_t size, std::size_t count, std::FILE* file) {
  if (!fails_uninterrupted(file)) {
    return next<std::size_t(const void*, std::size_t, std::size_t, std::FILE*)>("fwrite")(
        from, size, count, file);
  }
  failed();
  return 0;
}

int fclose(std::FILE* file) {
  const bool fault = fails_uninterrupted(file);
  const int result = next<int(std::FILE*)>("fclose")(file);
  return fault ? failed() : result;
}

}  // extern "C"
