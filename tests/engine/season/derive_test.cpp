// Derived columns of a visit: values worked out by hand beside each, uncertainties after the GUM.
#include "engine/season/sheets.hpp"
#include "season/derive.hpp"
#include "season/derived_columns.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace wetspell::testing {
namespace {

Season season_with(std::string_view visits, std::string_view start = "") {
  auto season = season_of(sheet("People", two_people), sheet("Visits", visits), sheet("Start", start));
  EXPECT_TRUE(season.has_value());
  return std::move(season).value();
}

DerivedVisit first(const Season& season) {
  return derive(season, season.visits.at(0));
}

std::vector<std::string> row_of(const Season& season, std::size_t visit) {
  const DerivedVisit derived = derive(season, season.visits.at(visit));
  std::vector<std::string> texts;
  for (Field field : derived_columns)
    texts.push_back(to_text(derived_cell(season, derived, field)));
  return texts;
}

constexpr const char* full = R"(
Pool | Date | Person | Water | Temperature 1 | Temperature 2 | Temperature 3 | Depth | Full | Length | Width | Size by
B07 | 2026-04-18 | RW | yes | 50 | 51 | 52 | 25 | 60 | 40 | 20 | tape
B07 | 2026-04-19 | RW | dry | | | | | | | | )";

TEST(Paces, FromRunsOverTheCourse) {
  const Season s = season_with(full);
  ASSERT_EQ(s.paces.size(), 2u);
  // RW: 100 ft in 20 paces = 5 ft; TH: 30 m in 40 steps = 20 paces of 1.5 m.
  ASSERT_TRUE(s.paces[0]);
  EXPECT_NEAR(s.paces[0]->pace.value, 5 * 0.3048, 1e-12);
  ASSERT_TRUE(s.paces[1]);
  EXPECT_NEAR(s.paces[1]->pace.value, 1.5, 1e-12);
}

