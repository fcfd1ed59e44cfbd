// Formulas of a workbook that came back may refer to other files and to the net. Gathering follows none of
// them, also in an office whose own settings would: what was stored in the cell counts.

#include "commands/season_in_office.hpp"
#include "driver/files.hpp"
#include "harness/listener.hpp"
#include "outside/trusting_office.hpp"
#include "text_of.hpp"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include <array>
#include <cstdlib>

#include <sys/wait.h>

namespace wetspell::host {
namespace {

using driver::Document;
using ::testing::HasSubstr;

struct Case {
  const char* ending;
  const char* generator; ///< the program that says it wrote the file
};

class Outside : public ::testing::TestWithParam<Case> {
protected:
  void SetUp() override {
    const Document secret = Document::create(trustingOffice());
    secret.setValue("A1", 77);
    secret.setValue("A2", 1);
    secret.store(elsewhere.path() / (std::string("secret") + GetParam().ending));
    writeOutside(came(), elsewhere.path() / "secret", GetParam().generator, listener.address());
  }
  std::filesystem::path came() const { return folder.path() / (std::string("came") + GetParam().ending); }

  /// The results that the file holds, by pool.
  static constexpr std::array<std::pair<const char*, const char*>, 6> stored{
      {{"B01", "12"}, {"B02", "13"}, {"B03", "14"}, {"B04", "15"}, {"B05", "16"}, {"B06", "17"}}};

  driver::TemporaryFolder folder{"wetspell-test-"}, elsewhere{"wetspell-test-"};
  Listener listener;
};

TEST_P(Outside, IsNeitherReadNorAskedWhenGathering) {
  const Document season = opened(smallSeason(), trustingOffice());
  constexpr std::size_t held = 6; // visits of the small season
  const auto told = nlohmann::json::parse(text(Desk(season).call("gather", {any(folder.path().string())})));
  ASSERT_EQ(told["added"]["visits"], stored.size()) << told.dump(2);
  for (std::size_t row = 0; row < stored.size(); ++row) {
    EXPECT_EQ(season.read(at(Field::visit_pool, held + row)).text, stored[row].first);
    EXPECT_EQ(season.read(at(Field::visit_depth, held + row)).text, stored[row].second)
        << stored[row].first << ": what its person saw";
  }
  EXPECT_FALSE(listener.somebodyCame());
}

TEST_P(Outside, IsNeitherReadNorAskedByAnAudit) {
  const auto out = elsewhere.path() / "out";
  const std::string command = "'" WETSPELL_PROGRAM "' audit '" + came().string() + "' --out '" +
                              out.string() + "' >'" + (elsewhere.path() / "said").string() + "'";
  ASSERT_LE(WEXITSTATUS(std::system(command.c_str())), 1);
  const std::string tidy = test::text_of(out / "came-tidy-visits.csv");
  for (const auto& [pool, depth] : stored)
    EXPECT_THAT(tidy, HasSubstr(std::string(pool) + ",2026-06-01," + depth)) << tidy;
  EXPECT_FALSE(listener.somebodyCame());
}

/// What happens without that care; of the other format the office asks for no pictures.
class OutsideOfOpenDocument : public Outside {};

TEST_P(OutsideOfOpenDocument, IsAskedWhereTheFileIsOpenedAsItIs) {
  const Document open = Document::open(trustingOffice(), came());
  EXPECT_TRUE(listener.somebodyCame()) << "the listener hears who comes";
  EXPECT_NE(open.read("C2").text, "12");
}

INSTANTIATE_TEST_SUITE_P(Files, Outside,
                         ::testing::Values(Case{".ods", "LibreOffice/7.4"}, Case{".ods", "Another program"},
                                           Case{".xlsx", "LibreOffice/7.4"}, Case{".xlsx", "Another program"},
                                           Case{".xlsx", "Microsoft Excel"}));

INSTANTIATE_TEST_SUITE_P(Files, OutsideOfOpenDocument, ::testing::Values(Case{".ods", "LibreOffice/7.4"}));

} // namespace
} // namespace wetspell::host
