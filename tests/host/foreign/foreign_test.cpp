// Handouts that were filled in and stored by other programs come back whole: every reading as it was typed,
// whatever became of sheets and columns on the way; the same visit twice is one visit.
#include "foreign/other_programs.hpp"
#include "gathering/came_back.hpp"

#include "sheet/read_sheets.hpp"
#include "templates/handout.hpp"

#include <gmock/gmock.h>

#include <algorithm>
#include <fstream>

namespace wetspell::host {
namespace {

namespace fs = std::filesystem;
using driver::Document;
using ::testing::Contains;
using ::testing::HasSubstr;

constexpr std::size_t held = 6; // visits of the small season

class Foreign : public CameBack {
protected:
  driver::TemporaryFolder sent{"wetspell-test-"};

  /// The handout of RW with this ending.
  fs::path handout(const std::string& ending) const {
    const fs::path file = sent.path() / ("handout" + ending);
    if (!fs::exists(file)) {
      const fs::path flat = sent.path() / "handout.fods";
      const auto season = read_season(addin::tablesOf(document.model()), day(11, 1));
      std::ofstream(flat) << workbook::handout_workbook(season.value(), person(season.value()), {});
      const Document paper = Document::open(office(), flat);
      paper.model()->getSheets()->moveByName("Visits", 0); // Gnumeric's program types into the first sheet
      paper.store(file);
    }
    return file;
  }
  static std::size_t person(const Season& season) {
    const auto found = std::find_if(season.people.begin(), season.people.end(),
                                    [](const Person& each) { return each.code == "RW"; });
    return static_cast<std::size_t>(found - season.people.begin());
  }
  /// "C4=words" for each heading, in the n-th row (from 0) to be filled.
  std::vector<std::string> typed(std::size_t nth, const std::map<std::string, std::string>& row) const {
    const Document paper = Document::open(office(), handout(".ods"));
    std::vector<std::string> all;
    for (const auto& [heading, words] : row)
      for (std::size_t column = 0; column < 60; ++column) {
        const std::string cell = column_letters(column);
        const std::string shown = paper.read("Visits." + cell + "3").text;
        if (shown == heading || shown.starts_with(heading + " ("))
          all.push_back(cell + std::to_string(4 + nth) + "=" + words);
      }
    EXPECT_EQ(all.size(), row.size()) << "a heading is not on the handout";
    return all;
  }
  double number(Field field, std::size_t row) const { return document.read(at(field, row)).value; }
  void expectNothingTheSecondTime() const { EXPECT_EQ(gather()["changed"], false); }
};

TEST_F(Foreign, GnumericFillsAndStoresEveryFormat) {
  std::size_t row = 0;
  for (const char* ending : {".ods", ".xls", ".xlsx"}) {
    const std::string day = "2026-06-0" + std::to_string(++row);
    byGnumeric(handout(ending == std::string(".ods") ? ".ods" : ".xlsx"),
               folder.path() / ("gnumeric" + std::string(ending)),
               typed(0, {{"Pool", "B01"},
                         {"Date", day},
                         {"Start", "9:40"},
                         {"Water", "standing water"},
                         {"Temperature 1", "52.5"},
                         {"Depth", "about 20"}}));
  }
  const auto told = gather();
  EXPECT_EQ(told["added"]["visits"], 3) << told.dump(2);
  EXPECT_EQ(told["not_read"], 0);
  for (std::size_t i = 0; i < 3; ++i) {
    EXPECT_EQ(number(Field::visit_date, held + i), day(6, static_cast<unsigned>(i) + 1));
    EXPECT_NEAR(number(Field::visit_start, held + i), (9 + 40 / 60.0) / 24, 1e-9);
    EXPECT_EQ(number(Field::visit_temperature_1, held + i), 52.5);
    EXPECT_EQ(cell(Field::visit_depth, held + i), "about 20");
    EXPECT_EQ(cell(Field::visit_person, held + i), "RW") << "known from the handout, not typed";
    EXPECT_EQ(cell(Field::visit_source_row, held + i), "Visits, row 4");
  }
  EXPECT_EQ(cell(Field::visit_source_file, held), "gnumeric.ods");
  expectNothingTheSecondTime();
}

TEST_F(Foreign, OpenpyxlRenamesTheSheetAndMovesColumns) {
  byOpenpyxl(handout(".xlsx"), folder.path() / "openpyxl.xlsx",
             {{"sheet", "Visits"},
              {"rename", "what I saw"},
              {"insert", 2},
              {"swap", {"Depth", "Pool"}},
              {"rows",
               {{{"Pool", "B01"}, {"Date", "date:2026-06-01"}, {"Water", "standing water"}, {"Depth", 21}},
                {{"Pool", "B07"}, {"Date", "date:2026-06-02"}, {"Depth", "up to my knee"}}}}});
  const auto told = gather();
  EXPECT_EQ(told["added"]["visits"], 2) << told.dump(2);
  EXPECT_EQ(cell(Field::visit_pool, held), "B01");
  EXPECT_EQ(number(Field::visit_depth, held), 21);
  EXPECT_EQ(number(Field::visit_date, held + 1), day(6, 2));
  EXPECT_EQ(cell(Field::visit_depth, held + 1), "up to my knee");
  EXPECT_THAT(cell(Field::visit_source_row, held + 1), HasSubstr("what I saw, row 5"));
  expectNothingTheSecondTime();
}

TEST_F(Foreign, ExceljsLeavesItsOwnKindsOfCells) {
  byExceljs(
      handout(".xlsx"), folder.path() / "exceljs.xlsx",
      {{"sheet", "Visits"},
       {"rename", "sent by Rowan"},
       {"rows",
        {{{"Pool", {{"hyperlink", "#Pools!A1"}, {"text", "B01"}}},
          {"Date", "date:2026-06-01"},
          {"Start", "time:09:40"},
          {"Temperature 1", {{"formula", "50+2.5"}, {"result", 52.5}}},
          {"Depth", {{"richText", {{{"text", "about "}, {"font", {{"bold", true}}}}, {{"text", "20"}}}}}}},
         {{"Pool", "B07"}, {"Date", "date:2026-06-02"}, {"Depth", 21}}}}});
  const auto told = gather();
  EXPECT_EQ(told["added"]["visits"], 2) << told.dump(2);
  EXPECT_EQ(told["not_read"], 0);
  EXPECT_EQ(cell(Field::visit_pool, held), "B01") << "a link shows its text";
  EXPECT_EQ(number(Field::visit_date, held), day(6, 1));
  EXPECT_NEAR(number(Field::visit_start, held), (9 + 40 / 60.0) / 24, 1e-9);
  EXPECT_EQ(number(Field::visit_temperature_1, held), 52.5) << "a formula is worked out";
  EXPECT_EQ(cell(Field::visit_depth, held), "about 20") << "in two fonts";
  EXPECT_EQ(number(Field::visit_depth, held + 1), 21);
  EXPECT_EQ(cell(Field::visit_source_row, held + 1), "sent by Rowan, row 5");
  expectNothingTheSecondTime();
}

TEST_F(Foreign, ASheetOfTheirOwnWithOtherUnitsAndOrder) {
  byXlsxwriter(folder.path() / "own.xlsx", "spring",
               {{"My pools this spring"},
                {},
                {"Date", "Site", "Depth (cm)", "Observer", "Comments"},
                {"2026-06-01", "B01", "=51", "RW", "frogs calling"},
                {"2026-06-02", "B07", "=40.5", "RW", ""}});
  const auto told = gather();
  EXPECT_EQ(told["added"]["visits"], 2) << told.dump(2);
  EXPECT_EQ(cell(Field::visit_depth, held), "51 cm") << "the season reads bare numbers as inches";
  EXPECT_EQ(cell(Field::visit_depth, held + 1), "40.5 cm");
  EXPECT_EQ(cell(Field::visit_notes, held), "frogs calling");
  expectNothingTheSecondTime();
}

TEST_F(Foreign, AnswersTypedElsewhereComeBackToTheirFindings) {
  desk.check();
  desk.call("handout", {any("RW"), css::uno::Any(driver::urlOf(sent.path()))});
  for (const auto& file : fs::directory_iterator(sent.path()))
    if (file.path().extension() == ".xlsx")
      byOpenpyxl(file.path(), folder.path() / "answered.xlsx",
                 {{"sheet", "Questions"},
                  {"rename", "your questions"},
                  {"insert", 1},
                  {"rows", {{{"Answer", "right as it is"}}, {{"Answer", "51.5, I slipped"}}}}});
  const auto told = gather();
  EXPECT_EQ(told["answered"], 2) << told.dump(2);
  EXPECT_TRUE(told["files"][0]["remarks"].empty()) << "what else a handout holds is no loss";
  std::vector<std::string> answers, notes;
  for (const FindingRow& row : rowsOnSheet(document)) {
    answers.push_back(row.at("answer"));
    notes.push_back(row.at("note"));
  }
  EXPECT_THAT(answers, Contains("right as it is"));
  EXPECT_THAT(notes, Contains("answered.xlsx: 51.5, I slipped"));
  expectNothingTheSecondTime();
}

TEST_F(Foreign, TheSameVisitFromThreeProgramsIsOne) {
  const std::map<std::string, std::string> row{{"Pool", "B01"}, {"Date", "2026-06-01"}, {"Depth", "20"}};
  byGnumeric(handout(".ods"), folder.path() / "a.ods", typed(0, row));
  byGnumeric(handout(".xlsx"), folder.path() / "b.xlsx", typed(3, row));
  byOpenpyxl(
      handout(".xlsx"), folder.path() / "c.xlsx",
      {{"sheet", "Visits"}, {"rows", {{{"Pool", "b01 "}, {"Date", "date:2026-06-01"}, {"Depth", "20 in"}}}}});
  byXlsxwriter(folder.path() / "d.xlsx", "Visits",
               {{"Pool", "Date", "Person", "Depth"}, {"B01", "2026-06-01", "RW", "=22"}});
  const auto told = gather();
  EXPECT_EQ(told["added"]["visits"], 1) << told.dump(2);
  EXPECT_EQ(told["to_choose"], 1) << "the last one says another depth";
  EXPECT_EQ(cell(Field::visit_source_file, held), "a.ods");
  EXPECT_EQ(number(Field::visit_depth, held), 20) << "never written over";
  expectNothingTheSecondTime();
}

} // namespace
} // namespace wetspell::host
