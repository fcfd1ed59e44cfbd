#pragma once
// A socket of this machine that notices whether anybody comes.

#include <stdexcept>
#include <string>

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
  }
  ~Listener() { ::close(socket_); }
  Listener(const Listener&) = delete;
  Listener& operator=(const Listener&) = delete;
  [[nodiscard]] std::string address() const { return "http://127.0.0.1:" + std::to_string(port_) + "/"; }
  [[nodiscard]] bool somebodyCame() const {
    pollfd waiting{socket_, POLLIN, 0};
    return poll(&waiting, 1, 500) > 0;
  }

private:
  int socket_;
  int port_ = 0;
};

} // namespace wetspell::host
