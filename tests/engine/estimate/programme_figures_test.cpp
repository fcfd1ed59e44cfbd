// The pools' figures taken together.
#include "engine/check/fixture.hpp"
#include "estimate/summary.hpp"

#include <gtest/gtest.h>

#include <algorithm>

namespace wetspell {
namespace {

using Rows = std::vector<std::vector<std::string>>;

struct Looked {
  Season season;
  SeasonSummary summary;
};

/// Pools B1 to B6 with these lengths (feet) and half as wide, B1 to B3 the town's.
Looked season_of(const std::vector<std::string>& lengths, const std::string& year = "2026") {
  Rows pools{{"pool", "owner"}};
  Rows visits{{"pool", "date", "depth", "length", "width", "size_tool"}};
  for (std::size_t i = 0; i < lengths.size(); ++i) {
    const std::string code = "B" + std::to_string(i + 1);
    pools.push_back({code, i < 3 ? "Town" : "Mill Trust"});
    visits.push_back({code, year + "-04-04", "20", lengths[i], lengths[i], "tape"});
  }
  std::vector<Table> sheets;
  sheets.push_back(test::fixture_table(TableKind::pools, pools));
  sheets.push_back(test::fixture_table(TableKind::visits, visits));
  auto season = read_season(std::move(sheets), test::fixture_today());
  EXPECT_TRUE(season.has_value());
  Looked looked{std::move(season).value(), {}};
  looked.summary = summarise(looked.season, CheckReport{});
  return looked;
}

const Figure* find(const SeasonSummary& summary, std::string_view name, const std::string& group = "") {
  const auto found = std::ranges::find_if(summary.programme, [&](const ProgrammeFigure& each) {
    return each.figure.spec->name == name && each.group == group;
  });
  return found == summary.programme.end() ? nullptr : &found->figure;
}

double value(const SeasonSummary& summary, std::string_view name, const std::string& group = "") {
  const Figure* figure = find(summary, name, group);
  return figure != nullptr ? figure->value.value_or(NAN) : NAN;
}

constexpr double circle = 0.7853981633974483 * 0.09290304; // m² on a diameter of 1 ft

TEST(ProgrammeFigures, DescribeAllPoolsAndEachGroup) {
  const Looked looked = season_of({"10", "20", "30", "40", "50", "60"});
  const SeasonSummary& all = looked.summary;
  EXPECT_EQ(value(all, "area-largest-pools"), 6);
  EXPECT_NEAR(value(all, "area-largest-smallest"), 100 * circle, 1e-9);
  EXPECT_NEAR(value(all, "area-largest-largest"), 3600 * circle, 1e-9);
  EXPECT_NEAR(value(all, "area-largest-mean"), 9100.0 / 6 * circle, 1e-9);
  EXPECT_NEAR(value(all, "area-largest-median"), 1250 * circle, 1e-9);
  EXPECT_NEAR(value(all, "area-largest-total"), 9100 * circle, 1e-9);
  EXPECT_EQ(value(all, "wet-days-least-pools"), 6);
  EXPECT_EQ(value(all, "wet-days-least-largest"), 0) << "one wet visit is no day for certain";
  EXPECT_EQ(value(all, "area-largest-pools", "Town"), 3);
  EXPECT_NEAR(value(all, "area-largest-total", "Town"), 1400 * circle, 1e-9);
  EXPECT_NEAR(value(all, "area-largest-total", "Mill Trust"), 7700 * circle, 1e-9);
  // Six pools can be drawn from, three cannot.
  EXPECT_TRUE(find(all, "area-largest-mean-drawn")->low.has_value());
  EXPECT_EQ(find(all, "area-largest-mean-drawn", "Town")->note, "too few pools for an interval");
  EXPECT_TRUE(find(all, "area-largest-mean", "Town")->low.has_value());
  // One visit each: the shape of every basin is the settings'.
  EXPECT_EQ(find(all, "volume-brim-total")->note,
            "6 of them with the shape in the settings, whose error they share: the interval is too narrow");
  EXPECT_TRUE(find(all, "area-largest-total")->note.empty());
  EXPECT_EQ(value(all, "deepest-deviation"), 0);
  EXPECT_EQ(find(all, "deepest-total"), nullptr);
}

TEST(ProgrammeFigures, NoPoolWithAFigureIsCountedAsNone) {
  const Looked looked = season_of({"10", "20"});
  EXPECT_EQ(value(looked.summary, "warmest-pools"), 0);
  EXPECT_EQ(find(looked.summary, "warmest-mean"), nullptr);
}

} // namespace
} // namespace wetspell
