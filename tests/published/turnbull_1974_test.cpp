// Turnbull 1974, JASA 69:169-173: events at 1, 2, 3, 4, some known to the moment, some not yet, some already.
// The published shares are as the test suite of R's package survival has them (tests/turnbull.R).
#include "estimate/event_curve.hpp"

#include "engine/measure/digits.hpp"

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;

TEST(Turnbull1974, SharesLeft) {
  constexpr double inf = std::numeric_limits<double>::infinity();
  constexpr std::array happened{12, 6, 2, 3}, not_yet{3, 2, 0, 3}, already{2, 4, 2, 5};
  std::vector<Between> all;
  for (int i = 0; i < 4; ++i) {
    const double moment = i + 1;
    all.insert(all.end(), happened.at(i), {moment, moment});
    all.insert(all.end(), not_yet.at(i), {moment, inf});
    all.insert(all.end(), already.at(i), {-inf, moment});
  }
  const EventCurve curve = value_of(event_curve(all));
  EXPECT_EQ(curve.n, 44u);
  constexpr std::array printed{0.538, 0.295, 0.210, 0.095};
  // R 4.2.2, survival 3.5-3: survfit(Surv(..., type = "interval")), which ends its iteration early.
  constexpr std::array computed{0.537567714669, 0.294594032546, 0.209760214997, 0.094845753185};
  for (int i = 0; i < 4; ++i) {
    const double left = share_after(curve, i + 1);
    EXPECT_NEAR(left, printed.at(i), 5e-4);
    EXPECT_THAT(left, agrees(computed.at(i), 1e-4));
    test::record("left_" + std::to_string(i + 1), left, computed.at(i));
  }
}

} // namespace
} // namespace wetspell
