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
  for (const std::size_t count : {0U, 1U, 1001U})
    for (const std::size_t parts : {1U, 2U, 7U}) {
      std::size_t next = 0;
      for (std::size_t part = 0; part < parts; ++part) {
        const wetspell::Range range = range_of(part, parts, count);
        EXPECT_EQ(range.first, next);
        EXPECT_LE(range.first, range.end);
        next = range.end;
      }
      EXPECT_EQ(next, count);
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
