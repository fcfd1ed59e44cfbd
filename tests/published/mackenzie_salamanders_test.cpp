// MacKenzie et al. 2006, Occupancy Estimation and Modeling, p. 99: salamanders at 39 sites, five surveys
// each; found 0, 1, 2, 3, 4 times at 21, 12, 1, 4, 1 of them. Printed values as in the tests of the R package
// wiqid (test-occSS0.R, "values returned by PRESENCE"). Kery 2002, J. Wildl. Manage. 66:330-338, for looks
// needed (formula from memory; values: R 4.2.2).
#include "estimate/occupancy.hpp"

#include "engine/measure/digits.hpp"

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;

TEST(MackenzieSalamanders, ConstantUseAndFinding) {
  std::vector<Looks> sites;
  constexpr std::array<std::size_t, 5> times{21, 12, 1, 4, 1};
  for (std::size_t found = 0; found < times.size(); ++found)
    sites.insert(sites.end(), times.at(found), {5, found});
  const Occupancy result = value_of(occupancy(sites, 0.95));
  EXPECT_THAT(result.found_in, agrees(0.4615384615, 1e-9));
  EXPECT_NEAR(result.used, 0.5946, 5e-5);
  EXPECT_NEAR(result.found_per_look, 0.2587, 5e-5);
  EXPECT_NEAR(result.used_interval.low, 0.3512, 5e-5);
  EXPECT_NEAR(result.used_interval.high, 0.7990, 5e-5);
  EXPECT_NEAR(result.found_interval.low, 0.1622, 5e-5);
  EXPECT_NEAR(result.found_interval.high, 0.3863, 5e-5);
  EXPECT_NEAR(2 * 2 - 2 * result.log_likelihood, 165.7586, 5e-5); // AIC
  // R 4.2.2, nlm on the same likelihood, which stops within 1e-7 of the greatest.
  EXPECT_THAT(result.used, agrees(0.59462254998, 1e-7));
  EXPECT_THAT(result.found_per_look, agrees(0.25872910633, 1e-7));
  EXPECT_NEAR(result.used_error, 0.122606, 1e-5);
  EXPECT_NEAR(result.found_error, 0.057703, 2e-6);
  EXPECT_THAT(result.log_likelihood, agrees(-80.879294730, 1e-11));
  test::record("used", result.used, 0.59462254998);
}

TEST(MackenzieSalamanders, LooksToBeSure) {
  EXPECT_THAT(value_of(looks_to_be_sure(0.1, 0.95)), agrees(28.433158805743, 1e-13));
  const std::vector<std::pair<double, double>> rounded{
      {.2, 13.4251}, {.3, 8.3991}, {.5, 4.3219}, {.8, 1.8614}, {.9, 1.3010}};
  for (const auto& [found, looks] : rounded)
    EXPECT_NEAR(value_of(looks_to_be_sure(found, 0.95)), looks, 5e-5);
}

} // namespace
} // namespace wetspell
