// A handout as other programs see it. Both programs are among the packages that tests need.

#include "handout/handout_season.hpp"
#include "harness/host.hpp"
#include "text_of.hpp"

#include <boost/process.hpp>
#include <fmt/format.h>
#include <gmock/gmock.h>

namespace wetspell::host {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

/// What a program prints; it must end well.
std::string printed(const std::vector<std::string>& words) {
  namespace bp = boost::process;
  bp::ipstream stream;
  bp::child child(words.front(), bp::args(std::vector<std::string>(words.begin() + 1, words.end())),
                  bp::std_out > stream, bp::std_err > bp::null);
  const std::string text{std::istreambuf_iterator<char>(stream), {}};
  child.wait();
  EXPECT_EQ(child.exit_code(), 0) << words.front() << " " << words.back();
  return text;
}

const Question asked{
    "k-1", Level::ask, Place{}, "P2", "2026-04-10", "Depth", "20", "Dry, yet 20 in deep.", "Read it again."};

TEST(HandoutElsewhere, IsReadByAnotherProgramWithItsDropDowns) {
  ASSERT_NE(std::string(WETSPELL_PYTHON), "WETSPELL_PYTHON-NOTFOUND");
  const driver::TemporaryFolder folder("wetspell-elsewhere");
  const auto file = folder.path() / "handout.xlsx";
  handoutIn(office(), handoutSeason(), {asked}).store(file);
  const std::string seen = printed({WETSPELL_PYTHON, WETSPELL_READ_XLSX, file.string()});
  for (const char* sheet : {"Read first", "Visits", "Life", "Questions", "You", "Words"})
    EXPECT_THAT(seen, HasSubstr(fmt::format("sheet {}\n", sheet)));
  EXPECT_THAT(seen, HasSubstr("hidden Questions A\n"));
  EXPECT_THAT(seen, HasSubstr("value Questions A4 k-1\n"));
  EXPECT_THAT(seen, HasSubstr("check Visits B4:B28 list You!$A$9:$A$10 warning\n"));
  EXPECT_THAT(seen, HasSubstr("check Visits F4:F28 list Words!$D$4:$D$4 warning\n"));
  EXPECT_THAT(
      seen, HasSubstr("check Visits G4:G28 list \"standing water,no standing water,frozen over\" warning\n"));
  EXPECT_THAT(seen, HasSubstr("check Visits K4:K28 custom OR(ISTEXT(K4),AND(K4>=0,K4<=196.85"));
  EXPECT_THAT(seen, HasSubstr("check Questions H4 list \"right as it is,do not remember\" lets in others\n"));
  EXPECT_THAT(seen, HasSubstr("value Visits K3 Depth (in)\n"));
  EXPECT_THAT(seen, HasSubstr("formula Visits A4 =IF(COUNTA("));
  EXPECT_THAT(seen, Not(HasSubstr("ORG.")));
  EXPECT_THAT(seen, Not(HasSubstr("COM.SUN")));
}

TEST(HandoutElsewhere, IsWorkedOutByAnotherProgram) {
  ASSERT_NE(std::string(WETSPELL_SSCONVERT), "WETSPELL_SSCONVERT-NOTFOUND");
  const driver::TemporaryFolder folder("wetspell-elsewhere");
  for (const char* ending : {".xlsx", ".ods"}) {
    const auto file = folder.path() / (std::string("handout") + ending);
    {
      const auto document = handoutIn(office(), handoutSeason());
      document.setText(visit::pool, "P2");
      document.type(visit::date, "2026-04-18");
      document.type(visit::first, "52.5");
      document.type(visit::middle, "60");
      document.type(visit::depth, "37");
      document.setText(visit::sizeBy, "paces");
      document.type(visit::length, "12");
      document.type(visit::width, "6");
      document.store(file);
    }
    const auto csv = folder.path() / "visits.csv";
    printed({WETSPELL_SSCONVERT, "--recalc", "-O", "sheet=Visits", "-T", "Gnumeric_stf:stf_assistant",
             file.string(), csv.string()});
    const std::string seen = test::text_of(csv);
    EXPECT_THAT(
        seen,
        HasSubstr("Temperatures more than 4.5 °F apart: read again? Do not wade deeper than 36 in. Mean "
                  "56.3 °F, apart by 7.5 °F. Area about 1414 ft² by your paces."))
        << ending;
    EXPECT_THAT(seen, HasSubstr("RW")) << ending;
    EXPECT_THAT(seen, Not(HasSubstr("#NAME?"))) << ending;
  }
}

} // namespace
} // namespace wetspell::host