TEST(Paces, HalvesAndCountsThatSayWhatTheyAre) {
  auto season = season_of(sheet("Visits", full), sheet("People", R"(
Person code | Counts in | Taped course | Run 1 | Run 2
A | paces | 100 ft | 19.5 | 20.5
B | steps | 100 ft | 20 paces |
C | paces | | 20 | 20
D | paces | 100 ft | |
E | paces | 100 ft | twenty-ish or so | 20)"));
  ASSERT_TRUE(season.has_value());
  const Season& s = season.value();
  ASSERT_EQ(s.paces.size(), 5u);
  EXPECT_NEAR(s.paces[0].value().pace.value, 100 * 0.3048 / 20, 1e-12);
  EXPECT_NEAR(s.paces[1].value().pace.value, 100 * 0.3048 / 20, 1e-12);
  EXPECT_FALSE(s.paces[2]);
  EXPECT_FALSE(s.paces[3]);
  EXPECT_EQ(s.people[4].run_1.status, Status::bad);
  EXPECT_EQ(s.paces[4].value().runs, 1);
}

TEST(Derive, AWholeRowInUsUnits) {
  const Season s = season_with(full);
  // Mean 51, spread 2 (°F); area pi/4 * 40 * 20 = 628.3 ft2. Edge: 4 a E(m), a = 20, m = 1 - 0.25 = 0.75,
  // E = 1.21105602756846 (Abramowitz and Stegun table 17.1) = 96.884 ft.
  // Uncertainty of the area: 1 % and the last digit (1 ft) of each, 628.3 * hypot(1.23 %, 1.75 %) = 13.5:
  // ones are carried. Edge: give or take less than one, hundredths are carried.
  EXPECT_EQ(row_of(s, 0), (std::vector<std::string>{"51", "2", "25", "over 24 to 36 in", "50 to 74 %", "40",
                                                    "20", "628", "96.88"}));
}

TEST(Derive, TheSameRowInMetricUnits) {
  const Season s = season_with(full, "Unit system|metric\nTemperatures in|°F\nDepths in|in\nLengths in|ft");
  EXPECT_EQ(row_of(s, 0)[7], "58.4"); // 628.3 * 0.09290304 = 58.37, give or take 1.25
}

TEST(Derive, DryWaterWithoutADepthIsADepthOfNothing) {
  const Season s = season_with(full);
  const DerivedVisit dry = derive(s, s.visits.at(1));
  ASSERT_TRUE(dry.depth);
  EXPECT_EQ(dry.depth->value, 0);
  EXPECT_EQ(dry.depth_class, 0u);
  EXPECT_EQ(row_of(s, 1), (std::vector<std::string>{"", "", "0", "no standing water", "", "", "", "", ""}));
}

TEST(Derive, ABlankIsNeverAZero) {
  const Season s =
      season_with("Pool|Date|Depth|Water\nB07|2026-04-18||\nB07|2026-04-19||yes\nB07|2026-04-20|?|");
  for (std::size_t visit : {0u, 1u, 2u})
    for (const std::string& text : row_of(s, visit))
      EXPECT_EQ(text, "");
}

TEST(Derive, ADepthThatWasTypedStandsAgainstDryWater) {
  const Season s = season_with("Pool|Date|Depth|Water\nB07|2026-04-18|12|dry");
  EXPECT_EQ(row_of(s, 0)[2], "12");
  EXPECT_EQ(row_of(s, 0)[3], "over 6 to 12 in");
}

TEST(Derive, OpenDepthsAndRangesHaveAClassButNoNumber) {
  const Season s =
      season_with("Pool|Date|Depth\nB07|2026-04-18|>48\nB07|2026-04-19|13-15\nB07|2026-04-20|20-30");
  EXPECT_EQ(row_of(s, 0)[2], "");
  EXPECT_EQ(row_of(s, 0)[3], "over 48 in");
  EXPECT_EQ(row_of(s, 1)[3], "over 12 to 24 in");
  EXPECT_EQ(row_of(s, 2)[3], "");
}

TEST(Derive, ClassLimitsInBothUnits) {
  const Season s = season_with(R"(
Pool | Date | Depth
B07 | 2026-04-18 | 36
B07 | 2026-04-19 | 91.44 cm
B07 | 2026-04-20 | 36.1
B07 | 2026-04-21 | 91.45 cm)");
  EXPECT_EQ(row_of(s, 0)[3], "over 24 to 36 in");
  EXPECT_EQ(row_of(s, 1)[3], "over 24 to 36 in");
  EXPECT_EQ(row_of(s, 2)[3], "over 36 to 48 in");
  EXPECT_EQ(row_of(s, 3)[3], "over 36 to 48 in");
}

TEST(Derive, OneReadingHasNoSpread) {
  const Season s = season_with("Pool|Date|Temperature 1|Temperature 2\nB07|2026-04-18|50|");
  EXPECT_EQ(row_of(s, 0)[0], "50");
  EXPECT_EQ(row_of(s, 0)[1], "");
}

TEST(Derive, AnUnreadableTemperatureLeavesTheMeanBlank) {
  const Season s = season_with("Pool|Date|Temperature 1|Temperature 2\nB07|2026-04-18|50|5O");
  EXPECT_FALSE(first(s).temperature);
}

TEST(Derive, UncertaintyOfADepthByStick) {
  // Step of one inch: half-width 0.5 in; the ground: half-width 1 in; both rectangular, in quadrature.
  const Season s = season_with("Pool|Date|Depth\nB07|2026-04-18|25");
  EXPECT_NEAR(first(s).depth.value().uncertainty, 0.0254 * std::sqrt(0.25 / 3 + 1.0 / 3), 1e-7);
}

TEST(Derive, UncertaintyOfADepthByEyeAndAbout) {
  const Season s = season_with("Pool|Date|Depth|Depth by\nB07|2026-04-18|~20|by eye");
  // Step 1 in or 10 in, a quarter by eye, a tenth for "about"; the reader says the step.
  const double step = s.visits[0].depth.resolution / 0.0254;
  const double expected = 0.0254 * std::sqrt(step * step / 12 + 25.0 / 3 + 4.0 / 3);
  EXPECT_NEAR(first(s).depth.value().uncertainty, expected, 1e-6);
}

TEST(LineLength, PacesTimesThePaceOfThePacer) {
  const Season s = season_with(R"(
Pool | Date | Person | Length | Width | Paced by | Size by
B07 | 2026-04-18 | RW | 12 paces | 20 steps | |
B07 | 2026-04-19 | RW | 12 paces | 6 paces | TH |
B07 | 2026-04-20 | RW | 12 | 6 | | paces
B07 | 2026-04-21 | TH | 12 | 6 | | paces
B07 | 2026-04-22 | RW | 60 ft | 30 ft | | paces)");
  const auto metres = [&](std::size_t visit, bool length) {
    const Visit& v = s.visits.at(visit);
    const auto line = line_length(s, v, length ? v.length : v.width);
    return line ? line.value().value : std::nan("");
  };
  EXPECT_NEAR(metres(0, true), 12 * 5 * 0.3048, 1e-9);
  EXPECT_NEAR(metres(0, false), 10 * 5 * 0.3048, 1e-9);
  EXPECT_NEAR(metres(1, true), 12 * 1.5, 1e-9);
  EXPECT_NEAR(metres(2, true), 12 * 5 * 0.3048, 1e-9); // a bare number by paces is a count of paces
  EXPECT_NEAR(metres(3, true), 12 * 0.75, 1e-9);       // TH counts steps
  EXPECT_NEAR(metres(4, true), 60 * 0.3048, 1e-9);     // a unit was typed: already turned into feet
}

TEST(LineLength, RefusesInWords) {
  const Season s = season_with(R"(
Pool | Date | Person | Length | Width
B07 | 2026-04-18 | XX | 12 paces | 60-70
B07 | 2026-04-19 | RW | | >60)");
  const auto why = [&](std::size_t visit, bool length) {
    const Visit& v = s.visits.at(visit);
    const auto line = line_length(s, v, length ? v.length : v.width);
    return line ? Problem{} : line.error();
  };
  EXPECT_EQ(why(0, true).kind, ProblemKind::not_enough);
  EXPECT_NE(why(0, true).text.find("12 paces"), std::string::npos);
  EXPECT_EQ(why(0, false).kind, ProblemKind::bad_argument);
  EXPECT_EQ(why(1, true).kind, ProblemKind::not_enough);
  EXPECT_EQ(why(1, false).kind, ProblemKind::bad_argument);
  EXPECT_FALSE(first(s).length);
  EXPECT_FALSE(first(s).area);
}

TEST(Derive, PacedLinesShareTheErrorOfThePace) {
  const Season s = season_with("Pool|Date|Person|Length|Width\nB07|2026-04-18|RW|12 paces|6 paces");
  const DerivedVisit d = first(s);
  const double pace = s.paces[0]->pace.value;
  const double u_pace = s.paces[0]->pace.uncertainty;
  // GUM 5.2.2 worked from the inputs: A = pi/4 nL nW p^2, with independent nL, nW (each half a count either
  // way) and one p.
  const double u_count = 0.5 / std::numbers::sqrt3;
  const double area = std::numbers::pi / 4 * 12 * 6 * pace * pace;
  const double relative =
      std::sqrt(std::pow(u_count / 12, 2) + std::pow(u_count / 6, 2) + std::pow(2 * u_pace / pace, 2));
  EXPECT_NEAR(d.area.value().value, area, 1e-9);
  EXPECT_NEAR(d.area.value().uncertainty, area * relative, 1e-6 * area);
}

TEST(DerivedCell, PrintsNoDigitThatTheReadingDoesNotCarry) {
  const Season s = season_with("Pool|Date|Person|Length|Width\nB07|2026-04-18|RW|12.5 paces|62.25");
  const auto row = row_of(s, 0);
  EXPECT_EQ(row[5], "62.5");  // 12.5 * 5 ft, give or take more than 1 ft: tenths are carried
  EXPECT_EQ(row[6], "62.25"); // by tape, give or take 0.6 ft: hundredths are carried
}

TEST(DerivedColumns, AreTheDerivedFieldsOfTheCatalogue) {
  std::vector<Field> derived;
  for (const FieldSpec& s : fields(TableKind::visits))
    if (s.role == Role::derived)
      derived.push_back(s.field);
  EXPECT_EQ(derived, std::vector<Field>(derived_columns.begin(), derived_columns.end()));
}

TEST(DerivedCell, FollowsTheUnitOfItsHeading) {
  const Season s = season_with("Pool|Date|Depth|Depth as read (cm)\nB07|2026-04-18|10|");
  EXPECT_EQ(row_of(s, 0)[2], "25.4");
}

} // namespace
} // namespace wetspell::testing
