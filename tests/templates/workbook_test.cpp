// The season workbook as it is written, before any office has seen it.
#include "templates/workbook.hpp"

#include "templates/look.hpp"

#include "season/season.hpp"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <regex>
#include <stdexcept>

namespace {

using namespace wetspell;
using namespace wetspell::workbook;
using testing::HasSubstr;
using testing::Not;

const std::string& fresh() {
  static const std::string text = season_workbook();
  return text;
}

/// The part of the file that holds one sheet.
std::string sheet(const std::string& file, std::string_view name) {
  const auto start = file.find(fmt::format("<table:table table:name=\"{}\"", name));
  if (start == std::string::npos)
    return {};
  return file.substr(start, file.find("</table:table>", start) - start);
}

std::size_t times(const std::string& text, const std::string& part) {
  std::size_t count = 0;
  for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + 1))
    ++count;
  return count;
}

/// How often a heading stands in a sheet: as text, with a unit that does not change, or with the unit in use.
std::size_t heading_count(const std::string& in, std::string_view heading) {
  const std::string text(heading);
  std::size_t count = 0;
  for (const char* look : {"Pool-heading-typed", "Pool-heading-worked-out", "Pool-heading-check"}) {
    const std::string cell = fmt::format("<table:table-cell table:style-name=\"{}\"", look);
    const std::string words = cell + " office:value-type=\"string\">\n<text:p>" + text;
    count += times(in, words + "</text:p>") + times(in, words + " (in)</text:p>") +
             times(in, words + " (%)</text:p>");
    count += times(in, cell + " table:formula=\"of:=&quot;" + text + " (&quot;&amp;unit_");
  }
  return count;
}

/// Elements open and close in order, and nothing is left open.
bool balanced(const std::string& xml) {
  std::vector<std::string> open;
  for (std::size_t at = xml.find('<', 1); at != std::string::npos; at = xml.find('<', at + 1)) {
    const std::size_t end = xml.find('>', at);
    const std::string tag = xml.substr(at + 1, end - at - 1);
    if (tag.back() == '/')
      continue;
    const std::string name = tag.substr(0, tag.find_first_of(" \n"));
    if (name.front() != '/')
      open.push_back(name);
    else if (open.empty() || "/" + open.back() != name)
      return false;
    else
      open.pop_back();
  }
  return open.empty();
}

TEST(Workbook, IsTheSameBytesEveryTime) {
  EXPECT_EQ(season_workbook(), season_workbook());
}

TEST(Workbook, IsWellFormed) {
  EXPECT_TRUE(balanced(fresh()));
  EXPECT_FALSE(balanced("<?xml?><a><b></a></b>")) << "the test itself can fail";
}

TEST(Workbook, ShowsEveryFieldOfTheCatalogueOnceAsAHeading) {
  for (const FieldSpec& field : fields())
    EXPECT_EQ(heading_count(sheet(fresh(), spec(field.table).sheet), field.heading), 1u)
        << spec(field.table).name << ": " << field.heading;
}

TEST(Workbook, HasNoMacroAndHidesNoError) {
  EXPECT_THAT(fresh(), Not(HasSubstr("office:scripts")));
  EXPECT_THAT(fresh(), Not(HasSubstr("script:")));
  EXPECT_THAT(fresh(), Not(HasSubstr("IFERROR")));
  EXPECT_THAT(fresh(), Not(HasSubstr("number-matrix"))) << "an array formula cannot be sorted";
}

TEST(Workbook, HelpsAtEveryTypedFieldAndOffersItsWords) {
  for (const FieldSpec& field : fields()) {
    if (field.table == TableKind::settings)
      continue;
    const std::string name = fmt::format("table:name=\"entry-{}-{}\"", spec(field.table).name, field.name);
    const auto start = fresh().find(name);
    ASSERT_NE(start, std::string::npos) << name;
    const std::string entry =
        fresh().substr(start, fresh().find("</table:content-validation>", start) - start);
    EXPECT_THAT(entry, HasSubstr("table:help-message"));
    if (field.type == FieldType::choice) {
      for (const ChoiceWord& word : field.choices->words)
        EXPECT_THAT(entry, HasSubstr(fmt::format("&quot;{}&quot;", word.label))) << name;
    }
  }
}

