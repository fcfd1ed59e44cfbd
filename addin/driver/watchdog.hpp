#pragma once
// Calls into an office have no limit of their own: an office that hangs would hang us, and one that swallows
// what some file demands would take the machine with it.

#include <atomic>
#include <chrono>
#include <functional>
#include <optional>
#include <thread>

namespace wetspell::driver {

/// Runs `bite` in a thread of its own when the time is over, when `grown` says that the office has grown too
/// large, or when the program is told to stop (interrupt or termination signal); once, or not at all.
class Watchdog {
public:
  enum class Reason { TimeOver, Grown, Stopped };

  Watchdog(std::chrono::seconds limit, std::function<void(Reason)> bite, std::function<bool()> grown = {});
  ~Watchdog();
  Watchdog(const Watchdog&) = delete;
  Watchdog& operator=(const Watchdog&) = delete;

  /// Counts anew, from now.
  void allow(std::chrono::seconds limit);
  /// Why it has bitten; nothing: it has not.
  std::optional<Reason> hasBitten() const;

private:
  std::atomic<std::chrono::steady_clock::time_point> end_;
  std::atomic<bool> bitten_ = false;
  std::atomic<Reason> reason_ = Reason::TimeOver;
  std::jthread thread_;
};

} // namespace wetspell::driver
