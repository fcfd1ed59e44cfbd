// The template filled as volunteers would, in both systems of units; expected values are worked out here.

#include "template/workbook_file.hpp"
#include "templates/layout.hpp"

#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/table/TableSortField.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>
#include <com/sun/star/util/XSortable.hpp>

#include <gmock/gmock.h>

#include <cmath>
#include <numbers>

namespace wetspell::host {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

/// Edge of an ellipse by adding up chords: no formula of the engine's.
double chords(double length, double width) {
  constexpr int parts = 200000;
  double sum = 0;
  const auto x = [&](int i) { return length / 2 * std::cos(2 * std::numbers::pi * i / parts); };
  const auto y = [&](int i) { return width / 2 * std::sin(2 * std::numbers::pi * i / parts); };
  for (int i = 0; i < parts; ++i)
    sum += std::hypot(x(i + 1) - x(i), y(i + 1) - y(i));
  return sum;
}

void fillCommon(const driver::Document& document) {
  document.type(valueOf(Setting::season_year), "2026");
  document.type(valueOf(Setting::today), "2026-09-01");
  document.type(at(Field::pool_code, 0), "B07");
  document.type(at(Field::person_code, 0), "KL");
  document.type(at(Field::person_code, 1), "RW");
  document.type(at(Field::person_counts, 1), "paces");
  document.type(at(Field::person_run_1, 1), "19.5");
  document.type(at(Field::person_run_2, 1), "20");
  document.type(at(Field::person_run_3, 1), "19");
  document.type(at(Field::visit_pool, 0), "B07");
  document.type(at(Field::visit_date, 0), "2026-04-18");
  document.type(at(Field::visit_person, 0), "RW");
  document.type(at(Field::visit_water, 0), "standing water");
  document.type(at(Field::visit_fill, 0), "74.6");
  document.type(at(Field::visit_length, 0), "12.5");
  document.type(at(Field::visit_width, 0), "6 paces");
  document.type(at(Field::visit_size_tool, 0), "paces");
}

class Filled : public ::testing::Test {
protected:
  driver::Document document = opened(office());