TEST(Workbook, HasFiveHundredVisitsReady) {
  const std::string visits = sheet(fresh(), "Visits");
  EXPECT_EQ(times(visits, "ORG.WETSPELL.POOL.DOUBTS("), 500u);
}

TEST(Workbook, HoldsTheRowsItIsGivenAndGrowsWithThem) {
  WorkbookContent content;
  content.settings = {{Setting::programme, Cell::of_text("A & B <pools>")}};
  FilledTable visits{
      TableKind::visits, {Field::visit_pool, Field::visit_date, Field::visit_start, Field::visit_depth}, {}};
  for (int i = 0; i < 501; ++i)
    visits.rows.push_back(
        {Cell::of_text("B07"), Cell::of_date(46130), Cell::of_number(0.4), Cell::of_text("2' 1\"")});
  content.tables = {visits};
  const std::string file = season_workbook(content);
  EXPECT_TRUE(balanced(file));
  const std::string in = sheet(file, "Visits");
  EXPECT_EQ(times(in, "ORG.WETSPELL.POOL.DOUBTS("), 501u);
  EXPECT_EQ(times(in, "office:date-value=\"2026-04-18\""), 501u); // day 46130 by cal(1) and date(1)
  EXPECT_EQ(times(in, "office:time-value=\"PT09H36M00S\""), 501u);
  EXPECT_EQ(times(in, "<text:p>2' 1\"</text:p>"), 501u);
  EXPECT_THAT(sheet(file, "Start"), HasSubstr("<text:p>A &amp; B &lt;pools&gt;</text:p>"));
}

TEST(Workbook, RefusesRowsThatNoTableCanHold) {
  WorkbookContent derived;
  derived.tables = {{TableKind::visits, {Field::visit_area}, {}}};
  EXPECT_THROW(season_workbook(derived), std::invalid_argument);
  WorkbookContent elsewhere;
  elsewhere.tables = {{TableKind::visits, {Field::pool_code}, {}}};
  EXPECT_THROW(season_workbook(elsewhere), std::invalid_argument);
  WorkbookContent ragged;
  ragged.tables = {{TableKind::pools, {Field::pool_code, Field::pool_name}, {{Cell::of_text("B07")}}}};
  EXPECT_THROW(season_workbook(ragged), std::invalid_argument);
}

// Relative luminance and contrast ratio after WCAG 2.1 (W3C), definitions of those terms; AA for text is 4.5.
double luminance(std::string_view colour) {
  double sum = 0;
  const double weights[] = {0.2126, 0.7152, 0.0722};
  for (std::size_t part = 0; part < 3; ++part) {
    const double c = std::stoi(std::string(colour.substr(1 + 2 * part, 2)), nullptr, 16) / 255.0;
    sum += weights[part] * (c <= 0.03928 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4));
  }
  return sum;
}
double contrast(std::string_view one, std::string_view other) {
  const double a = luminance(one), b = luminance(other);
  return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

TEST(Looks, CanBeRead) {
  EXPECT_NEAR(contrast("#000000", "#ffffff"), 21, 1e-9); // WCAG 2.1: the largest there is
  for (const LookSpec& look : looks())
    EXPECT_GE(contrast(look.ink, look.ground.empty() ? "#ffffff" : look.ground), 4.5) << look.name;
}

TEST(Looks, StandInTheOrderOfTheirEnum) {
  for (std::size_t at = 0; at < looks().size(); ++at)
    EXPECT_EQ(static_cast<std::size_t>(looks()[at].look), at) << looks()[at].name;
}

} // namespace
