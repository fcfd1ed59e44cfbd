// What visits to a pool say of its size, its basin and its drying.
#include "engine/check/fixture.hpp"
#include "estimate/summary.hpp"

#include <gtest/gtest.h>

#include <algorithm>

namespace wetspell {
namespace {

using Rows = std::vector<std::vector<std::string>>;

class PoolFigures : public testing::Test {
protected:
  /// One pool, everything by tape and stick, in inches and feet.
  void look_at(Rows visits, const std::string& deepest = "") {
    visits.insert(visits.begin(), {"pool", "date", "water", "depth", "fill", "length", "width", "size_tool"});
    std::vector<Table> sheets;
    sheets.push_back(test::fixture_table(TableKind::pools, {{"pool", "deepest"}, {"B01", deepest}}));
    sheets.push_back(test::fixture_table(TableKind::visits, visits));
    auto season = read_season(std::move(sheets), test::fixture_today());
    ASSERT_TRUE(season.has_value());
    season_ = std::move(season).value();
    summary_ = summarise(season_, CheckReport{});
  }

  const Figure& figure(std::string_view name) {
    const auto& all = summary_.pools.at(0).figures;
    const auto found = std::ranges::find_if(all, [&](const Figure& f) { return f.spec->name == name; });
    if (found != all.end())
      return *found;
    ADD_FAILURE() << "no figure " << name;
    static const Figure none;
    return none;
  }
  double value(std::string_view name) { return figure(name).value.value_or(NAN); }

