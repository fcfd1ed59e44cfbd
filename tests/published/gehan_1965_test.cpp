// Freireich et al. 1963, as in Gehan 1965 (R: MASS::gehan): weeks of remission under 6-MP, 21 of them, and in
// the control arm. Printed shares and errors are the textbooks'; more digits: R 4.2.2, survival 3.5-3,
// survfit(Surv(time, cens) ~ 1, conf.type = "log-log").
#include "estimate/event_curve.hpp"
#include "estimate/kaplan_meier.hpp"

#include "engine/measure/digits.hpp"

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;

std::vector<FollowedUp> treated() {
  std::vector<FollowedUp> all;
  for (const double week : {6, 6, 6, 7, 10, 13, 16, 22, 23})
    all.push_back({week, true});
  for (const double week : {6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35})
    all.push_back({week, false});
  return all;
}

TEST(Gehan1965, Treated) {
  const auto steps = value_of(kaplan_meier(treated(), 0.95));
  struct Expected {
    double week, printed, share, error;
  };
  constexpr std::array<Expected, 7> expected{{{6, 0.857, 0.857142857143, 0.076360354832},
                                              {7, 0.807, 0.806722689076, 0.086935285180},
                                              {10, 0.753, 0.752941176471, 0.096349652994},
                                              {13, 0.690, 0.690196078431, 0.106814707775},
                                              {16, 0.627, 0.627450980392, 0.114053865257},
                                              {22, 0.538, 0.537815126050, 0.128233751693},
                                              {23, 0.448, 0.448179271709, 0.134591456756}}};
  ASSERT_EQ(steps.size(), expected.size());
  for (std::size_t i = 0; i < expected.size(); ++i) {
    EXPECT_EQ(steps[i].moment, expected[i].week);
    EXPECT_NEAR(steps[i].share, expected[i].printed, 5e-4);
    EXPECT_THAT(steps[i].share, agrees(expected[i].share, 1e-11));
    EXPECT_THAT(steps[i].error, agrees(expected[i].error, 1e-10));
    test::record("share_" + std::to_string(i), steps[i].share, expected[i].share);
  }
  EXPECT_EQ(steps[0].at_risk, 21u) << "the one last seen in week 6 is still at risk in week 6";
  EXPECT_NEAR(steps[0].interval.low, 0.620, 5e-4);
  EXPECT_NEAR(steps[0].interval.high, 0.952, 5e-4);
  EXPECT_EQ(median_of(steps).median, 23);
}

TEST(Gehan1965, ControlArmWithoutCensoringIsTheShareItself) {
  std::vector<FollowedUp> all;
  for (const double week : {1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23})
    all.push_back({week, true});
  const auto steps = value_of(kaplan_meier(all, 0.95));
  constexpr std::array printed{.9048, .8095, .7619, .6667, .5714, .3810,
                               .2857, .1905, .1429, .0952, .0476, 0.};
  ASSERT_EQ(steps.size(), printed.size());
  for (std::size_t i = 0; i < printed.size(); ++i)
    EXPECT_NEAR(steps[i].share, printed.at(i), 5.1e-5);
  EXPECT_EQ(median_of(steps).median, 8);
}

} // namespace
} // namespace wetspell