  void expectNear(Field field, double wanted, std::size_t row = 0) const {
    const auto cell = document.read(at(field, row));
    EXPECT_EQ(cell.error, 0) << spec(field).heading << ": " << cell.text;
    EXPECT_NEAR(cell.value, wanted, 1e-6 * std::abs(wanted)) << spec(field).heading << ": " << cell.text;
  }
  [[nodiscard]] std::string shown(Field field, std::size_t row = 0) const {
    return document.read(at(field, row)).text;
  }
};

TEST_F(Filled, InUsCustomaryUnits) {
  fillCommon(document);
  document.type(at(Field::person_course, 1), "100");
  document.type(at(Field::visit_temperature_1, 0), "52.5");
  document.type(at(Field::visit_temperature_2, 0), "11 °C"); // 51.8 °F
  document.type(at(Field::visit_temperature_3, 0), "53");
  document.setText(at(Field::visit_depth, 0), "2' 1\"");
  expectNear(Field::visit_mean, (52.5 + 51.8 + 53) / 3);
  expectNear(Field::visit_spread, 53 - 51.8);
  expectNear(Field::visit_depth_read, 25);
  EXPECT_EQ(shown(Field::visit_depth_class_read), "over 24 to 36 in");
  EXPECT_EQ(shown(Field::visit_fill_class_read), "50 to 74 %");
  const double pace = 300 / (19.5 + 20 + 19); // three times the course over all paces
  expectNear(Field::person_pace, pace, 1);
  const double length = 12.5 * pace, width = 6 * pace;
  expectNear(Field::visit_length_read, length);
  expectNear(Field::visit_width_read, width);
  expectNear(Field::visit_area, std::numbers::pi / 4 * length * width);
  expectNear(Field::visit_edge, chords(length, width));
}

TEST_F(Filled, InMetricUnits) {
  document.setText(valueOf(Setting::unit_system), "metric");
  fillCommon(document);
  document.type(at(Field::person_course, 1), "30");
  document.type(at(Field::visit_temperature_1, 0), "11.4");
  document.type(at(Field::visit_temperature_2, 0), "50 °F"); // 10 °C
  document.type(at(Field::visit_depth, 0), "91.44");         // 36 in, on a limit
  expectNear(Field::visit_mean, (11.4 + 10) / 2);
  expectNear(Field::visit_spread, 1.4);
  expectNear(Field::visit_depth_read, 91.44);
  EXPECT_EQ(shown(Field::visit_depth_class_read), "over 24 to 36 in");
  const double pace = 90 / (19.5 + 20 + 19);
  expectNear(Field::visit_length_read, 12.5 * pace);
  expectNear(Field::visit_area, std::numbers::pi / 4 * 12.5 * pace * 6 * pace);
}

TEST_F(Filled, TellsBlankFromZeroAndDry) {
  document.type(at(Field::visit_pool, 0), "B07");
  EXPECT_EQ(shown(Field::visit_depth_read), "");
  EXPECT_EQ(shown(Field::visit_depth_class_read), "");
  EXPECT_EQ(shown(Field::visit_fill_class_read), "");
  document.type(at(Field::visit_water, 0), "no standing water");
  EXPECT_EQ(shown(Field::visit_depth_read), "0.0");
  EXPECT_EQ(shown(Field::visit_depth_class_read), "no standing water");
  document.type(at(Field::visit_fill, 0), "0");
  EXPECT_EQ(shown(Field::visit_fill_class_read), "0 to 24 %");
}

TEST_F(Filled, SaysInWordsWhatIsNoNumber) {
  document.type(at(Field::visit_pool, 0), "B07");
  document.setText(at(Field::visit_depth, 0), "over 48 in");
  EXPECT_EQ(shown(Field::visit_depth_read), "no one number");
  EXPECT_EQ(shown(Field::visit_depth_class_read), "over 48 in");
  document.type(at(Field::visit_length, 0), "12");
  document.type(at(Field::visit_width, 0), "6");
  document.type(at(Field::visit_size_tool, 0), "paces");
  EXPECT_EQ(shown(Field::visit_length_read), "no pace known");
  EXPECT_EQ(shown(Field::visit_area), "");
  EXPECT_EQ(errorsIn(document), "");
}

TEST_F(Filled, GivesThePaceAnUncertainty) {
  fillCommon(document);
  document.type(at(Field::person_course, 1), "100");
  const double counts[] = {19.5, 20, 19}, mean = 19.5;
  double squares = 0;
  for (const double count : counts)
    squares += (count - mean) * (count - mean);
  const double scatter = std::sqrt(squares / 2 / 3) / mean; // GUM 4.2.3, relative
  const double rounding =
      std::sqrt(3) * 0.5 / std::sqrt(3) / 58.5; // three counts, each to half a count: GUM 4.3.7
  expectNear(Field::person_pace_uncertainty, 300 / 58.5 * std::hypot(scatter, rounding), 1);
}

TEST_F(Filled, SaysAtOnceWhatIsDoubtful) {
  fillCommon(document);
  document.type(at(Field::person_course, 1), "100");
  document.type(at(Field::visit_pool, 1), "B70");
  EXPECT_EQ(document.read("Visits.A5").text, "look again");
  EXPECT_THAT(shown(Field::visit_doubts, 1), HasSubstr("B70"));
  EXPECT_THAT(document.read(seasonBanner).text, HasSubstr("Visits: 2 typed"));
  document.type(at(Field::visit_pool, 1), "");
  EXPECT_EQ(document.read("Visits.A5").text, "");
}

TEST_F(Filled, StaysRightWhenStoredAndOpened) {
  fillCommon(document);
  document.type(at(Field::person_course, 1), "100");
  document.setText(at(Field::visit_depth, 0), "2' 1\"");
  const std::string before = document.dump("Visits.A1:AN6");
  for (const char* ending : {".ods", ".fods", ".xlsx"}) {
    const auto again = reopened(document, ending);
    EXPECT_EQ(again.dump("Visits.A1:AN6"), before) << ending;
    EXPECT_EQ(errorsIn(again), "") << ending;
  }
}

TEST_F(Filled, FollowsRowsThatAreMoved) {
  fillCommon(document);
  document.type(at(Field::visit_pool, 2), "B07");
  document.setText(at(Field::visit_depth, 2), "64 cm");
  const auto rows =
      css::uno::Reference<css::table::XColumnRowRange>(document.sheet("Visits"), css::uno::UNO_QUERY_THROW)
          ->getRows();
  rows->insertByIndex(4, 1);
  expectNear(Field::visit_depth_read, 64 / 2.54, 3);
}

TEST_F(Filled, LooksIntoRowsTypedBelowTheReadyOnes) {
  fillCommon(document);
  const std::size_t pools = workbook::layout(TableKind::pools).rows;
  const std::size_t people = workbook::layout(TableKind::people).rows;
  document.type(at(Field::visit_pool, 0), "Z99");
  document.type(at(Field::visit_person, 0), "QQ");
  EXPECT_THAT(shown(Field::visit_doubts), HasSubstr("\"Z99\" is not in the table of pools"));
  EXPECT_THAT(shown(Field::visit_doubts), HasSubstr("\"QQ\" is not in the table of people"));
  document.type(at(Field::pool_code, pools + 7), "Z99");
  document.type(at(Field::person_code, people + 7), "QQ");
  document.type(at(Field::person_pace, people + 7), "5");
  EXPECT_THAT(shown(Field::visit_doubts), Not(HasSubstr("is not in the table")));
  expectNear(Field::visit_length_read, 12.5 * 5);
  document.setFormula("Start.Z1",
                      "=COUNTIF(offered_pools_pool;\"Z99\")+10*COUNTIF(offered_people_person;\"QQ\")");
  EXPECT_EQ(document.read("Start.Z1").value, 11) << "the drop-downs offer them";
}

TEST_F(Filled, HandsOverNoMoreThanTheRowsInUse) {
  fillCommon(document);
  document.type(at(Field::pool_name, 3), "Owl hollow");
  document.setFormula("Start.Z1", "=ROWS(table_pools)");
  document.setFormula("Start.Z2", "=ROWS(table_people)");
  EXPECT_EQ(document.read("Start.Z1").value, 5) << "headings and four rows";
  EXPECT_EQ(document.read("Start.Z2").value, 3);
}

TEST_F(Filled, CanBeSorted) {
  fillCommon(document);
  document.type(at(Field::person_course, 1), "100");
  document.setText(at(Field::visit_depth, 0), "2' 1\"");
  document.type(at(Field::visit_pool, 1), "A03");
  document.type(at(Field::visit_date, 1), "2026-04-17");
  document.setText(at(Field::visit_depth, 1), "64 cm");
  css::table::TableSortField byDate;
  byDate.Field = 2;
  byDate.IsAscending = true;
  css::beans::PropertyValue fields;
  fields.Name = "SortFields";
  fields.Value <<= css::uno::Sequence<css::table::TableSortField>(&byDate, 1);
  const css::uno::Reference<css::util::XSortable> rows(document.range("Visits.A4:AN503"),
                                                       css::uno::UNO_QUERY_THROW);
  rows->sort(css::uno::Sequence<css::beans::PropertyValue>(&fields, 1));
  EXPECT_EQ(shown(Field::visit_pool, 0), "A03");
  expectNear(Field::visit_depth_read, 64 / 2.54, 0);
  EXPECT_EQ(shown(Field::visit_pool, 1), "B07");
  expectNear(Field::visit_depth_read, 25, 1);
  expectNear(Field::visit_length_read, 12.5 * 300 / 58.5, 1);
}

TEST(FilledElsewhere, InADecimalCommaLocale) {
  driver::Office german(withExtension("de-DE"));
  const auto document = opened(german);
  document.setText(valueOf(Setting::unit_system), "metric");
  document.type(at(Field::visit_pool, 0), "B07");
  document.type(at(Field::visit_temperature_1, 0), "11,4");
  document.setText(at(Field::visit_temperature_2, 0), "11,6 °C");
  document.type(at(Field::visit_depth, 0), "63,5");
  EXPECT_NEAR(document.read(at(Field::visit_mean, 0)).value, 11.5, 1e-9);
  EXPECT_EQ(document.read(at(Field::visit_depth_read, 0)).text, "63,5");
  EXPECT_EQ(document.read(at(Field::visit_depth_class_read, 0)).text, "over 24 to 36 in"); // 25 in
  EXPECT_EQ(errorsIn(document), "");
}

} // namespace
} // namespace wetspell::host
