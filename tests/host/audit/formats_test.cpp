// The same old sheets as text and as workbooks of every kind give the same audit.

#include "audit/audit_in_office.hpp"
#include "command/program.hpp"
#include "driver/files.hpp"
#include "engine/audit/styles.hpp"
#include "engine/season/sheets.hpp"
#include "exchange/csv.hpp"
#include "harness/pdf.hpp"
#include "sheet/sheets.hpp"

#include <boost/process.hpp>
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>
#include <com/sun/star/util/Date.hpp>
#include <com/sun/star/util/XMergeable.hpp>
#include <gmock/gmock.h>

namespace wetspell::host {
namespace {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using driver::Document;
using nlohmann::json;
using ::testing::HasSubstr;

class Workbooks : public ::testing::Test {
protected:
  driver::TemporaryFolder folder{"wetspell-test-"};
  [[nodiscard]] std::filesystem::path file(const std::string& name) const { return folder.path() / name; }
};

constexpr std::array endings{".ods", ".xlsx", ".xls", ".fods"};

// All in one call, so that one office serves them all.
TEST_F(Workbooks, GiveTheAuditOfTheSameDataAsText) {
  std::vector<std::string> words{"audit", "--format", "json"};
  json expected = json::array();
  for (const testing::Style& style : testing::all_styles()) {
    std::vector<Table> sheets = testing::written(style);
    if (sheets.size() > 1)
      continue;                                              // a text file is one sheet
    const auto text = file(sheets.front().sheet() + ".csv"); // its name is that of its sheet
    test::write(text, csv_from_table(sheets.front()));
    const json said = gist(audited(text));
    const Document workbook = workbook_of(sheets);
    for (const char* ending : endings) {
      store(workbook, file(style.name + ending));
      words.push_back(file(style.name + ending).string());
      expected.insert(expected.end(), said.begin(), said.end());
    }
  }
  const test::Said said = test::run(words);
  ASSERT_LE(said.exit, 1) << said.err;
  const json found = gist(json::parse(said.out));
  ASSERT_EQ(found.size(), expected.size());
  EXPECT_GT(found.size(), 120U);
  for (std::size_t i = 0; i < found.size(); ++i)
    EXPECT_EQ(found[i], expected[i]) << words[3 + i];
}

TEST_F(Workbooks, ASheetAPoolIsUnderstood) {
  for (const testing::Style& style : testing::all_styles()) {
    if (!style.sheet_a_pool)
      continue;
    store(workbook_of(testing::written(style)), file("pools.xls"));
    std::size_t usable = 0, all = 0;
    for (const json& table : audited(file("pools.xls"))) {
      usable += table["rows"]["usable"].get<std::size_t>();
      all += table["rows"]["unusable"].get<std::size_t>() + table["rows"]["after_answers"].get<std::size_t>();
    }
    EXPECT_EQ(usable + all, 24U);
    EXPECT_GT(usable, 0U);
  }
}

TEST_F(Workbooks, OfAnotherProgramAreRead) {
  const Table sheet = small_old_sheet().front();
  test::write(file("old.csv"), csv_from_table(sheet));
  const json expected = gist(audited(file("old.csv")));
  for (const char* ending : {".xls", ".xlsx", ".ods"}) {
    const auto made = file(std::string("other") + ending);
    ASSERT_EQ(boost::process::system(boost::process::search_path("ssconvert"), file("old.csv").string(),
                                     made.string(), boost::process::std_out > boost::process::null,
                                     boost::process::std_err > boost::process::null),
              0)
        << "gnumeric's ssconvert is needed";
    EXPECT_EQ(gist(audited(made)), expected) << ending;
  }
}

TEST_F(Workbooks, AsWebServicesExportThemAreRead) {
  test::write(file("old.csv"), csv_from_table(small_old_sheet().front()));
  ASSERT_EQ(boost::process::system(WETSPELL_NODE, WETSPELL_TESTS_DIR "/node/csv_to_xlsx.js",
                                   file("old.csv").string(), file("export.xlsx").string()),
            0);
  EXPECT_EQ(gist(audited(file("export.xlsx"))), gist(audited(file("old.csv"))));
}

TEST_F(Workbooks, AnEndingInCapitalsIsOneToo) {
  store(workbook_of(small_old_sheet()), file("old.xls"));
  std::filesystem::rename(file("old.xls"), file("OLD.XLS"));
  EXPECT_EQ(audited(file("OLD.XLS"))["sheet"], "Old");
}

TEST_F(Workbooks, DatesAreDaysWhateverTheWorkbookCountsFrom) {
  for (const char* ending : endings) {
    Document workbook = Document::create(office());
    Reference<css::beans::XPropertySet>(workbook.model(), UNO_QUERY_THROW)
        ->setPropertyValue("NullDate", Any(css::util::Date(1, 1, 1904)));
    const std::string first = workbook.sheetNames().front();
    for (const auto& [address, words] : std::initializer_list<std::pair<const char*, const char*>>{
             {"A1", "Pool"}, {"B1", "Date"}, {"C1", "Depth (cm)"}, {"A2", "B07"}, {"A3", "B08"}})
      workbook.setText(first + "." + address, words);
    workbook.type(first + ".B2", "2019-04-01");
    workbook.type(first + ".B3", "2019-04-16");
    workbook.setValue(first + ".C2", 30);
    workbook.setValue(first + ".C3", 41);
    store(workbook, file(std::string("old") + ending));
    ASSERT_EQ(
        test::run({"audit", file(std::string("old") + ending).string(), "--out", file("out").string()}).exit,
        0);
    EXPECT_THAT(test::text_of(file("out") / "old-tidy-visits.csv"), HasSubstr("B07,2019-04-01,30 cm"))
        << ending;
    EXPECT_THAT(test::text_of(file("out") / "old-tidy-visits.csv"), HasSubstr("B08,2019-04-16,41 cm"))
        << ending;
  }
}

TEST_F(Workbooks, HiddenSheetsAndRowsMergedHeadingsAndErrorsArrive) {
  std::vector<Table> sheets{
      testing::table_of("Old",
                        {{Cell::of_text("Pool"),
                          Cell::of_text("Date"),
                          Cell::of_text("Water temperature (C)"),
                          {},
                          {},
                          Cell::of_text("Depth (cm)")},
                         {{}, {}, Cell::of_text("1"), Cell::of_text("2"), Cell::of_text("3"), {}},
                         {Cell::of_text("B07"), Cell::of_date(43556), Cell::of_number(5),
                          Cell::of_number(5.5), Cell::of_number(6), Cell::of_number(30)},
                         {Cell::of_text("B08"), Cell::of_date(43557), Cell::of_number(6),
                          Cell::of_number(6.5), Cell::of_number(7), Cell::of_number(31)},
                         {Cell::of_text("B09"), Cell::of_date(43558), Cell::of_number(6),
                          Cell::of_number(6.5), Cell::of_number(7), Cell::of_number(32)}},
                        0)};
  for (const char* ending : endings) {
    const Document workbook = workbook_of(sheets);
    for (const char* merged : {"Old.C1:E1", "Old.A1:A2", "Old.B1:B2", "Old.F1:F2"})
      Reference<css::util::XMergeable>(workbook.range(merged), UNO_QUERY_THROW)->merge(true);
    workbook.setFormula("Old.F4", "=1/0");
    const auto rows =
        Reference<css::table::XColumnRowRange>(workbook.range("Old.A5"), UNO_QUERY_THROW)->getRows();
    Reference<css::beans::XPropertySet>(rows, UNO_QUERY_THROW)->setPropertyValue("IsVisible", Any(false));
    workbook.model()->getSheets()->insertNewByName("Front", 0);
    Reference<css::beans::XPropertySet>(workbook.sheet("Old"), UNO_QUERY_THROW)
        ->setPropertyValue("IsVisible", Any(false));
    store(workbook, file(std::string("old") + ending));
    const json audit = audited(file(std::string("old") + ending));
    EXPECT_EQ(audit["sheet"], "Old") << ending;
    std::vector<std::string> fields;
    for (const json& heading : audit["headings"])
      fields.push_back(heading["field"].is_null() ? "" : heading["field"].get<std::string>());
    EXPECT_THAT(fields, ::testing::ElementsAre("pool", "date", "temperature_1", "temperature_2",
                                               "temperature_3", "depth"))
        << ending;
    EXPECT_EQ(audit["table"]["last_row"], 5) << ending << ": the hidden row";
    ASSERT_EQ(audit["unread"].size(), 1U) << ending;
    EXPECT_EQ(audit["unread"][0]["row"], 4) << ending;
    EXPECT_EQ(audit["unread"][0]["text"], "#DIV/0!") << ending;
  }
}

TEST_F(Workbooks, WhatAFormatAddsToANumberIsRead) {
  Table sheet = testing::sheet(
      "Old", "Pool | Date | Depth | Full\n7 | 2019-04-01 | 30.25 | 0.75\n12 | 2019-04-16 | 41 | 0.5");
  for (const char* ending : endings) {
    const Document workbook = workbook_of({sheet});
    const auto format = [&](const char* range, const char* code) {
      Reference<css::beans::XPropertySet>(workbook.range(range), UNO_QUERY_THROW)
          ->setPropertyValue("NumberFormat", Any(addin::numberFormat(workbook.model(), code)));
    };
    format("Old.A2:A3", "\"B\"00");
    format("Old.C2:C3", "0.0\" cm\"");
    format("Old.D2:D3", "0%");
    ASSERT_EQ(workbook.read("Old.A2").text, "B07");
    ASSERT_EQ(workbook.read("Old.C2").text, "30.3 cm");
    store(workbook, file(std::string("old") + ending));
    const json audit = audited(file(std::string("old") + ending), {"--out", file("out").string()});
    EXPECT_EQ(audit["headings"][2]["unit"], "cm") << ending;
    EXPECT_THAT(test::text_of(file("out") / "old-tidy-visits.csv"), HasSubstr("B07,2019-04-01,30.25 cm,75"))
        << ending;
  }
}

TEST_F(Workbooks, AFormatThatShowsThousandsOrSaysMoreThanAUnitIsReadAsItIsShown) {
  const Table sheet =
      testing::sheet("Old", "Pool | Date | Depth | Length (m) | Width | Temp (C) | Probe depth\n"
                            "7 | 2019-04-01 | 30.25 | 12500 | 7250 | 8.5 | 33.5\n"
                            "12 | 2019-04-16 | 41 | 13000 | 8000 | 9.25 | 34");
  for (const char* ending : endings) {
    const Document workbook = workbook_of({sheet});
    const auto format = [&](const char* range, const char* code) {
      Reference<css::beans::XPropertySet>(workbook.range(range), UNO_QUERY_THROW)
          ->setPropertyValue("NumberFormat", Any(addin::numberFormat(workbook.model(), code)));
    };
    format("Old.C2:C3", "0\" cm deep\"");
    format("Old.D2:D3", "0.0,");
    format("Old.E2:E3", "\"ca. \"0.0,\" m\"");
    format("Old.F2:F3", "\">\"0.0");
    format("Old.G2:G3", "0'");
    ASSERT_EQ(workbook.read("Old.G2").text, "34'");
    ASSERT_EQ(workbook.read("Old.C2").text, "30 cm deep");
    ASSERT_EQ(workbook.read("Old.D2").text, "12.5");
    ASSERT_EQ(workbook.read("Old.E2").text, "ca. 7.3 m");
    ASSERT_EQ(workbook.read("Old.F3").text, ">9.3");
    store(workbook, file(std::string("old") + ending));
    const json audit = audited(file(std::string("old") + ending), {"--out", file("out").string()});
    EXPECT_EQ(audit["headings"][2]["unit"], "cm") << ending;
    const std::string tidy = test::text_of(file("out") / "old-tidy-visits.csv");
    EXPECT_THAT(tidy, HasSubstr("30.25 cm deep,12.5 m,ca. 7.25 m")) << ending;
    EXPECT_THAT(tidy, HasSubstr("41 cm deep,13 m,ca. 8 m")) << ending;
    EXPECT_THAT(tidy, HasSubstr(">9.25")) << ending;
    EXPECT_THAT(tidy, HasSubstr("33.5 '")) << ending;
  }
}

TEST_F(Workbooks, OnlyTheSheetsOfTheAuditArePrinted) {
  std::vector<Table> sheets = small_old_sheet();
  sheets.push_back(testing::sheet("Letters", "Dear Rowan, we walked up to the pool and had a picnic"));
  workbook_of(sheets).store(file("old.ods"));
  const auto office = std::filesystem::path(WETSPELL_PROGRAM).parent_path() / "wetspell-office";
  namespace bp = boost::process;
  ASSERT_EQ(bp::system(office.string(), "audit", file("old.ods").string(), "--oxt", WETSPELL_OXT, "--out",
                       folder.path().string(), bp::std_out > bp::null),
            0);
  const std::string pages = wordsOnPages(file("old-audited.pdf"));
  EXPECT_THAT(pages, HasSubstr("2 rows can be used as they are."));
  EXPECT_THAT(pages, HasSubstr("What the audit took every heading for."));
  EXPECT_THAT(pages, HasSubstr("Tidy visits"));
  EXPECT_THAT(pages, ::testing::Not(HasSubstr("picnic")));
  EXPECT_THAT(pages, ::testing::Not(HasSubstr("Pools of the north woods"))) << "the title of the old sheet";
  EXPECT_EQ(
      Document::open(wetspell::host::office(), file("old-audited.ods")).read("Letters.A1").text.substr(0, 4),
      "Dear");
}

TEST_F(Workbooks, TheSheetOfHeadingsOfOneCountsForOthers) {
  test::write(file("old.csv"), "Pool,Date,Murk\nB07,2019-04-01,20\nB08,2019-04-02,21\n");
  const Document workbook =
      workbook_of({testing::sheet("Any name", "Heading | Field | Unit\nMURK | Visits: Depth | in")});
  for (const char* ending : endings) {
    store(workbook, file(std::string("map") + ending));
    const json mapped = audited(file("old.csv"), {"--map", file(std::string("map") + ending).string()});
    EXPECT_EQ(mapped["headings"][2]["field"], "depth") << ending;
    EXPECT_EQ(mapped["headings"][2]["unit"], "in") << ending;
  }
  const Document wrong = workbook_of(
      {testing::sheet("Wrong", "Heading | Field\nMurk | Shoe size"), testing::sheet("Other", "a | b")});
  wrong.store(file("wrong.ods"));
  const test::Said refused =
      test::run({"audit", file("old.csv").string(), "--map", file("wrong.ods").string()});
  EXPECT_EQ(refused.exit, 2);
  EXPECT_THAT(refused.err, HasSubstr("Wrong.B2"));
}

} // namespace
} // namespace wetspell::host
