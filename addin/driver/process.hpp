#pragma once
// A program started by us and never left behind.

#include <osl/process.h>

#include <chrono>
#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace wetspell::driver {

/// Runs a program, with the office's own portability layer, so that no system is named here.
class Process {
public:
  /// Starts it, with our environment and what `environment` ("NAME=value") adds to it. Output goes where ours
  /// goes. Throws Failure when it cannot be started.
  Process(const std::filesystem::path& program, const std::vector<std::string>& arguments,
          const std::vector<std::string>& environment);
  /// Kills what still runs, and waits for its end.
  ~Process();
  Process(const Process&) = delete;
  Process& operator=(const Process&) = delete;

  /// Waits for the end: its exit code, or nothing when it still runs after that time.
  std::optional<int> wait(std::chrono::milliseconds atMost);
  void kill();
  /// Bytes it has in memory; 0 where the system does not say.
  std::uint64_t memory() const;

private:
  oslProcess handle_ = nullptr;
};

} // namespace wetspell::driver
