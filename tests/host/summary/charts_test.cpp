// The charts of a summary: the office's own, with titles, units, and the numbers that stand in cells.

#include "summary/summary_in_office.hpp"

#include <gmock/gmock.h>

namespace wetspell::host {
namespace {

using driver::Document;
using ::testing::Contains;
using ::testing::DoubleNear;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::SizeIs;

class Charts : public ::testing::Test {
protected:
  Document document = opened(season_to_summarise());
  Desk desk{document};
  void SetUp() override { desk.call("summarise"); }
};

TEST_F(Charts, DepthsOfAllPoolsWithUnitsOnTheAxes) {
  const auto depths = chart(document, programme_sheet, "Wetspell depths");
  ASSERT_TRUE(depths.is());
  const ChartWords words = words_of(depths);
  EXPECT_EQ(words.title, "Depth over the season");
  EXPECT_EQ(words.across, "Day");
  EXPECT_EQ(words.up, "Depth (in)");
  EXPECT_THAT(words.words, HasSubstr("All 3 pools"));
  const auto values = values_of(depths);
  ASSERT_THAT(values, SizeIs(3));
  EXPECT_THAT(values.front(), ElementsAre(DoubleNear(25, 1e-9), DoubleNear(25, 1e-9), DoubleNear(14, 1e-9),
                                          DoubleNear(6, 1e-9), DoubleNear(0, 1e-9)));
}

TEST_F(Charts, FollowTheCellsTheyAreDrawnFrom) {
  const Lines lines = lines_of(document, numbers_sheet);
  const At depth = find(lines, "Depth (in)");
  document.setValue(address(numbers_sheet, {depth.row + 1, depth.column}), 99);
  EXPECT_EQ(values_of(chart(document, programme_sheet, "Wetspell depths")).front().front(), 99);
}

TEST_F(Charts, AreDrawnForWhatTheEngineKnows) {
  const auto engine = expected(document);
  const auto names = chart_names(document, programme_sheet);
  const auto has = [&](const char* name) {
    return std::find(names.begin(), names.end(), name) != names.end();
  };
  EXPECT_EQ(has("Wetspell still wet"), !engine->summary.still_wet.empty());
  EXPECT_EQ(has("Wetspell species"), !engine->summary.species.empty());
  bool areas = false;
  for (const PoolSummary& pool : engine->summary.pools)
    for (const Figure& figure : pool.figures)
      areas = areas || (figure.spec->figured == Figured::area && figure.value);
  EXPECT_EQ(has("Wetspell sizes"), areas);
}

TEST_F(Charts, AreDrawnAnewOnlyWhenTheirRangesChange) {
  document.setValue(at(Field::visit_depth, 0), 31);
  desk.call("summarise");
  EXPECT_EQ(values_of(chart(document, programme_sheet, "Wetspell depths")).front().front(), 31);
  EXPECT_THAT(chart_names(document, programme_sheet), Contains("Wetspell depths").Times(1));
  document.setText(at(Field::visit_depth, 0), ""); // one depth less
  desk.call("summarise");
  EXPECT_THAT(chart_names(document, programme_sheet), Contains("Wetspell depths").Times(1));
  EXPECT_THAT(values_of(chart(document, programme_sheet, "Wetspell depths")).front(), SizeIs(4));
}

} // namespace
} // namespace wetspell::host
