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

Watchdog::Watchdog(std::chrono::seconds limit, std::function<void(Reason)> bite) {
  listenForSignals();
  allow(limit);
  thread_ = std::jthread([this, bite = std::move(bite)](const std::stop_token& stop) {
    while (!stop.stop_requested()) {
      const bool over = std::chrono::steady_clock::now() >= end_.load();
      if (over || stopSignal != 0) {
        bitten_ = true;
        bite(over ? Reason::TimeOver : Reason::Stopped);
        return;
      }
      std::this_thread::sleep_for(std::chrono::milliseconds(100));
    }
  });
}

Watchdog::~Watchdog() = default;

void Watchdog::allow(std::chrono::seconds limit) {
  end_ = std::chrono::steady_clock::now() + limit;
}

} // namespace wetspell::driver
