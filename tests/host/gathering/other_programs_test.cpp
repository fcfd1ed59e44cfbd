// Files that other programs wrote: Gnumeric's ssconvert and Python's openpyxl, run here.

#include "gathering/came_back.hpp"

#include <gmock/gmock.h>

#include <cstdlib>
#include <fstream>

namespace wetspell::host {
namespace {

using ::testing::HasSubstr;

constexpr std::size_t held = 6; // visits of the small season

class OtherPrograms : public CameBack {
protected:
  static void run(const std::string& command) {
    ASSERT_EQ(std::system((command + " >&2").c_str()), 0) << command;
  }
  std::string path(const std::string& file) const { return "'" + (folder.path() / file).string() + "'"; }
};

TEST_F(OtherPrograms, GnumericInThreeFormats) {
  const driver::TemporaryFolder typed("wetspell-test-");
  const auto csv = typed.path() / "visits.csv";
  int of_june = 1;
  for (const std::string ending : {"xlsx", "ods", "xls"}) {
    std::ofstream(csv) << "Pool,Date,First person,Water,Depth,Notes\nB01,2026-06-0" << of_june++
                       << ",KLUG,standing water,12.5,\"by Gnumeric, " << ending << "\"\n";
    run("ssconvert '" + csv.string() + "' " + path("from gnumeric." + ending));
  }
  const auto told = gather();
  EXPECT_EQ(told["not_read"], 0) << told.dump(2);
  ASSERT_EQ(told["added"]["visits"], 3) << told.dump(2);
  for (std::size_t i = 0; i < 3; ++i) {
    const unsigned on = cell(Field::visit_notes, held + i) == "by Gnumeric, xlsx"  ? 1
                        : cell(Field::visit_notes, held + i) == "by Gnumeric, ods" ? 2
                                                                                   : 3;
    EXPECT_EQ(document.read(at(Field::visit_date, held + i)).value, day(6, on));
    EXPECT_EQ(document.read(at(Field::visit_depth, held + i)).value, 12.5);
  }
  EXPECT_EQ(gather()["changed"], false);
}

TEST_F(OtherPrograms, OpenpyxlWithMovedColumnsNotesAndOtherUnits) {
  run("/usr/bin/python3 '" WETSPELL_TESTS_DIR "/data/gather/write_workbook.py' " + path("ada.xlsx"));
  const auto told = gather();
  ASSERT_EQ(told["added"]["visits"], 2) << told.dump(2);
  EXPECT_EQ(cell(Field::visit_pool, held), "B01");
  EXPECT_EQ(document.read(at(Field::visit_date, held)).value, day(6, 1));
  EXPECT_EQ(cell(Field::visit_start, held), "09:05");
  EXPECT_EQ(cell(Field::visit_depth, held), "30.48 cm") << "the season's depths are in inches";
  EXPECT_EQ(cell(Field::visit_depth_class_read, held), "over 6 to 12 in") << "30.48 cm are 12 in";
  EXPECT_EQ(cell(Field::visit_fill, held), "75%");
  EXPECT_EQ(document.read(at(Field::visit_temperature_1, held)).value, 52) << "a formula of another program";
  EXPECT_EQ(cell(Field::visit_depth, held + 1), "over my boots");
  EXPECT_EQ(cell(Field::visit_source_row, held + 1), "Spring walks, row 5");
  EXPECT_EQ(gather()["changed"], false);
}

} // namespace
} // namespace wetspell::host
