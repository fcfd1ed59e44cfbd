#include "base/fixed_array.hpp"

#include <gmock/gmock.h>

#include <stdexcept>
#include <vector>

namespace {

using namespace wetspell;
using namespace testing;

struct Small {
  int number = 7;
};

TEST(FixedArray, HoldsWhatIsMadeInAnyOrder) {
  FixedArray<Small> all(3);
  all.make(2, 2);
  all.make(0);
  all.make(1, 1).number += 10;
  std::vector<int> numbers;
  for (const Small& one : all)
    numbers.push_back(one.number);
  EXPECT_THAT(numbers, ElementsAre(7, 11, 2));
  EXPECT_EQ(all.at(2).number, 2);
  EXPECT_THROW(static_cast<void>(all.at(3)), std::out_of_range);
}

TEST(FixedArray, MovesWithAllThatItHolds) {
  FixedArray<Small> all(1);
  all.make(0, 5);
  FixedArray<Small> moved(std::move(all));
  EXPECT_EQ(moved.at(0).number, 5);
  moved = FixedArray<Small>();
  EXPECT_TRUE(moved.empty());
}

} // namespace
