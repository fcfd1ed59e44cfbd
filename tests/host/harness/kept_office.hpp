#pragma once
// An office that is started once and serves a whole test program.

#include "driver/office.hpp"

#include <gtest/gtest.h>

#include <memory>

namespace wetspell::host {

/// Starts its office at the first use and ends it with the last test, while the program is still whole and
/// not among the destructors of its statics.
class KeptOffice : public ::testing::Environment {
public:
  using Start = std::unique_ptr<driver::Office> (*)();

  explicit KeptOffice(Start start) : start_(start) {}

  driver::Office& office() {
    if (!office_)
      office_ = start_();
    return *office_;
  }
  void TearDown() override { office_.reset(); }

private:
  Start start_;
  std::unique_ptr<driver::Office> office_;
};

/// For the initialiser of a static: GoogleTest learns of its environments, and owns them, from before main
/// on.
inline KeptOffice& keepOffice(KeptOffice::Start start) {
  auto* const kept = new KeptOffice(start);
  ::testing::AddGlobalTestEnvironment(kept);
  return *kept;
}

} // namespace wetspell::host
