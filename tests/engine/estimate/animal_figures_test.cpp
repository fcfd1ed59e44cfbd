// Figures of animals: highest counts, two people's counts, pools in which a species bred.
#include "engine/estimate/figures_of.hpp"

#include "estimate/looks.hpp"

#include <fmt/format.h>

namespace wetspell {
namespace {

using test::pool_figure;
using test::programme_figure;
using test::programme_words;
using test::Rows;

const std::vector<std::string> life_headings{"pool",    "date",     "person",    "second_person", "species",
                                             "seen_as", "by_first", "by_second", "by_both"};

Season season_of(Rows life, const Rows& visits = {{"B01", "2026-04-18", "RW", "standing water"}}) {
  Rows visit_rows{{"pool", "date", "person", "water"}};
  visit_rows.insert(visit_rows.end(), visits.begin(), visits.end());
  life.insert(life.begin(), life_headings);
  return test::season_from(
      {{TableKind::pools, {{"pool", "notes"}, {"B01", ""}, {"B02", ""}, {"B03", ""}, {"B04", ""}}},
       {TableKind::visits, visit_rows},
       {TableKind::life, life}});
}

TEST(AnimalFigures, HighestOfTheSeasonForEachForm) {
  const Season season = season_of({{"B01", "2026-04-11", "RW", "", "wood frog", "egg masses", "14", "", ""},
                                   {"B01", "2026-04-18", "RW", "", "wood frog", "egg masses", "31", "", ""},
                                   {"B01", "2026-04-25", "RW", "", "wood frog", "egg masses", "9", "", ""},
                                   {"B01", "2026-04-25", "RW", "", "wood frog", "adults", "2", "", ""},
                                   {"B02", "2026-04-25", "RW", "", "wood frog", "egg masses", "0", "", ""}});
  const SeasonSummary summary = summarise(season, {});
  EXPECT_EQ(pool_figure(season, summary, 0, "highest-count: wood frog, egg masses"), "31 (n 3)");
  EXPECT_EQ(pool_figure(season, summary, 0, "highest-count: wood frog, adults"), "2 (n 1)");
  EXPECT_EQ(pool_figure(season, summary, 0, "estimated-number: wood frog, egg masses"), "no such figure");
  EXPECT_EQ(pool_figure(season, summary, 1, "highest-count: wood frog, egg masses"), "0 (n 1)");
  ASSERT_EQ(summary.species.size(), 2u) << "none of what was not seen";
  EXPECT_EQ(summary.species[0].of, "wood frog, egg masses");
  EXPECT_EQ(summary.species[0].highest, 31);
}

TEST(AnimalFigures, TwoCountsThatWereMatched) {
  const Season season =
      season_of({{"B01", "2026-04-18", "RW", "LM", "wood frog", "egg masses", "54", "50", "44"}});
  const SeasonSummary summary = summarise(season, {});
  EXPECT_EQ(pool_figure(season, summary, 0, "highest-count: wood frog, egg masses"), "60 (n 1)")
      << "seen by one or both";
  const Figure* number = test::figure_in(summary.pools[0].figures, "estimated-number: wood frog, egg masses");
  ASSERT_NE(number, nullptr);
  EXPECT_NEAR(*number->value, 61.3333, 1e-4);
  EXPECT_EQ(*number->low, 60);
  EXPECT_GT(*number->high, 62);
  EXPECT_LT(*number->high, 70);
  EXPECT_EQ(pool_figure(season, summary, 0, "found-by-first: wood frog, egg masses").substr(0, 4), "88% ");
}

TEST(AnimalFigures, TwoCountsThatWereNotMatchedGiveNoNumber) {
  const Season season =
      season_of({{"B01", "2026-04-18", "RW", "LM", "wood frog", "egg masses", "54", "50", ""}});
  const SeasonSummary summary = summarise(season, {});
  EXPECT_EQ(pool_figure(season, summary, 0, "highest-count: wood frog, egg masses"), "54 (n 1)");
  const Figure* number = test::figure_in(summary.pools[0].figures, "estimated-number: wood frog, egg masses");
  ASSERT_NE(number, nullptr);
  EXPECT_FALSE(number->value);
  EXPECT_EQ(*number->low, 54);
  EXPECT_FALSE(number->high);
  EXPECT_EQ(number->note, "two counts, but not how many both saw: no estimate");
}

TEST(AnimalFigures, NothingSeenByBothGivesNoNumber) {
  const Season season =
      season_of({{"B01", "2026-04-18", "RW", "LM", "wood frog", "egg masses", "3", "4", "0"}});
  const SeasonSummary summary = summarise(season, {});
  const Figure* number = test::figure_in(summary.pools[0].figures, "estimated-number: wood frog, egg masses");
  ASSERT_NE(number, nullptr);
  EXPECT_FALSE(number->value);
  EXPECT_EQ(*number->low, 7);
  EXPECT_EQ(number->note, "nothing was seen by both: no estimate");
}

TEST(Looks, AreDaysWithAnyRecordInWaterAtTheSpeciesTime) {
  const Season season = season_of(
      {{"B01", "2026-04-11", "RW", "", "wood frog", "egg masses", "14", "", ""},     // a find
       {"B01", "2026-04-11", "RW", "", "wood frog", "larvae", "3", "", ""},          // the same look
       {"B01", "2026-04-18", "RW", "", "fairy shrimp", "adults", "5", "", ""},       // a look without
       {"B01", "2026-04-25", "RW", "", "wood frog", "egg masses", "0", "", ""},      // a look without
       {"B01", "2026-10-25", "RW", "", "marbled salamander", "larvae", "1", "", ""}, // not its time
       {"B01", "2026-05-02", "RW", "", "fairy shrimp", "adults", "0", "", ""},       // dry that day
       {"B02", "2026-11-02", "RW", "", "wood frog", "egg masses", "1", "", ""},      // a find all the same
       {"B03", "2026-04-18", "RW", "", "wood frog", "egg masses", "", "", ""}},      // nothing was counted
      {{"B01", "2026-05-02", "RW", "no standing water"}, {"B04", "2026-04-18", "RW", "standing water"}});
  const SeasonHistory history = counted_history(season, {});
  const auto frog = static_cast<std::int32_t>(
      std::find(season.species_names.begin(), season.species_names.end(), "wood frog") -
      season.species_names.begin());
  const std::vector<Looks> looks = breeding_looks(history, frog);
  ASSERT_EQ(looks.size(), 4u);
  EXPECT_EQ(looks[0].looks, 3u);
  EXPECT_EQ(looks[0].found, 1u);
  EXPECT_EQ(looks[1].looks, 1u);
  EXPECT_EQ(looks[1].found, 1u);
  EXPECT_EQ(looks[2].looks, 0u);
  EXPECT_EQ(looks[3].looks, 0u) << "a visit that recorded no animals may not have looked for any";
  EXPECT_EQ(species_looked_for(history).size(), 2u);
}

TEST(AnimalFigures, ShareOfPoolsInWhichItBredWithBothIntervals) {
  Rows life;
  for (const char* pool : {"B01", "B02", "B03", "B04"})
    for (const char* day : {"2026-04-11", "2026-04-18", "2026-04-25"}) {
      const bool seen = pool[2] < '3' && day[9] != '8';
      life.push_back({pool, day, "RW", "", "wood frog", "egg masses", seen ? "6" : "0", "", ""});
    }
  const Season season = season_of(life);
  const SeasonSummary summary = summarise(season, {});
  EXPECT_EQ(programme_words(season, summary, "pools-bred: wood frog"), "50% (15 to 85; n 4)");
  EXPECT_EQ(programme_words(season, summary, "pools-bred-exact: wood frog"), "50% (6.76 to 93.2; n 4)");
  const Figure* used = programme_figure(summary, "pools-used: wood frog");
  ASSERT_NE(used, nullptr);
  EXPECT_GT(*used->value, 0.5);
  EXPECT_EQ(used->n, 4u);
  EXPECT_EQ(programme_figure(summary, "found-per-look: wood frog")->n, 12u);
}

TEST(AnimalFigures, WhatTheLooksCannotCarryIsSaid) {
  const Season season = season_of({{"B01", "2026-04-11", "RW", "", "wood frog", "egg masses", "0", "", ""},
                                   {"B02", "2026-04-11", "RW", "", "wood frog", "egg masses", "0", "", ""}});
  const SeasonSummary summary = summarise(season, {});
  EXPECT_EQ(
      programme_words(season, summary, "pools-used: wood frog"),
      "never found in 2 looks at 2 pools: that it is absent cannot be told from that it was overlooked");
}

} // namespace
} // namespace wetspell
