#pragma once
// A socket of this machine that notices whether anybody comes, and sends them away without an answer.

#include <atomic>
#include <chrono>
#include <stdexcept>
#include <string>
#include <thread>

#include <arpa/inet.h>
#include <poll.h>
#include <sys/socket.h>
#include <unistd.h>

namespace wetspell::host {

class Listener {
public:
  Listener() : socket_(::socket(AF_INET, SOCK_STREAM, 0)) {
    sockaddr_in address{};
    address.sin_family = AF_INET;
    address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    socklen_t length = sizeof address;
    if (bind(socket_, reinterpret_cast<const sockaddr*>(&address), length) != 0 || listen(socket_, 1) != 0 ||
        getsockname(socket_, reinterpret_cast<sockaddr*>(&address), &length) != 0)
      throw std::runtime_error("no socket to listen on");
    port_ = ntohs(address.sin_port);
    door_ = std::jthread([this](const std::stop_token& ends) { keep(ends); });
  }
  ~Listener() {
    door_.request_stop();
    door_.join();
    ::close(socket_);
  }
  Listener(const Listener&) = delete;
  Listener& operator=(const Listener&) = delete;
  [[nodiscard]] std::string address() const { return "http://127.0.0.1:" + std::to_string(port_) + "/"; }
  [[nodiscard]] bool somebodyCame() const {
    for (int wait = 0; wait < 10 && !came_; ++wait)
      std::this_thread::sleep_for(std::chrono::milliseconds(50));
    return came_;
  }

private:
  /// Who waits for an answer would wait for ever.
  void keep(const std::stop_token& ends) {
    while (!ends.stop_requested()) {
      pollfd waiting{socket_, POLLIN, 0};
      if (poll(&waiting, 1, 50) <= 0)
        continue;
      came_ = true;
      if (const int visitor = accept(socket_, nullptr, nullptr); visitor >= 0)
        ::close(visitor);
    }
  }

  int socket_;
  int port_ = 0;
  std::atomic<bool> came_ = false;
  std::jthread door_;
};

} // namespace wetspell::host
