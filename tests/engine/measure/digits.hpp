// How well a computed number agrees with an expected one.
#pragma once

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>

namespace wetspell::test {

/// Digits in common: -log10 of the relative error (NIST's "log relative error"), at most 15; absolute for 0.
inline double digits(double got, double expected) {
  const double error = std::abs(got - expected) / (expected == 0 ? 1 : std::abs(expected));
  return error == 0 ? 15.0 : std::clamp(-std::log10(error), 0.0, 15.0);
}

/// Leaves the digits reached in the test report.
inline void record(const std::string& what, double got, double expected) {
  testing::Test::RecordProperty(what + "_digits", std::to_string(digits(got, expected)));
}

/// EXPECT_THAT(got, agrees(expected, 1e-10)): relative difference at most `relative`; exact for 0.
inline auto agrees(double expected, double relative) {
  return testing::DoubleNear(expected, relative * std::abs(expected));
}

/// Asks `result` for its value and fails, with the words of the refusal, when there is none.
template <class R> auto value_of(const R& result) {
  if (!result) {
    ADD_FAILURE() << "refused: " << result.error().text;
    return typename R::value_type{};
  }
  return result.value();
}

} // namespace wetspell::test
