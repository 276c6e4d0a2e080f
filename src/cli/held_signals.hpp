// SPDX-License-Identifier: MIT
#pragma once
// Signals that wait while a file is written.

#include <array>
#include <csignal>

namespace platewright::cli {

/// While it lives, what would end the program in order waits, and a file that grows past the user's
/// limit is an error of the call that writes it: so nothing half-written is left behind. Afterwards
/// a signal that came does what it always does.
class HeldSignals {
 public:
  HeldSignals() {
    sigset_t held;
    sigemptyset(&held);
    for (const int signal : ending) sigaddset(&held, signal);
    sigprocmask(SIG_BLOCK, &held, &before_);
    struct sigaction ignored {};
    ignored.sa_handler = SIG_IGN;
    sigaction(SIGXFSZ, &ignored, &file_size_before_);
  }
  HeldSignals(const HeldSignals&) = delete;
  HeldSignals& operator=(const HeldSignals&) = delete;
  ~HeldSignals() {
    sigaction(SIGXFSZ, &file_size_before_, nullptr);
    sigprocmask(SIG_SETMASK, &before_, nullptr);
  }

 private:
  static constexpr std::array<int, 11> ending{SIGHUP,  SIGINT,  SIGQUIT, SIGTERM, SIGALRM,  SIGUSR1,
                                              SIGUSR2, SIGXCPU, SIGPIPE, SIGTSTP, SIGVTALRM};
  sigset_t before_{};
  struct sigaction file_size_before_ {};
};

}  // namespace platewright::cli
