// Newcombe 1998, Stat. Med. 17:857-872, table I: four shares. Limits: R 4.2.2, prop.test(correct = FALSE) and
// binom.test.
#include "estimate/proportion.hpp"

#include "engine/measure/digits.hpp"

namespace wetspell {
namespace {

using test::value_of;

TEST(Newcombe1998, WilsonAndClopperPearson) {
  struct Expected {
    double some, all;
    Interval wilson, exact;
  };
  constexpr std::array<Expected, 4> table{{
      {81, 263, {0.255288519878, 0.366209576983}, {0.252736745585, 0.367621922601}},
      {15, 148, {0.062386399531, 0.160487241723}, {0.057844010083, 0.161650490349}},
      {0, 20, {0, 0.161125158053}, {0, 0.168433470983}},
      {1, 29, {0.006113214293, 0.171755218793}, {0.000872646884, 0.177644295489}},
  }};
  for (const Expected& row : table) {
    const Interval wilson = value_of(wilson_interval(row.some, row.all, 0.95));
    const Interval exact = value_of(exact_interval(row.some, row.all, 0.95));
    const std::string name = std::to_string(static_cast<int>(row.some));
    EXPECT_NEAR(wilson.low, row.wilson.low, 1e-12);
    EXPECT_NEAR(wilson.high, row.wilson.high, 1e-12);
    EXPECT_NEAR(exact.low, row.exact.low, 1e-12);
    EXPECT_NEAR(exact.high, row.exact.high, 1e-12);
    test::record("wilson_" + name, wilson.high, row.wilson.high);
    test::record("exact_" + name, exact.high, row.exact.high);
  }
}

} // namespace
} // namespace wetspell
