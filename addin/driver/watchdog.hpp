#pragma once
// Calls into an office have no time limit of their own: an office that hangs would hang us.

#include <atomic>
#include <chrono>
#include <functional>
#include <thread>

namespace wetspell::driver {

/// Runs `bite` in a thread of its own when the time is over, or when the program is told to stop
/// (interrupt or termination signal); once, or not at all.
class Watchdog {
public:
  enum class Reason { TimeOver, Stopped };

  Watchdog(std::chrono::seconds limit, std::function<void(Reason)> bite);
  ~Watchdog();
  Watchdog(const Watchdog&) = delete;
  Watchdog& operator=(const Watchdog&) = delete;

  /// Counts anew, from now.
  void allow(std::chrono::seconds limit);
  bool hasBitten() const { return bitten_; }

private:
  std::atomic<std::chrono::steady_clock::time_point> end_;
  std::atomic<bool> bitten_ = false;
  std::jthread thread_;
};

} // namespace wetspell::driver
