// The sheets that an audit writes into an open workbook, and what a person does with them.

#include "audit/audit_in_office.hpp"
#include "base/text.hpp"
#include "commands/season_in_office.hpp"
#include "engine/season/sheets.hpp"
#include "harness/row_height.hpp"
#include "season/season.hpp"
#include "sheet/owned.hpp"
#include "sheet/read_sheets.hpp"
#include "sheet/sheets.hpp"
#include "table/day.hpp"
#include "templates/layout.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/sheet/ValidationType.hpp>
#include <com/sun/star/sheet/XSheetCondition.hpp>
#include <com/sun/star/style/XStyleFamiliesSupplier.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>
#include <com/sun/star/text/XText.hpp>
#include <com/sun/star/util/XMergeable.hpp>
#include <gmock/gmock.h>

namespace wetspell::host {
namespace {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using driver::Document;
using nlohmann::json;
using ::testing::ElementsAre;
using ::testing::HasSubstr;

class AuditSheets : public ::testing::Test {
protected:
  Document document = workbook_of(small_old_sheet());

  static json run(const Document& on) { return json::parse(text(Desk(on).call("audit"))); }
  json run() const { return run(document); }
  [[nodiscard]] std::string shown(const std::string& address) const { return document.read(address).text; }
  /// The row of a heading on the sheet of headings.
  [[nodiscard]] std::string row(const std::string& heading) const {
    return std::to_string(row_with(document, "Headings", "A", heading));
  }
};

/// What stands in the cells of one sheet, formulas and all, to the end of what is used.
std::string stored(const Document& document, const std::string& sheet) {
  return document.dumpStored(sheet + ".A1:AZ120");
}

TEST_F(AuditSheets, SayInWordsWhatCanBeUsedBeforeAnythingElse) {
  run();
  EXPECT_EQ(shown("Audit.A1"), "Audit");
  EXPECT_EQ(shown("Audit.A3"), "2 rows can be used as they are.");
  EXPECT_EQ(shown("Audit.A4"), "1 row can be used once questions are answered.");
  EXPECT_EQ(shown("Audit.A5"), "0 rows cannot be used.");
  EXPECT_EQ(shown("Audit.A6"), "The commonest reasons:");
  EXPECT_THAT(shown("Audit.A7"), HasSubstr("a word where a number is expected"));
}

TEST_F(AuditSheets, EveryLineLeadsToItsCell) {
  run();
  const std::size_t unread = row_with(document, "Audit", "A", "What was left unread");
  const std::string at = "Audit.A" + std::to_string(unread + 2);
  EXPECT_EQ(shown(at), "Old.C6");
  EXPECT_EQ(shown("Audit.C" + std::to_string(unread + 2)), "stick lost");
  EXPECT_THAT(document.read(at).formula, HasSubstr("CELL(\"ADDRESS\";$Old.$C$6)"));
  // The link goes with its cell.
  Reference<css::container::XNamed>(document.sheet("Old"), UNO_QUERY_THROW)->setName("Years ago");
  EXPECT_THAT(document.read(at).formula, HasSubstr("$'Years ago'.$C$6"));
  // And the first screen leads to the part itself.
  const std::size_t to = row_with(document, "Audit", "A", "To the cells that were left unread (1)");
  EXPECT_THAT(document.read("Audit.A" + std::to_string(to)).formula,
              HasSubstr("$Audit.$A$" + std::to_string(unread)));
}

TEST_F(AuditSheets, TidyRowsHaveTheColumnsOfASeasonWorkbookAndLeadToTheirSource) {
  run();
  constexpr std::size_t heading = 5;
  const std::size_t first = workbook::column_of(Field::visit_pool);
  std::size_t columns = 0;
  for (const FieldSpec& field : fields(TableKind::visits)) {
    if (field.role != Role::typed)
      continue;
    ++columns;
    const std::string here =
        column_letters(workbook::column_of(field.field) - first) + std::to_string(heading);
    EXPECT_EQ(shown("Tidy visits." + here), field.heading);
  }
  EXPECT_EQ(shown("Tidy visits.A6"), "B07");
  EXPECT_EQ(shown("Tidy visits.B6"), "2019-04-01");
  EXPECT_EQ(document.read("Tidy visits.B6").value, 43556);
  const std::string from = column_letters(columns), use = column_letters(columns + 1);
  EXPECT_EQ(shown("Tidy visits." + from + "5"), "From");
  EXPECT_EQ(shown("Tidy visits." + from + "8"), "Old.A6");
  EXPECT_THAT(document.read("Tidy visits." + from + "8").formula, HasSubstr("$Old.$A$6"));
  EXPECT_EQ(shown("Tidy visits." + use + "6"), "yes");
  EXPECT_EQ(shown("Tidy visits." + use + "8"), "after answers");
}

TEST_F(AuditSheets, HeadingsOfTidyRowsAreReadToTheirEndInAnyFont) {
  const Reference<css::style::XStyleFamiliesSupplier> styles(document.model(), UNO_QUERY_THROW);
  const Reference<css::container::XNameAccess> cells(styles->getStyleFamilies()->getByName("CellStyles"),
                                                     UNO_QUERY_THROW);
  const Reference<css::beans::XPropertySet> usual(cells->getByName("Default"), UNO_QUERY_THROW);
  usual->setPropertyValue("CharFontName", Any(rtl::OUString("DejaVu Sans Mono")));
  run();
  EXPECT_GT(rowHeight(document, "Tidy visits.A5"), 3 * rowHeight(document, "Tidy visits.A4") / 2)
      << "'Temperature 1' is cut off, and so is 'Temperature 2'";
}

TEST_F(AuditSheets, PoolsAndDaysAtTheSidesAreTakenApartOnceItIsSaidWhatWasRead) {
  const Document old = workbook_of({testing::sheet("Sheet1", R"(
Survey of 2019
Pool | 2019-04-03 | 2019-04-17
B07 | 23 | 20
B08 | 30 | 28)")});
  EXPECT_EQ(run(old)["layout"], "a cell a visit");
  const std::string row = std::to_string(row_with(old, "Headings", "A", "Survey of 2019"));
  EXPECT_EQ(old.read("Headings.B" + row).text, "Sheet1.B2");
  old.setText("Headings.C" + row, "Visits: Depth");
  old.setText("Headings.D" + row, "in");
  const json said = run(old);
  EXPECT_EQ(said["rows"]["usable"], 4);
  EXPECT_EQ(old.read("Tidy visits.A7").text, "B07");
  EXPECT_EQ(old.read("Tidy visits.B7").text, "2019-04-17");
  const std::size_t first = workbook::column_of(Field::visit_pool);
  const std::string depth = column_letters(workbook::column_of(Field::visit_depth) - first);
  EXPECT_EQ(old.read("Tidy visits." + depth + "7").value, 20) << "inches, as a fresh workbook has them";
  std::size_t columns = 0;
  for (const FieldSpec& field : fields(TableKind::visits))
    columns += field.role == Role::typed;
  EXPECT_EQ(old.read("Tidy visits." + column_letters(columns) + "7").text, "Sheet1.C3");
}

TEST_F(AuditSheets, TidyRowsCanBePutBelowTheRowsOfASeason) {
  run();
  std::size_t columns = 0;
  for (const FieldSpec& field : fields(TableKind::visits))
    columns += field.role == Role::typed;
  const Document season = opened(smallSeason());
  const auto read = [](const Document& from) {
    auto all = read_season(addin::tablesOf(from.model()), serial_of_today());
    EXPECT_TRUE(all) << all.error().text;
    return std::move(all).value();
  };
  const std::size_t before = read(season).visits.size();
  for (std::size_t row = 0; row < 3; ++row)
    for (std::size_t column = 0; column < columns; ++column) {
      const auto state = document.read("Tidy visits." + column_letters(column) + std::to_string(6 + row));
      const std::string to = "Visits." + column_letters(workbook::column_of(Field::visit_pool) + column) +
                             std::to_string(headingRow(TableKind::visits) + 1 + before + row);
      if (column == 1)
        season.setValue(to, state.value);
      else if (!state.text.empty())
        season.type(to, state.text);
    }
  const Season after = read(season);
  ASSERT_EQ(after.visits.size(), before + 3);
  EXPECT_EQ(after.visits[before].date.si, 43556);
  EXPECT_DOUBLE_EQ(after.visits[before].depth.si, 0.3);
  EXPECT_DOUBLE_EQ(after.visits[before].temperature_mean.si, 6.5);
}

TEST_F(AuditSheets, ASecondRunGivesTheSame) {
  const json first = run();
  const std::string before = snapshot(document, "");
  EXPECT_EQ(run(), first);
  EXPECT_TRUE(same(snapshot(document, ""), before));
}

TEST_F(AuditSheets, ACorrectedHeadingWinsFromThenOn) {
  run();
  EXPECT_EQ(shown("Headings.C" + row("pH")), "") << "left open";
  EXPECT_EQ(shown("Headings.D" + row("Max depth, cm")), "cm");
  document.setText("Headings.C" + row("pH"), "Visits: Probe depth");
  document.setText("Headings.D" + row("pH"), "in");
  document.setText("Headings.C" + row("Notes"), "leave alone");
  for (int again = 0; again < 2; ++again) {
    const json audit = run();
    EXPECT_EQ(audit["headings"][4]["field"], "probe_depth");
    EXPECT_EQ(audit["headings"][4]["unit"], "in");
    EXPECT_TRUE(audit["headings"][5]["field"].is_null());
    EXPECT_EQ(shown("Headings.C" + row("pH")), "Visits: Probe depth");
    EXPECT_EQ(shown("Headings.C" + row("Notes")), "leave alone");
    EXPECT_THAT(shown("Headings.F" + row("pH")), HasSubstr("given by a person"));
  }
}

TEST_F(AuditSheets, OffersWordsForFieldAndUnit) {
  run();
  for (const auto& [column, word] : {std::pair{"C", "Visits: Depth"}, {"D", "cm"}}) {
    const Reference<css::beans::XPropertySet> list(
        Reference<css::beans::XPropertySet>(document.cell("Headings." + std::string(column) + row("Site")),
                                            UNO_QUERY_THROW)
            ->getPropertyValue("Validation"),
        UNO_QUERY_THROW);
    css::sheet::ValidationType type = css::sheet::ValidationType_ANY;
    list->getPropertyValue("Type") >>= type;
    EXPECT_EQ(type, css::sheet::ValidationType_LIST);
    const std::string words =
        addin::fromOffice(Reference<css::sheet::XSheetCondition>(list, UNO_QUERY_THROW)->getFormula1());
    ASSERT_THAT(words, HasSubstr("$Headings.$"));
    std::string range = words;
    std::erase(range, '$');
    EXPECT_THAT("\n" + document.dump(range), HasSubstr("\n" + std::string(word) + "\n"));
  }
}

TEST_F(AuditSheets, AWordThatIsNoFieldIsNamedAndNothingIsWritten) {
  run();
  document.setText("Headings.C" + row("pH"), "Shoe size");
  const std::string before = snapshot(document, "");
  const std::string cell = "Headings.C" + row("pH");
  EXPECT_THAT(refusal([&] { run(); }), ::testing::AllOf(HasSubstr(cell), HasSubstr("Shoe size")));
  EXPECT_TRUE(same(snapshot(document, ""), before));
}

TEST_F(AuditSheets, GoWithTheirBlocksWhenTheyAreRenamed) {
  run();
  for (const auto& [from, to] :
       {std::pair{"Audit", "Looked at"}, {"Headings", "Words"}, {"Tidy visits", "Rows"}})
    Reference<css::container::XNamed>(document.sheet(from), UNO_QUERY_THROW)
        ->setName(rtl::OUString::createFromAscii(to));
  document.setText("Words.C" + std::to_string(row_with(document, "Words", "A", "pH")), "leave alone");
  run();
  EXPECT_THAT(document.sheetNames(), ElementsAre("Old", "Looked at", "Words", "Rows"));
  EXPECT_EQ(shown("Words.C" + std::to_string(row_with(document, "Words", "A", "pH"))), "leave alone");
}

TEST_F(AuditSheets, AreMadeAnewWhereTheyWereDeletedAndNotInTheirPlace) {
  run();
  document.model()->getSheets()->insertNewByName("Mine", 2);
  document.setText("Mine.A1", "what I wrote");
  const std::string mine = stored(document, "Mine");
  document.model()->getSheets()->removeByName("Audit"); // mine stands where it stood
  run();
  EXPECT_THAT(document.sheetNames(), ElementsAre("Old", "Mine", "Headings", "Tidy visits", "Audit"));
  EXPECT_EQ(stored(document, "Mine"), mine);
  EXPECT_EQ(shown("Audit.A1"), "Audit");
}

TEST_F(AuditSheets, LeaveAPersonsOwnSheetsOfTheirNamesAlone) {
  for (const char* name : {"Audit", "Headings", "Tidy visits"}) {
    document.model()->getSheets()->insertNewByName(rtl::OUString::createFromAscii(name), 0);
    document.setText(std::string(name) + ".A1", "mine");
  }
  run();
  for (const char* name : {"Audit", "Headings", "Tidy visits"})
    EXPECT_EQ(stored(document, name).substr(0, 5), "mine\t");
  EXPECT_EQ(shown("Audit 2.A1"), "Audit");
  EXPECT_EQ(shown("Headings 2.A1"), "Headings");
  EXPECT_EQ(shown("Tidy visits 2.A6"), "B07");
}

TEST_F(AuditSheets, AKindOfRowThatIsGoneSaysSo) {
  run();
  for (const char* cell : {"A4", "A5", "A6"})
    document.setText("Old." + std::string(cell), "");
  for (const char* cell : {"A3", "B3", "C3", "D3"})
    document.setText("Old." + std::string(cell), "words");
  run();
  EXPECT_THAT(shown("Audit.A2"), HasSubstr("no table"));
  EXPECT_EQ(shown("Tidy visits.A2"), "The last audit found no rows of this kind.");
  EXPECT_EQ(shown("Tidy visits.A6"), "");
}

TEST_F(AuditSheets, ProtectedOnesAreRefused) {
  run();
  for (const char* name : {"Audit", "Headings", "Tidy visits"}) {
    const Document again = workbook_of(small_old_sheet());
    run(again);
    protect(again, name);
    const std::string before = snapshot(again, "");
    EXPECT_THAT(refusal([&] { run(again); }), ::testing::AllOf(HasSubstr(name), HasSubstr("protected")));
    EXPECT_TRUE(same(snapshot(again, ""), before));
  }
}

TEST_F(AuditSheets, AreFoundAgainInAStoredFile) {
  run();
  document.setText("Headings.C" + row("pH"), "leave alone");
  const json first = run();
  for (const char* ending : {".ods", ".xlsx"}) {
    const Document again = reopened(document, ending);
    const auto names = again.sheetNames();
    json second = run(again);
    EXPECT_EQ(again.sheetNames(), names) << ending;
    EXPECT_EQ(gist(second), gist(first)) << ending;
    EXPECT_EQ(again.read("Headings.C" + std::to_string(row_with(again, "Headings", "A", "pH"))).text,
              "leave alone");
  }
}

TEST_F(AuditSheets, ServeOtherFilesAsAMap) {
  run();
  document.setText("Headings.C" + row("pH"), "Visits: Probe depth");
  document.setText("Headings.D" + row("pH"), "in");
  const driver::TemporaryFolder folder("wetspell-test-");
  document.store(folder.path() / "corrected.ods");
  workbook_of(small_old_sheet()).store(folder.path() / "other.ods");
  const json other =
      audited(folder.path() / "other.ods", {"--map", (folder.path() / "corrected.ods").string()});
  EXPECT_EQ(other["headings"][4]["field"], "probe_depth");
  // The sheets of the audit are no old sheets: the same workbook gives the same rows.
  EXPECT_EQ(audited(folder.path() / "corrected.ods")["rows"], audited(folder.path() / "other.ods")["rows"]);
}

TEST_F(AuditSheets, AReportWritesNothing) {
  const std::string before = snapshot(document, "");
  const auto steps = document.undoTitles();
  const Desk desk(document);
  const json report = json::parse(text(desk.call("auditReport", {any("json"), any("drawer.xls")})));
  EXPECT_EQ(report["file"], "drawer.xls");
  EXPECT_THAT(text(desk.call("auditReport", {any("text"), any("drawer.xls")})),
              HasSubstr("3 rows in 1 table"));
  EXPECT_THAT(text(desk.call("auditReport", {any("csv"), any("drawer.xls")})), HasSubstr("stick lost"));
  EXPECT_THAT(refusal([&] {
                desk.call("auditReport", {any("pdf"), any("x")});
              }),
              HasSubstr("text, csv or json, not 'pdf'"));
  EXPECT_TRUE(same(snapshot(document, ""), before));
  EXPECT_EQ(document.undoTitles(), steps);
}

TEST_F(AuditSheets, TheCommandTurnsToTheFirstScreen) {
  document.dispatch("org.wetspell.command:audit");
  EXPECT_THAT(document.sheetNames(), ElementsAre("Old", "Audit", "Headings", "Tidy visits"));
}

// The office's own undo of a new sheet wants a window, and takes the sheet out of the one in front.
TEST_F(AuditSheets, AreUndoneWithoutAWindow) {
  const Document inFront = workbook_of(small_old_sheet(), office(), {.hidden = false});
  run(inFront);
  const std::string other = snapshot(inFront, ""), before = snapshot(document, "");
  const auto steps = document.undoTitles();
  run();
  document.undo();
  EXPECT_TRUE(same(snapshot(document, ""), before));
  EXPECT_EQ(document.undoTitles(), steps);
  EXPECT_THAT(refusal([&] { document.redo(); }), HasSubstr("run the command again"));
  EXPECT_TRUE(same(snapshot(inFront, ""), other));
  run();
  EXPECT_THAT(document.sheetNames(), ElementsAre("Old", "Audit", "Headings", "Tidy visits"));
}

TEST_F(AuditSheets, ARefusalMidwayLeavesNothingBehindAndTheOfficeGoesOn) {
  run();
  document.model()->getSheets()->removeByName("Audit"); // the next audit begins with a new sheet
  for (const auto& [cell, words] : {std::pair{"A7", "B10"}, {"B7", "2019-04-18"}, {"C7", "28"}})
    document.type("Old." + std::string(cell), words);
  const auto block = addin::ownedBlock(document.model(), "wetspell_tidy_visits")->area;
  const auto across =
      document.sheet("Tidy visits")
          ->getCellRangeByPosition(block.EndColumn, block.EndRow + 1, block.EndColumn + 1, block.EndRow + 2);
  const Reference<css::util::XMergeable> merged(across, UNO_QUERY_THROW);
  Reference<css::text::XText>(across->getCellByPosition(0, 0), UNO_QUERY_THROW)->setString("mine");
  merged->merge(true);
  const std::string before = snapshot(document, "");
  const auto steps = document.undoTitles();
  EXPECT_THAT(refusal([&] { run(); }),
              ::testing::AllOf(HasSubstr("Merged cells below"), HasSubstr("'Tidy visits'")));
  EXPECT_THAT(document.sheetNames(), ElementsAre("Old", "Headings", "Tidy visits"));
  EXPECT_TRUE(same(snapshot(document, ""), before));
  EXPECT_EQ(document.undoTitles(), steps);
  merged->merge(false);
  EXPECT_EQ(run()["rows"]["usable"], 3);
  EXPECT_THAT(document.sheetNames(), ElementsAre("Old", "Headings", "Tidy visits", "Audit"));
  EXPECT_EQ(shown("Tidy visits." + column_letters(static_cast<std::size_t>(block.EndColumn)) +
                  std::to_string(block.EndRow + 3)),
            "mine")
      << "what stood below made way";
}

TEST_F(AuditSheets, ABlockNearTheEndOfItsSheetIsNamed) {
  run();
  const auto block = addin::ownedBlock(document.model(), "wetspell_headings")->area;
  Reference<css::table::XColumnRowRange>(document.sheet("Headings"), UNO_QUERY_THROW)
      ->getRows()
      ->insertByIndex(0, 1048575 - block.EndRow);
  document.model()->getSheets()->removeByName("Audit");
  Table wide(Place{"More", 1, 0}, 3, 120);
  for (std::size_t column = 0; column < wide.columns(); ++column)
    wide.at(0, column) = Cell::of_text(column == 0   ? "Pool"
                                       : column == 1 ? "Date"
                                                     : "Word " + std::to_string(column));
  for (const std::size_t row : {1, 2}) {
    wide.at(row, 0) = Cell::of_text("B07");
    wide.at(row, 1) = Cell::of_date(43556 + static_cast<double>(row));
  }
  document.model()->getSheets()->insertNewByName("More", 0);
  for (std::size_t row = 0; row < wide.rows(); ++row)
    for (std::size_t column = 0; column < wide.columns(); ++column)
      addin::write(document.model(), wide.place(row, column), wide.at(row, column));
  const std::string before = snapshot(document, "Headings");
  EXPECT_THAT(refusal([&] { run(); }),
              ::testing::AllOf(HasSubstr("'Headings'"), HasSubstr("has 1048576 rows")));
  EXPECT_TRUE(same(snapshot(document, "Headings"), before));
}

TEST(AuditInAWindow, StandsBesideTheOtherSheetsAndIsOneStep) {
  const Document document = workbook_of(small_old_sheet(), office(), {.hidden = false});
  const std::string before = snapshot(document, "");
  const auto steps = document.undoTitles();
  Desk(document).call("audit");
  EXPECT_THAT(document.sheetNames(), ElementsAre("Old", "Audit", "Headings", "Tidy visits"));
  EXPECT_EQ(document.undoTitles().size(), steps.size() + 1);
  EXPECT_EQ(document.undoTitles().front(), "Audit the workbook");
  EXPECT_EQ(snapshot(document, "").substr(0, before.size()), before);
  document.undo();
  EXPECT_TRUE(same(snapshot(document, ""), before));
  document.redo();
  EXPECT_THAT(document.sheetNames(), ElementsAre("Old", "Audit", "Headings", "Tidy visits"));
  EXPECT_THAT(document.read("Audit.A2").text, HasSubstr("3 rows in 1 table"));
}

TEST(AuditWithADecimalComma, SaysAndWritesTheSame) {
  driver::Office german(withExtension("de-DE"));
  const Document here = workbook_of(small_old_sheet()), there = workbook_of(small_old_sheet(), german);
  there.setText("Old.D4", "6,5"); // as people there type it
  EXPECT_EQ(gist(json::parse(text(Desk(there).call("audit")))),
            gist(json::parse(text(Desk(here).call("audit")))));
  EXPECT_EQ(there.read("Tidy visits.B6").value, 43556);
  EXPECT_EQ(there.read("Tidy visits.B6").text, "2019-04-01");
  const std::size_t unread = row_with(there, "Audit", "A", "What was left unread");
  EXPECT_THAT(there.read("Audit.A" + std::to_string(unread + 2)).formula, HasSubstr("$Old.$C$6"));
  EXPECT_EQ(there.read("Headings.E6").text.substr(1, 1), ",");
  there.setText("Headings.C" + std::to_string(row_with(there, "Headings", "A", "pH")), "leave alone");
  const json again = json::parse(text(Desk(there).call("audit")));
  EXPECT_THAT(again["headings"][4]["reason"].get<std::string>(), HasSubstr("a person said so"));
}

} // namespace
} // namespace wetspell::host
