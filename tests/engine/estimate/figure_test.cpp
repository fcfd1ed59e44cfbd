// How a figure reads: its value in the workbook's unit, its interval, the count behind it, or the word why
// not.
#include "estimate/figure.hpp"
#include "estimate/say_figure.hpp"

#include <gtest/gtest.h>

namespace wetspell {
namespace {

constexpr FigureSpec area{"area", "Area", Figured::area, "", ""};
constexpr FigureSpec share{"share", "Share", Figured::share, "", ""};
constexpr FigureSpec dried{"dried", "Dried", Figured::date, "", ""};
constexpr FigureSpec spell{"spell", "Wet spell", Figured::words, "", ""};

Settings metric() {
  Settings settings;
  settings.units = UnitSystem::metric;
  settings.area = Unit::square_metre;
  return settings;
}

TEST(Figure, ReadsAsValueIntervalAndCount) {
  EXPECT_EQ(in_words(measured_figure(area, {1240, 100}, 4, 0.95), metric()),
            "1,240 m² (1,044 to 1,436; n 4)");
  EXPECT_EQ(in_words(plain_figure(area, 115, 1), Settings{}), "1,238 ft² (n 1)");
}

TEST(Figure, IntervalsStayWhereValuesCanBe) {
  const Figure few = measured_figure(share, {0.05, 0.1}, 10, 0.95);
  EXPECT_EQ(*few.low, 0);
  const Figure most = measured_figure(share, {0.95, 0.1}, 10, 0.95);
  EXPECT_EQ(*most.high, 1);
  EXPECT_EQ(in_words(few, metric()), "5% (0 to 24.6; n 10)");
}

TEST(Figure, BoundsWithoutAValueAreTheFigure) {
  Figure figure = cannot_say(dried, "");
  figure.n = 3;
  figure.low = 46187;
  figure.high = 46201;
  EXPECT_EQ(in_words(figure, metric()), "2026-06-14 to 2026-06-28 (n 3)");
  figure.high.reset();
  EXPECT_EQ(in_words(figure, metric()), "2026-06-14 or later (n 3)");
  figure.low.reset();
  figure.high = 46201;
  EXPECT_EQ(in_words(figure, metric()), "by 2026-06-28 (n 3)");
}

TEST(Figure, WithoutAValueTheNoteSpeaks) {
  EXPECT_EQ(in_words(cannot_say(area, too_few(2, "visit", "visits"), 2), metric()),
            "two visits: no estimate");
  EXPECT_EQ(too_few(0, "visit", "visits"), "no visit");
  EXPECT_EQ(too_few(1, "visit", "visits"), "one visit: no estimate");
  EXPECT_EQ(too_few(7, "visit", "visits"), "7 visits: no estimate");
}

TEST(Figure, WhatWasCountedNeedsNoCountBehindIt) {
  constexpr FigureSpec visits{"visits", "Visits", Figured::count, "", ""};
  EXPECT_EQ(in_words(counted_figure(visits, 5), metric()), "5");
  EXPECT_EQ(in_words(plain_figure(visits, 5, 2), metric()), "5 (n 2)");
}

TEST(Figure, WordsAreTheFigure) {
  Figure figure = cannot_say(spell, "");
  figure.words = "short";
  figure.n = 5;
  EXPECT_EQ(in_words(figure, metric()), "short (n 5)");
}

TEST(Figure, ShowsTheDecimalsOfItsUnit) {
  EXPECT_EQ(shown_decimals(Figured::depth, Settings{}), spec(Unit::inch).decimals);
  EXPECT_EQ(shown_decimals(Figured::depth_a_day, Settings{}), spec(Unit::inch).decimals + 1);
  EXPECT_EQ(shown_decimals(Figured::area, metric()), spec(Unit::square_metre).decimals);
  EXPECT_EQ(shown_decimals(Figured::count, Settings{}), 0);
  EXPECT_EQ(shown_decimals(Figured::number, Settings{}), 2);
}

TEST(Figure, VolumesAreCubicFeetInUsCustomaryUnits) {
  EXPECT_NEAR(shown(0.028316846592, Figured::volume, Settings{}), 1, 1e-12);
  EXPECT_EQ(shown_unit(Figured::volume, Settings{}), "ft³");
  EXPECT_EQ(shown(1, Figured::volume, metric()), 1);
}

} // namespace
} // namespace wetspell
