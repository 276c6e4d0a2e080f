// SPDX-License-Identifier: MIT
#include "support/process.hpp"

#include <fcntl.h>
#include <poll.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <chrono>
#include <csignal>
#include <cstring>
#include <stdexcept>

namespace platewright::test {

namespace {

struct Pipe {
  int read_end = -1;
  int write_end = -1;
  Pipe() {
    std::array<int, 2> ends{};
    if (pipe2(ends.data(), O_CLOEXEC) != 0) throw std::runtime_error("no pipe");
    read_end = ends[0];
    write_end = ends[1];
  }
  Pipe(const Pipe&) = delete;
  Pipe& operator=(const Pipe&) = delete;
  ~Pipe() {
    close(read_end);
    close_writing();
  }
  void close_writing() {
    if (write_end >= 0) close(write_end);
    write_end = -1;
  }
};

[[noreturn]] void become(const std::vector<std::string>& words, const std::filesystem::path& folder,
                         const std::string& input, const Pipe& out, const Pipe& err) {
  dup2(out.write_end, STDOUT_FILENO);
  dup2(err.write_end, STDERR_FILENO);
  std::vector<char*> arguments;
  for (const std::string& word : words) arguments.push_back(const_cast<char*>(word.c_str()));
  arguments.push_back(nullptr);
  if (chdir(folder.c_str()) == 0 && dup2(open(input.c_str(), O_RDONLY), STDIN_FILENO) >= 0) {
    execvp(arguments[0], arguments.data());
  }
  const char* const why = std::strerror(errno);
  [[maybe_unused]] const ssize_t ignored = write(STDERR_FILENO, why, std::strlen(why));
  _exit(127);
}

}  // namespace

Outcome run(const std::vector<std::string>& words, const std::filesystem::path& folder,
            unsigned seconds, const std::string& input) {
  if (words.empty()) throw std::runtime_error("an empty command");
  Pipe out;
  Pipe err;
  const pid_t child = fork();
  if (child < 0) throw std::runtime_error("can't start " + words[0]);
  if (child == 0) become(words, folder, input, out, err);
  out.close_writing();
  err.close_writing();

  Outcome outcome;
  const auto end = std::chrono::steady_clock::now() + std::chrono::seconds(seconds);
  std::array<pollfd, 2> watched{{{out.read_end, POLLIN, 0}, {err.read_end, POLLIN, 0}}};
  const std::array<std::string*, 2> texts{&outcome.printed, &outcome.complained};
  bool ended_by_us = false;
  while (watched[0].fd >= 0 || watched[1].fd >= 0) {
    if (!ended_by_us && std::chrono::steady_clock::now() > end) {
      kill(child, SIGKILL);
      ended_by_us = true;
    }
    poll(watched.data(), watched.size(), 100);
    for (std::size_t i = 0; i < watched.size(); ++i) {
      if (watched[i].fd < 0 || watched[i].revents == 0) continue;
      std::array<char, 65536> buffer{};
      const ssize_t got = read(watched[i].fd, buffer.data(), buffer.size());
      if (got > 0) texts[i]->append(buffer.data(), static_cast<std::size_t>(got));
      if (got == 0) watched[i].fd = -1;
    }
  }
  int status = 0;
  waitpid(child, &status, 0);
  outcome.exit = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
  if (ended_by_us) {
    outcome.complained += "\nended after " + std::to_string(seconds) + " seconds\n";
  }
  return outcome;
}

std::vector<std::string> words_of(const std::string& line) {
  std::vector<std::string> words;
  std::string word;
  bool in_word = false;
  char quote = 0;
  for (const char c : line) {
    if (quote != 0) {
      if (c == quote) {
        quote = 0;
      } else {
        word += c;
      }
    } else if (c == '"' || c == '\'') {
      quote = c;
      in_word = true;
    } else if (c == ' ') {
      if (in_word) words.push_back(word);
      word.clear();
      in_word = false;
    } else {
      word += c;
      in_word = true;
    }
  }
  if (quote != 0) throw std::runtime_error("a quote is not closed in: " + line);
  if (in_word) words.push_back(word);
  return words;
}

}  // namespace platewright::test
