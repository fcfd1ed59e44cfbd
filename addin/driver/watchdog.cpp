#include "driver/watchdog.hpp"

#include <csignal>
#include <mutex>

namespace wetspell::driver {

namespace {

volatile std::sig_atomic_t stopSignal = 0;

extern "C" void noteSignal(int signal) {
  stopSignal = signal;
}

void listenForSignals() {
  static std::once_flag once;
  std::call_once(once, [] {
    std::signal(SIGINT, noteSignal);
    std::signal(SIGTERM, noteSignal);
  });
}

} // namespace

Watchdog::Watchdog(std::chrono::seconds limit, std::function<void(Reason)> bite,
                   std::function<bool()> grown) {
  listenForSignals();
  allow(limit);
  thread_ =
      std::jthread([this, bite = std::move(bite), grown = std::move(grown)](const std::stop_token& stop) {
        while (!stop.stop_requested()) {
          const bool over = std::chrono::steady_clock::now() >= end_.load();
          const bool large = grown && grown();
          if (over || large || stopSignal != 0) {
            reason_ = stopSignal != 0 ? Reason::Stopped : over ? Reason::TimeOver : Reason::Grown;
            bitten_ = true;
            bite(reason_);
            return;
          }
          std::this_thread::sleep_for(std::chrono::milliseconds(100));
        }
      });
}

Watchdog::~Watchdog() = default;

std::optional<Watchdog::Reason> Watchdog::hasBitten() const {
  return bitten_ ? std::optional(reason_.load()) : std::nullopt;
}

void Watchdog::allow(std::chrono::seconds limit) {
  end_ = std::chrono::steady_clock::now() + limit;
}

} // namespace wetspell::driver
