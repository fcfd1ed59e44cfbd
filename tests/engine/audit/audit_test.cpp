#include "audit/audit.hpp"

#include "audit/audit_tables.hpp"
#include "engine/audit/audited.hpp"
#include "engine/season/sheets.hpp"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace wetspell {
namespace {

using testing::audited;
using testing::column;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using testing::sheet;

constexpr const char* small = R"(
Site | Date | Depth | Water temp (C) | Observer
B07 | 2019-04-01 | 30 cm | 6.5 | RW
B08 | 2019-04-02 | 41 | 7 | RW
     | 2019-04-03 | 38 cm | 8 | RW
B09 | some day | 20 cm | 9 | TH
B07 | 2019-04-15 | thirty or so | 10 | RW
)";

TEST(Audit, CountsWhatIsUsableAfterAnswersAndNotAtAll) {
  const Audit a = audited(nullptr, sheet("Old", small));
  EXPECT_EQ(a.rows.all(), 5u);
  EXPECT_EQ(a.rows.unusable, 2u); // no pool; no day
  EXPECT_GE(a.rows.after_answers, 1u);
  EXPECT_EQ(a.tables[0].first_row, 1u);
  EXPECT_EQ(a.tables[0].last_row, 6u);
  ASSERT_GE(a.unread.size(), 2u);
  const auto said = [&](std::size_t row, std::size_t column) {
    for (const Unread& unread : a.unread)
      if (unread.place == Place{"Old", row, column})
        return unread.text;
    return std::string("nothing");
  };
  EXPECT_EQ(said(6, 2), "thirty or so");
  EXPECT_EQ(said(5, 1), "some day");
  EXPECT_THAT(verdict_lines(a)[0], HasSubstr("5 rows in 1 table"));
  EXPECT_FALSE(a.reasons.empty());
  EXPECT_FALSE(a.lacking.empty());
  for (const LackingRule& lacking : a.lacking)
    EXPECT_FALSE(lacking.missing.empty());
}

TEST(Audit, AColumnOfDatesIsOneWhateverItIsCalledEvenWithAWordAmongThem) {
  for (const char* heading : {"When", "Round"}) {
    const Audit a = audited(nullptr, sheet("Old", fmt::format(R"(
Site | {} | Depth (cm) | Water temp (C)
B07 | 2019-03-21 | 41 | 6.5
B07 | 2019-03-28 | 38 | 8.5
B08 | sometime in April | 64 | 7.5
B08 | 2019-04-04 | 62 | 8.2
)",
                                                              heading)
                                                      .c_str()));
    EXPECT_EQ(column(a, heading).field, Field::visit_date) << column(a, heading).reason;
    EXPECT_EQ(a.rows.unusable, 1U);
  }
}