  Season season_;
  SeasonSummary summary_;
};

constexpr double square_foot = 0.09290304;
constexpr double inch = 0.0254;

TEST_F(PoolFigures, SizesAreThoseOfTheEllipses) {
  look_at({{"B01", "2026-04-04", "", "30", "", "60", "30", "tape"},
           {"B01", "2026-04-18", "", "24", "", "50", "30", "tape"},
           {"B01", "2026-05-02", "", "", "", "", "", ""}});
  const double quarter_pi = 0.7853981633974483;
  EXPECT_NEAR(value("area-largest"), quarter_pi * 1800 * square_foot, 1e-9);
  EXPECT_NEAR(value("area-smallest"), quarter_pi * 1500 * square_foot, 1e-9);
  EXPECT_NEAR(value("area-mean"), quarter_pi * 1650 * square_foot, 1e-9);
  EXPECT_EQ(figure("area-mean").n, 2u);
  EXPECT_NEAR(value("length-largest"), 60 * 0.3048, 1e-12);
  EXPECT_NEAR(value("width-largest"), 30 * 0.3048, 1e-12);
  // Axes 2 to 1: edge 9.688448 on half axes 2 and 1 (complete elliptic integral), circle 2 pi sqrt(2).
  EXPECT_NEAR(value("shore-development"), 9.6884482205476762 / (8 * quarter_pi * std::sqrt(2.0)), 1e-12);
  EXPECT_NEAR(value("eccentricity"), std::sqrt(0.75), 1e-12);
  EXPECT_LT(*figure("area-largest").low, value("area-largest"));
  EXPECT_GE(*figure("shore-development").low, 1);
}

TEST_F(PoolFigures, NeverMeasuredSaysSo) {
  look_at({{"B01", "2026-04-04", "", "30", "", "", "", ""}});
  EXPECT_EQ(figure("area-largest").note, "never measured");
  EXPECT_EQ(figure("eccentricity").note, "never measured");
  EXPECT_EQ(figure("volume-latest").note, "no visit with both depth and area");
  EXPECT_EQ(figure("dry-date").note,
            "one visit with a depth since the high water of 30 in on 2026-04-04: too "
            "few for a line");
}

TEST_F(PoolFigures, ABasinFromTwoVisits) {
  // Half the depth on a quarter of the area: a cone, which holds a third of area times depth.
  look_at({{"B01", "2026-04-04", "", "40", "", "80", "40", "tape"},
           {"B01", "2026-05-09", "", "20", "10", "40", "20", "tape"}},
          "40 in");
  EXPECT_NEAR(value("basin-shape"), 1, 1e-9);
  EXPECT_TRUE(figure("basin-shape").note.empty());
  const double area = 0.7853981633974483 * 800 * square_foot;
  EXPECT_NEAR(value("volume-latest"), area * 20 * inch / 3, 1e-9);
  EXPECT_NEAR(value("volume-brim"), 8 * value("volume-latest"), 1e-9);
  EXPECT_NEAR(value("fill-by-depth"), 0.125, 1e-12);
  EXPECT_EQ(figure("fill-by-depth").note, "judged 10% full on that visit");
  EXPECT_NEAR(value("basin-area"), area * std::pow(1 / (20 * inch), 2), 1e-6);
  EXPECT_LT(*figure("volume-latest").low, value("volume-latest"));
  EXPECT_GT(*figure("volume-latest").high, value("volume-latest"));
}

TEST_F(PoolFigures, ABasinThatCannotBeToldTakesTheSettingsShape) {
  look_at({{"B01", "2026-04-04", "", "20", "", "40", "20", "tape"}});
  EXPECT_EQ(value("basin-shape"), 2);
  EXPECT_EQ(figure("basin-shape").note, "one visit with depth and area: the shape is taken as 2");
  EXPECT_NEAR(value("volume-latest"), 0.7853981633974483 * 800 * square_foot * 20 * inch / 2, 1e-9);
  look_at({{"B01", "2026-04-04", "", "20", "", "40", "20", "tape"},
           {"B01", "2026-04-11", "", "30", "", "38", "20", "tape"}});
  EXPECT_EQ(figure("volume-latest").note, "the area did not grow with depth: the shape is taken as 2");
  look_at({{"B01", "2026-04-04", "", "20", "", "40", "20", "tape"},
           {"B01", "2026-04-11", "", "21", "", "41", "20", "tape"}});
  EXPECT_EQ(figure("volume-latest").note, "the depths lie too near each other to tell the shape: taken as 2");
}

TEST_F(PoolFigures, DryHoldsNothing) {
  look_at({{"B01", "2026-04-04", "", "20", "", "40", "20", "tape"},
           {"B01", "2026-06-11", "no standing water", "", "", "", "", ""}});
  EXPECT_EQ(value("volume-latest"), 0);
  EXPECT_EQ(value("fill-by-depth"), 0);
  EXPECT_EQ(figure("dry-date").note, "dry on 2026-06-11");
}

TEST_F(PoolFigures, ASteadyFallIsExpectedDry) {
  look_at({{"B01", "2026-04-04", "", "20", "", "", "", ""},
           {"B01", "2026-04-11", "", "30", "", "", "", ""},
           {"B01", "2026-04-18", "", "27", "", "", "", ""},
           {"B01", "2026-04-25", "", "24", "", "", "", ""},
           {"B01", "2026-05-02", "", "21", "", "", "", ""}});
  EXPECT_EQ(figure("dry-date").n, 4u);
  EXPECT_NEAR(value("dry-date"), 46123 + 70, 1e-6); // 10 weeks after 2026-04-11
  EXPECT_NEAR(value("dry-date-robust"), value("dry-date"), 1e-6);
  EXPECT_NEAR(value("fall-a-day"), 3 * inch / 7, 1e-12);
  EXPECT_GT(*figure("dry-date").low, 46144); // 2026-05-02, when it held water
  EXPECT_GT(*figure("dry-date").high, value("dry-date"));
}

TEST_F(PoolFigures, APoolThatDoesNotFallHasNoDate) {
  look_at({{"B01", "2026-04-04", "", "20", "", "", "", ""},
           {"B01", "2026-04-11", "", "20", "", "", "", ""},
           {"B01", "2026-04-18", "", "20", "", "", "", ""},
           {"B01", "2026-04-25", "", "20", "", "", "", ""}});
  EXPECT_FALSE(figure("dry-date").value.has_value());
  EXPECT_EQ(figure("dry-date").note,
            "one visit with a depth since the high water of 20 in on 2026-04-25: too few for a line");
}

} // namespace
} // namespace wetspell
