// Garwood 1936, Biometrika 28:437-442: exact limits of a Poisson count. Values: R 4.2.2, poisson.test.
#include "estimate/proportion.hpp"

#include "engine/measure/digits.hpp"

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;

TEST(Garwood1936, Limits) {
  struct Expected {
    double count, low, high;
  };
  for (const Expected& row :
       {Expected{0, 0, 3.6888794541139}, Expected{10, 4.7953886961324, 18.3903560420178},
        Expected{24, 15.377252854686, 35.710097593753}}) {
    const Interval found = value_of(poisson_interval(row.count, 0.95));
    EXPECT_THAT(found.low, agrees(row.low, 1e-12));
    EXPECT_THAT(found.high, agrees(row.high, 1e-12));
    test::record("high_" + std::to_string(static_cast<int>(row.count)), found.high, row.high);
  }
}

} // namespace
} // namespace wetspell
