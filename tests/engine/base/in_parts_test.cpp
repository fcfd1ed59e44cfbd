#include "base/in_parts.hpp"

#include <gmock/gmock.h>

#include <atomic>
#include <stdexcept>

namespace {

using namespace wetspell;
using namespace testing;

TEST(InParts, OneForAShortLoopAndNeverMoreThanProcessors) {
  EXPECT_EQ(parts_of(0, 100), 1U);
  EXPECT_EQ(parts_of(199, 100), 1U);
  EXPECT_LE(parts_of(1'000'000, 1), std::max(1U, std::thread::hardware_concurrency()));
}

TEST(InParts, EachPartOnce) {
  std::vector<int> calls(7);
  in_parts(calls.size(), [&](std::size_t part) { ++calls[part]; });
  EXPECT_THAT(calls, Each(1));
}

TEST(InParts, RangesTogetherAreTheWhole) {
  for (const std::size_t count : {std::size_t{0}, std::size_t{1}, std::size_t{1001}}) {
    std::vector<int> seen(count);
    in_ranges(count, 10, [&](std::size_t first, std::size_t end) {
      for (std::size_t i = first; i < end; ++i)
        ++seen[i];
    });
    EXPECT_THAT(seen, Each(1)) << count;
  }
}

TEST(InParts, WhatAPartThrowsIsThrownOnceAllAreDone) {
  for (const std::size_t bad : {0U, 2U}) {
    std::atomic<int> done = 0;
    EXPECT_THROW(in_parts(3,
                          [&](std::size_t part) {
                            if (part == bad)
                              throw std::runtime_error("no");
                            ++done;
                          }),
                 std::runtime_error);
    EXPECT_EQ(done, 2);
  }
}

} // namespace