// More rows than one processor is given: everything is told in the order of the rows.
TEST(Audit, ALongSheetIsReadAsAShortOneIs) {
  constexpr std::size_t rows = 120'000;
  Table old(Place{"Old", 1, 0}, rows, 4);
  const std::array<const char*, 4> headings{"Site", "Date", "Depth (cm)", "Observer"};
  for (std::size_t column = 0; column < headings.size(); ++column)
    old.at(0, column) = Cell::of_text(headings[column]);
  std::vector<std::size_t> unread, passed;
  for (std::size_t row = 1; row < rows; ++row) {
    if (row % 10'007 == 0) { // blank
      passed.push_back(row + 1);
      continue;
    }
    old.at(row, 0) = Cell::of_text(fmt::format("P{:04}", row / 100));
    old.at(row, 1) = Cell::of_date(43'500 + static_cast<double>(row % 100));
    old.at(row, 2) = Cell::of_number(40);
    old.at(row, 3) = Cell::of_text("RW");
    if (row % 1'009 == 0) {
      old.at(row, 2) = Cell::of_text("knee deep");
      unread.push_back(row + 1);
    }
  }
  const Audit a = audited(nullptr, std::move(old));
  EXPECT_EQ(a.rows.all(), rows - 1 - passed.size());
  std::vector<std::size_t> rows_unread, rows_passed;
  for (const Unread& each : a.unread)
    rows_unread.push_back(each.place.row);
  for (const AuditedRow& each : a.tables.at(0).passed)
    rows_passed.push_back(each.row);
  EXPECT_EQ(rows_unread, unread);
  EXPECT_EQ(rows_passed, passed);
}

/// The codes of the pools of all visits, in the order of the rows.
std::vector<std::string> pools_of(const Audit& audit) {
  std::vector<std::string> codes;
  for (const Visit& visit : audit.season->visits)
    codes.push_back(visit.pool.known() ? audit.season->pools[static_cast<std::size_t>(visit.pool.index)].code
                                       : std::string());
  return codes;
}

TEST(Audit, PoolsAndDaysWrittenOnceReachDownALongSheet) {
  constexpr std::size_t rows = 60'001, of_one = 7'919; // no processor's part begins where a pool does
  Table old(Place{"Old", 1, 0}, rows, 4);
  for (std::size_t column = 0; column < 4; ++column)
    old.at(0, column) = Cell::of_text(std::array{"Site", "Date", "Depth (cm)", "Observer"}[column]);
  std::vector<std::string> expected;
  for (std::size_t row = 1; row < rows; ++row) {
    expected.push_back(fmt::format("P{}", (row - 1) / of_one));
    if ((row - 1) % of_one == 0) {
      old.at(row, 0) = Cell::of_text(expected.back());
      old.at(row, 1) = Cell::of_date(43'500 + static_cast<double>(row / of_one));
    } else if (row % 2 == 0) {
      old.at(row, 0) = Cell::of_text("ditto");
    }
    old.at(row, 2) = Cell::of_number(40);
    old.at(row, 3) = Cell::of_text("RW");
  }
  const Audit a = audited(nullptr, std::move(old));
  EXPECT_EQ(pools_of(a), expected);
  EXPECT_EQ(a.rows.unusable, 0U);
}

TEST(Audit, LinesWithAPoolReachDownALongSheet) {
  constexpr std::size_t rows = 60'001, of_one = 7'919;
  Table old(Place{"Old", 1, 0}, rows, 4);
  for (std::size_t column = 0; column < 4; ++column)
    old.at(0, column) = Cell::of_text(std::array{"Date", "Depth (cm)", "Water temp (C)", "Observer"}[column]);
  std::vector<std::string> expected;
  for (std::size_t row = 1; row < rows; ++row) {
    if ((row - 1) % of_one == 0) {
      old.at(row, 0) = Cell::of_text(fmt::format("Pool: P{}", row / of_one));
      continue;
    }
    expected.push_back(fmt::format("P{}", (row - 1) / of_one));
    old.at(row, 0) = Cell::of_date(43'500 + static_cast<double>(row % 100));
    old.at(row, 1) = Cell::of_number(40);
    old.at(row, 2) = Cell::of_number(8);
    old.at(row, 3) = Cell::of_text("RW");
  }
  EXPECT_EQ(pools_of(audited(nullptr, std::move(old))), expected);
}

TEST(Audit, LeadsFindingsBackToTheSource) {
  const Audit a = audited(nullptr, sheet("Old", R"(
A title above

Depth (cm) | Seen on | Pool | Water
30 | 2019-04-01 | B07 | wet

40 | 2019-04-02 | B08 | dry
35 | 2019-04-03 | B09 | wet
)"));
  ASSERT_EQ(a.rows.all(), 3u);
  EXPECT_THAT(column(a, "Seen on").reason, HasSubstr("by its cells alone"));
  const auto dry = std::find_if(a.findings.begin(), a.findings.end(), [](const AuditFinding& each) {
    return each.finding.place.row == 6 && each.finding.rule->level == Level::fix;
  });
  ASSERT_NE(dry, a.findings.end());
  EXPECT_EQ(dry->finding.place.sheet, "Old");
  EXPECT_EQ(a.rows.usable, 2u);
}

TEST(Audit, SaysWhichColumnIsNearestToOneThatIsMissing) {
  const Audit a = audited(nullptr, sheet("Old", R"(
Pool | Date | Depth (cm) | Water
3.1 | 2019-04-01 | 20 | wet
3.2 | 2019-04-01 | 25 | wet
3.3 | 2019-04-01 | 31 | wet
)"));
  EXPECT_FALSE(a.tables.front().kind);
  EXPECT_EQ(a.tables.front().reason,
            "it has no column of pools; \"Pool\" is nearest, by our own heading: Pool; but "
            "its cells are numbers with decimals");
}

TEST(Audit, LeavesTheUnitOpenRatherThanGuessing) {
  // 20 to 40 without a unit could be inches or centimetres, and nothing else on the sheet says.
  const Audit a = audited(nullptr, sheet("Old", R"(
Pool | Date | Depth
B07 | 2019-04-01 | 20
B08 | 2019-04-02 | 31
B09 | 2019-04-03 | 40
)"));
  EXPECT_EQ(column(a, "Depth").field, Field::visit_depth);
  EXPECT_TRUE(column(a, "Depth").unit_open);
  EXPECT_EQ(column(a, "Depth").unit, Unit::none);
  EXPECT_EQ(a.unread_count, 3u);
  EXPECT_EQ(a.rows.after_answers, 3u);
}

TEST(Audit, AReadingWhoseUnitIsOpenIsNotMissing) {
  const Audit a = audited(nullptr, sheet("Old", R"(
Pool | Date | Water | Depth
B07 | 2019-04-01 | wet | 20
B08 | 2019-04-02 | wet | 31.5
B09 | 2019-04-03 | wet |
)"));
  EXPECT_EQ(a.unread_count, 2u);
  ASSERT_EQ(a.findings.size(), 1u); // no depth at all
  EXPECT_EQ(a.findings[0].finding.place.row, 4u);
  EXPECT_FALSE(a.season->visits[0].depth.has_value());
  const auto sheets = tidy_tables(a);
  EXPECT_EQ(to_text(sheets[0].table.at(1, 3)), "20 (unit?)");
  EXPECT_EQ(to_text(sheets[0].table.at(2, 3)), "31.5 (unit?)");
}

TEST(Audit, TellsTheUnitFromTheNumbers) {
  const Audit a = audited(nullptr, sheet("Old", R"(
Pool | Date | Temp
B07 | 2019-04-01 | 4
B08 | 2019-04-02 | 15.5
B09 | 2019-04-03 | 27
)"));
  EXPECT_EQ(column(a, "Temp").unit, Unit::celsius);
  EXPECT_THAT(column(a, "Temp").reason, HasSubstr("between 4 and 27"));
}

TEST(Audit, WhatAPersonWroteWinsForEveryFile) {
  const auto given = read_given_map(sheet("Headings", R"(
Heading | Field | Unit
Murk | Visits: Depth | in
Depth | leave alone |
)"));
  ASSERT_TRUE(given) << given.error().text;
  const auto old = [] {
    return sheet("Old", "Pool | Date | murk | Depth\nB07 | 2019-04-01 | 20 | 1\nB08 | 2019-04-02 | 31 | 2\n");
  };
  const Audit a = audited(&given.value(), old());
  EXPECT_EQ(column(a, "murk").field, Field::visit_depth);
  EXPECT_EQ(column(a, "murk").unit, Unit::inch);
  EXPECT_EQ(column(a, "murk").confidence, 1);
  EXPECT_TRUE(column(a, "Depth").open());
  ASSERT_EQ(a.season->visits.size(), 2u);
  EXPECT_DOUBLE_EQ(a.season->visits[0].depth.si, 20 * 0.0254);
  const Audit without = audited(nullptr, old());
  EXPECT_EQ(column(without, "Depth").field, Field::visit_depth);
}

TEST(Audit, TheTableOfHeadingsCanBeReadAgain) {
  const Audit a = audited(nullptr, sheet("Old", small));
  const Table headings = headings_table({&a, 1}, Place{"Headings", 1, 0});
  const auto given = read_given_map(headings);
  ASSERT_TRUE(given) << given.error().text;
  const GivenMapping* temperature = given.value().find("water TEMP (c)");
  ASSERT_NE(temperature, nullptr);
  EXPECT_EQ(temperature->field, Field::visit_temperature_mean);
  EXPECT_EQ(temperature->unit, Unit::celsius);
  for (const std::string& word : meaning_words())
    EXPECT_TRUE(read_given_map(sheet("H", "Heading | Field\nx | " + word))) << word;
  EXPECT_FALSE(read_given_map(sheet("H", "Heading | Field\nx | Shoe size")));
  EXPECT_FALSE(read_given_map(sheet("H", "Heading | Field | Unit\nx | Visits: Depth | °C")));
}

TEST(Audit, AHeadingOfTwoTablesIsGivenForEachOfThem) {
  const auto old = [] {
    return std::vector<Table>{
        sheet("Cards",
              "Site ID | Date | Depth (cm) | Notes\nM1 | 2019-04-01 | 20 | low\nM2 | 2019-04-02 | 31 |\n"),
        sheet("List", "Site ID | Name of pool | Owner\nM1 | Gravel pit | Town\nM2 | Back field | Hale\n")};
  };
  const Audit first = audit("old.ods", old(), {});
  const auto again = read_given_map(headings_table({&first, 1}, Place{"Headings", 1, 0}));
  const auto one_word = read_given_map(sheet("Headings", "Heading | Field\nSite ID | Visits: Pool\n"));
  for (const auto* given : {&again, &one_word}) {
    ASSERT_TRUE(*given) << given->error().text;
    const Audit a = audit("old.ods", old(), {&given->value()});
    ASSERT_NE(a.season, nullptr);
    EXPECT_EQ(a.season->visits.size(), 2u);
    EXPECT_EQ(a.season->pools.size(), 2u);
    EXPECT_EQ(a.tables.at(1).columns.at(0).mapping.field, Field::pool_code);
  }
}

TEST(Audit, FieldsOfLifeMakeATableOfLifeWhateverThePoolsHeadingWasGiven) {
  const auto given = read_given_map(sheet("Headings", R"(
Heading | Field
Plot | Visits: Pool
Day | Visits: Date
Beast | Life: Species
Tally | Life: Count of first
)"));
  ASSERT_TRUE(given) << given.error().text;
  const Audit a = audited(&given.value(), sheet("Old", R"(
Plot | Day | Beast | Tally | Notes
B07 | 2019-04-01 | wood frog | 12 |
B08 | 2019-04-02 | wood frog | 3 | late
)"));
  ASSERT_NE(a.season, nullptr);
  ASSERT_EQ(a.season->life.size(), 2u);
  EXPECT_EQ(column(a, "Plot").field, Field::life_pool);
  EXPECT_EQ(column(a, "Day").field, Field::life_date);
}

TEST(Audit, CountsOfAVisitAreCounts) {
  const Audit a = audited(nullptr, sheet("Frogs", R"(
Site ID | Visit | Spp | Stage | Count | Notes
M-01 | 2014-04-05 | WF | eggs | 12 |
M-02 | 2014-04-05 | Wood frog | egg masses | 33 | clear
)"));
  ASSERT_NE(a.season, nullptr);
  EXPECT_EQ(a.season->life.size(), 2u);
  EXPECT_EQ(column(a, "Visit").field, Field::life_date);
  EXPECT_EQ(column(a, "Count").field, Field::life_by_first);
}

TEST(Audit, SortsColumnsOfAnimalsIntoCounts) {
  const Audit a = audited(nullptr, sheet("Old", R"(
Pool | Date | Observer | Depth (cm) | Wood frog egg masses | Spotted salamander masses
B07 | 2019-04-01 | RW | 30 | 12 | 3
B08 | 2019-04-02 | RW | 31 | 0 |
)"));
  ASSERT_EQ(a.season->life.size(), 3u);
  EXPECT_EQ(a.season->life[0].by_first.si, 12);
  EXPECT_EQ(a.season->species_names[static_cast<std::size_t>(a.season->life[1].species.index)],
            "spotted salamander");
  EXPECT_EQ(a.season->visits.size(), 2u);
}

TEST(Audit, TidyRowsCarryTheirUnitAndTheirSource) {
  const Audit a = audited(nullptr, sheet("Old", small));
  const auto sheets = tidy_tables(a);
  ASSERT_EQ(sheets.size(), 1u);
  const Table& t = sheets[0].table;
  EXPECT_EQ(t.rows(), 6u);
  EXPECT_EQ(t.at(0, t.columns() - 1), Cell::of_text("From"));
  EXPECT_EQ(t.at(1, t.columns() - 1), Cell::of_text("Old.A2"));
  std::vector<Table> again{t};
  again[0].at(0, t.columns() - 1) = Cell{};
  const auto season = read_season(std::move(again), 46280);
  ASSERT_TRUE(season);
  EXPECT_DOUBLE_EQ(season.value().visits[0].depth.si, 0.3);
  EXPECT_DOUBLE_EQ(season.value().visits[0].temperature_mean.si, 6.5);
}

TEST(Audit, OurOwnSeasonIsReadAsItIs) {
  const Audit a = audited(
      nullptr, sheet("Start", R"(
Unit system | metric
Season (year) | 2019
A date like 3/4/2026 is | day first)"),
      sheet("Pools", "Pool code | Pool name\nB07 | Split Rock\nB08 | Long Hollow"),
      sheet("People", "Person code | Name | Counts in | Taped course | Run 1 | Run 2\n"
                      "RW | R. Wren | paces | 30 m | 20 | 20"),
      sheet("Visits", "Pool | Date | Person | Water | Temperature 1 | Temperature 2 | Temperature 3 | Depth\n"
                      "B07 | 3/4/2019 | RW | standing water | 6 | 6.5 | 7 | 40\n"
                      "B08 | 4/4/2019 | RW | standing water | 6 | 6.5 | 7 | 35"),
      sheet("Life", "Pool | Date | First person | Species | Seen as | Count of first\n"
                    "B07 | 3/4/2019 | RW | wood frog | egg masses | 12"));
  EXPECT_EQ(a.rows.unusable, 0u);
  EXPECT_EQ(a.rows.usable, 6u) << verdict_lines(a).back();
  EXPECT_EQ(a.unread_count, 0u);
  ASSERT_EQ(a.season->visits.size(), 2u);
  EXPECT_DOUBLE_EQ(a.season->visits[0].depth.si, 0.4);
  EXPECT_EQ(a.season->visits[0].date.si, 43558); // 2019-04-03
  EXPECT_EQ(a.season->pools.size(), 2u);
  EXPECT_EQ(a.season->life.size(), 1u);
}

TEST(Audit, TemperaturesToldApartByTheirPlaceAreTheReadingsInTheirOrder) {
  const auto fields_under = [](const char* headings) {
    const Audit a = audited(nullptr, sheet("Old", std::string("Pool | Date | Depth (cm) | ") + headings +
                                                      "\nB07 | 2019-04-03 | 40 | 6.1 | 6.3 | 6.2 | 5.9"
                                                      "\nB07 | 2019-04-17 | 42 | 8.1 | 8.3 | 8.2 | 5.9"
                                                      "\nB08 | 2019-04-17 | 30 | 9.1 | 9.3 | 9.2 | 5.9"));
    std::vector<std::string> fields;
    for (std::size_t i = 3; i < 7; ++i) {
      const auto& field = a.tables[0].columns[i].mapping.field;
      fields.emplace_back(field ? spec(*field).heading : "");
    }
    return fields;
  };
  EXPECT_THAT(fields_under("Wtr temp left (C) | Wtr temp mid (C) | Wtr temp right (C) | Air temp"),
              ElementsAre("Temperature 1", "Temperature 2", "Temperature 3", ""));
  EXPECT_THAT(fields_under("T N | T S | pH | Air temp"),
              ElementsAre("Temperature 1", "Temperature 2", "", ""));
  EXPECT_THAT(fields_under("Temp edge | Temp centre | Temp shore | Temp mean"),
              ElementsAre("Temperature 1", "Temperature 2", "Temperature 3", "Mean as noted"));
  EXPECT_THAT(fields_under("Air temp left | Air temp mid | Air temp right | Water temp"),
              ::testing::AllOf(::testing::Contains("Mean as noted"),
                               ::testing::Not(::testing::Contains("Temperature 1"))))
      << "the air is none of ours";
  EXPECT_THAT(fields_under("Temp inlet | Temp outlet | pH | Air temp"), ElementsAre("", "", "", ""))
      << "what runs in and out is not the pool's";
  EXPECT_THAT(fields_under("Temp 1 | Temp 2 | Temp 3 | Temp left"),
              ElementsAre("Temperature 1", "Temperature 2", "Temperature 3", ""));
}

TEST(Audit, SaysOneRowAndSeveralInWords) {
  const Audit one = audited(nullptr, sheet("Old", "Pool | Date | Depth (cm)\nB07 | 2019-04-03 | 40"));
  EXPECT_THAT(verdict_lines(one),
              ElementsAre("old.ods: 1 row in 1 table.", "1 row can be used as it is.",
                          "0 rows can be used once questions are answered.", "0 rows cannot be used."));
  EXPECT_EQ(one.tables[0].columns[0].mapping.reason,
            "by our own heading: Pool; 1 cell holds a code or a name");
  const Audit some =
      audited(nullptr, sheet("Old", "Pool | Date | Depth (cm)\nB07 | 2019-04-03 | 40\n | | 30\n"
                                    "B08 | 2019-04-03 | 42\nB09 | 2019-04-03 | 44"));
  EXPECT_THAT(verdict_lines(some),
              ElementsAre("old.ods: 4 rows in 1 table.", "3 rows can be used as they are.",
                          "0 rows can be used once questions are answered.",
                          "1 row cannot be used: no pool, day or animal can be read.",
                          "The commonest reasons:", "1 row: Pool: nothing stands there",
                          "1 row: Date: nothing stands there"));
}

TEST(Audit, AnswersWhateverComes) {
  EXPECT_EQ(audited(nullptr).rows.all(), 0u);
  EXPECT_EQ(audited(nullptr, Table()).rows.all(), 0u);
  EXPECT_THAT(verdict_lines(audited(nullptr, sheet("x", "a")))[0], HasSubstr("no table"));
  Table wide(Place{"Wide", 1, 0}, 3, 5000);
  for (std::size_t column = 0; column < 5000; ++column)
    wide.at(1, column) = Cell::of_text("Depth");
  EXPECT_EQ(audited(nullptr, std::move(wide)).rows.all(), 0u);
  Table errors = sheet("Old", small);
  for (std::size_t row = 1; row < errors.rows(); ++row)
    for (std::size_t column = 0; column < errors.columns(); ++column)
      errors.at(row, column) = Cell::of_error("#REF!");
  const Audit a = audited(nullptr, std::move(errors));
  EXPECT_EQ(a.rows.usable, 0u);
}

} // namespace
} // namespace wetspell
