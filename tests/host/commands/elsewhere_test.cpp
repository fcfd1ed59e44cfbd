// The same season in other formats, other units, another day zero, and an office with a decimal comma.

#include "commands/season_in_office.hpp"

#include "driver/files.hpp"
#include "season/settings.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/util/Date.hpp>
#include <gmock/gmock.h>

namespace wetspell::host {
namespace {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using driver::Document;
using ::testing::HasSubstr;

class Format : public ::testing::TestWithParam<const char*> {};

TEST_P(Format, KeepsAnswersAndFindings) {
  const Document document = opened(smallSeason());
  const Desk desk(document);
  desk.check();
  const std::string key = desk.finding("wider-than-long").at("key");
  document.setText(cellOnSheet(document, key, "Your answer"), "right as it is");
  document.setText(cellOnSheet(document, key, "Your note"), "½ of it was ice");
  desk.check();
  const auto before = rowsOnSheet(document);

  const Document again = reopened(document, GetParam());
  const std::string typed = snapshot(again);
  Desk(again).check();
  EXPECT_EQ(rowsOnSheet(again), before);
  EXPECT_EQ(only(rowsOnSheet(again), "wider-than-long").at("note"), "½ of it was ice");
  EXPECT_TRUE(same(snapshot(again), typed));
  EXPECT_TRUE(Desk(again).apply(Desk(again).finding("wrong-year").at("key")));
  EXPECT_EQ(again.read(at(Field::visit_date, 2)).value, day(4, 20));
}

INSTANTIATE_TEST_SUITE_P(Stored, Format, ::testing::Values(".ods", ".xlsx", ".fods"));

TEST(DayZero, OfTheDocumentCountsForReadingAndWriting) {
  const Document document = opened(smallSeason());
  const Desk desk(document);
  const auto before = desk.findings();
  // 1904-01-01 as day zero, as in workbooks from elsewhere: the same days have other numbers.
  const double shift = 1462; // days from 1899-12-30 to 1904-01-01
  Reference<css::beans::XPropertySet>(document.model(), UNO_QUERY_THROW)
      ->setPropertyValue("NullDate", Any(css::util::Date(1, 1, 1904)));
  for (std::size_t row = 0; row < 6; ++row)
    document.setValue(at(Field::visit_date, row), document.read(at(Field::visit_date, row)).value - shift);
  document.setValue(at(Field::life_date, 0), document.read(at(Field::life_date, 0)).value - shift);
  for (const Setting setting : {Setting::first_day, Setting::last_day, Setting::today}) {
    const std::string cell =
        "Start.C" + std::to_string(headingRow(TableKind::settings) + 1 + static_cast<std::size_t>(setting));
    ASSERT_GT(document.read(cell).value, 40000) << cell;
    document.setValue(cell, document.read(cell).value - shift);
  }
  EXPECT_EQ(desk.findings(), before);
  desk.check();
  const std::string key = desk.finding("wrong-year").at("key");
  EXPECT_EQ(document.read(cellOnSheet(document, key, "Date")).value, day(4, 20) - 365 - shift);
  EXPECT_TRUE(desk.apply(key));
  EXPECT_EQ(document.read(at(Field::visit_date, 2)).value, day(4, 20) - shift);
  EXPECT_THAT(document.read(at(Field::visit_date, 2)).text, HasSubstr("2026"));
}

TEST(Metric, NumbersAreReadInTheWorkbooksUnits) {
  workbook::WorkbookContent content = smallSeason();
  content.settings.emplace_back(Setting::unit_system, Cell::of_text("metric"));
  std::vector<TypedRow> visits;
  for (unsigned round = 0; round < 2; ++round) {
    TypedRow visit = goodVisit("B01", day(4 + round, 18), "RW");
    visit[Field::visit_temperature_1] = Cell::of_number(11);
    visit[Field::visit_temperature_2] = Cell::of_number(11.5);
    visit[Field::visit_temperature_3] = Cell::of_number(10.5);
    visit[Field::visit_depth] = Cell::of_number(64);
    visit[Field::visit_length] = Cell::of_number(18.9);
    visit[Field::visit_width] = Cell::of_number(9.4);
    visits.push_back(visit);
  }
  visits[1][Field::visit_temperature_2] = Cell::of_number(115);
  content.tables[2] = filled(TableKind::visits, visits);
  const Document document = opened(content);
  const Desk desk(document);
  const FindingRow row = desk.finding("temperature-decimal-slipped");
  EXPECT_THAT(row.at("message"), HasSubstr("115 °C"));
  EXPECT_TRUE(desk.apply(row.at("key")));
  EXPECT_EQ(document.read(at(Field::visit_temperature_2, 1)).value, 11.5);
}

TEST(DecimalComma, OfAnotherOfficeChangesNothingInWhatIsFoundAndWritten) {
  driver::Office german(withExtension("de-DE"));
  std::vector<TypedRow> more{goodVisit("B01", day(6, 1), "RW")};
  more[0][Field::visit_depth] = Cell::of_text("0,64 m");
  const Document here = opened(smallSeason(more));
  const Document document = opened(smallSeason(more), german);
  ASSERT_EQ(document.read(at(Field::visit_temperature_1, 0)).text, "52,5");
  const Desk desk(document);
  EXPECT_EQ(desk.findings(), Desk(here).findings());
  desk.check();
  EXPECT_EQ(rowsOnSheet(document), desk.findings());
  EXPECT_EQ(desk.applyAll("fix"), 5);
  EXPECT_EQ(document.read(at(Field::visit_temperature_2, 4)).value, 51.5);
  EXPECT_EQ(document.read(at(Field::visit_date, 2)).value, day(4, 20));
  EXPECT_EQ(document.read(at(Field::visit_start, 3)).text, "09:40");
  // Typed as people there do.
  document.type(at(Field::visit_temperature_2, 4), "515,0");
  EXPECT_EQ(desk.finding("temperature-decimal-slipped").at("value"), "515");
}

} // namespace
} // namespace wetspell::host
