// When a pool filled and dried, from visits that saw water or none.
#include "estimate/wet_spell.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace wetspell {
namespace {

constexpr double inf = std::numeric_limits<double>::infinity();

/// One visit a letter, ten days apart: w wet, d dry, - does not say.
std::vector<CountedVisit> visits(std::string_view letters) {
  std::vector<CountedVisit> all;
  for (std::size_t i = 0; i < letters.size(); ++i) {
    CountedVisit visit;
    visit.day = 10 * static_cast<double>(i);
    if (letters[i] != '-')
      visit.wet = letters[i] == 'w';
    all.push_back(visit);
  }
  return all;
}

TEST(WetSpell, FilledAndDriedBetweenVisits) {
  const PoolWater water = water_of(visits("dwwd"));
  ASSERT_EQ(water.spells.size(), 1u);
  EXPECT_EQ(water.spells[0].filled, (Between{0, 10}));
  EXPECT_EQ(water.spells[0].dried, (Between{20, 30}));
  const DaysBetween days = days_wet(water.spells[0]);
  EXPECT_EQ(days.least, 10);
  EXPECT_EQ(days.most, 30);
}

// First wet 2025-03-20, last seen wet 2025-06-14, first seen dry 2025-06-28: [86, 100) days.
TEST(WetSpell, WithAKnownStartTheLengthLiesBetweenTheLastWetAndTheFirstDryVisit) {
  constexpr double first_wet = 45736, last_wet = 45822, first_dry = 45836;
  const DaysBetween days = days_wet(WetSpell{{first_wet, first_wet}, {last_wet, first_dry}});
  EXPECT_EQ(days.least, 86);
  EXPECT_EQ(days.most, 100);
}

TEST(WetSpell, WetAtTheFirstVisitHasNoBeginning) {
  const PoolWater water = water_of(visits("wwd"));
  EXPECT_TRUE(water.wet_at_first);
  EXPECT_EQ(water.spells.at(0).filled, (Between{-inf, 0}));
  EXPECT_EQ(days_wet(water.spells[0]).least, 10);
  EXPECT_EQ(days_wet(water.spells[0]).most, inf);
}

TEST(WetSpell, NeverSeenDryAgainHasNoEnd) {
  const PoolWater water = water_of(visits("dw-w"));
  EXPECT_EQ(water.spells.at(0).dried, (Between{30, inf}));
  EXPECT_EQ(water.days, 3u);
  EXPECT_EQ(days_wet(water.spells[0]).most, inf);
}

TEST(WetSpell, SeenWetOnceLastsNoDayForCertain) {
  const PoolWater water = water_of(visits("dwd"));
  EXPECT_EQ(days_wet(water.spells.at(0)).least, 0);
  EXPECT_EQ(days_wet(water.spells.at(0)).most, 20);
}

TEST(WetSpell, NeverSeenWetHasNone) {
  const PoolWater water = water_of(visits("ddd"));
  EXPECT_TRUE(water.spells.empty());
  EXPECT_EQ(water.days, 3u);
  EXPECT_EQ(water_of(visits("--")).days, 0u);
}

TEST(WetSpell, EachSpellIsKept) {
  const PoolWater water = water_of(visits("wdwwdd"));
  ASSERT_EQ(water.spells.size(), 2u);
  EXPECT_EQ(water.spells[1].filled, (Between{10, 20}));
  EXPECT_EQ(water.spells[1].dried, (Between{30, 40}));
  const DaysBetween all = days_wet(water.spells);
  EXPECT_EQ(all.least, 0 + 10);
  EXPECT_EQ(all.most, inf) << "nobody saw it fill";
  EXPECT_EQ(days_wet(water_of(visits("dwdwwd")).spells).most, 20 + 30);
}

TEST(WetSpell, SeenWetOnADayItHeldWaterOnThatDay) {
  auto twice = visits("wd");
  twice[1].day = 0;
  for (int i = 0; i < 2; ++i) {
    const PoolWater water = water_of(twice);
    EXPECT_EQ(water.days, 1u);
    EXPECT_TRUE(water.wet_at_last);
    std::swap(twice[0], twice[1]);
  }
}

} // namespace
} // namespace wetspell
