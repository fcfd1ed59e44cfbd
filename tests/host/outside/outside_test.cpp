// Formulas of a workbook that came back may refer to other files and to the net. Gathering follows none of
// them, also in an office whose own settings would: what was stored in the cell counts.

#include "commands/season_in_office.hpp"
#include "driver/files.hpp"
#include "harness/listener.hpp"
#include "text_of.hpp"

#include "base/text.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/configuration/theDefaultProvider.hpp>
#include <com/sun/star/util/XChangesBatch.hpp>
#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include <array>
#include <cstdlib>

#include <sys/wait.h>

namespace wetspell::host {
namespace {

using addin::toOffice;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using driver::Document;
using ::testing::HasSubstr;

/// What an office is told in Tools, Options by somebody who trusts everything.
void trustEverything(const driver::Office& office) {
  const auto change = [&](const char* node, const char* name, const Any& value) {
    css::uno::Sequence<Any> where(1);
    where.getArray()[0] <<=
        css::beans::PropertyValue("nodepath", 0, Any(toOffice(node)), css::beans::PropertyState_DIRECT_VALUE);
    const auto settings =
        css::configuration::theDefaultProvider::get(office.context())
            ->createInstanceWithArguments("com.sun.star.configuration.ConfigurationUpdateAccess", where);
    Reference<css::beans::XPropertySet>(settings, UNO_QUERY_THROW)->setPropertyValue(toOffice(name), value);
    Reference<css::util::XChangesBatch>(settings, UNO_QUERY_THROW)->commitChanges();
  };
  const char* scripting = "/org.openoffice.Office.Common/Security/Scripting";
  const rtl::OUString anywhere("file:///");
  change("/org.openoffice.Office.Calc/Content/Update", "Link", Any(sal_Int32(0))); // always
  change(scripting, "BlockUntrustedRefererLinks", Any(false));
  change(scripting, "MacroSecurityLevel", Any(sal_Int32(0)));
  change(scripting, "SecureURL", Any(css::uno::Sequence<rtl::OUString>(&anywhere, 1)));
}

struct Case {
  const char* ending;
  const char* generator; ///< the program that says it wrote the file
};

class Outside : public ::testing::TestWithParam<Case> {
protected:
  static void SetUpTestSuite() {
    office_ = std::make_unique<driver::Office>(withExtension());
    trustEverything(*office_);
  }
  static void TearDownTestSuite() { office_.reset(); }

  void SetUp() override {
    const Document secret = Document::create(*office_);
    secret.setValue("A1", 77);
    secret.setValue("A2", 1);
    secret.store(elsewhere.path() / (std::string("secret") + GetParam().ending));
    const std::string command = std::string(WETSPELL_PYTHON) +
                                " '" WETSPELL_TESTS_DIR "/data/gather/write_outside.py' '" + came().string() +
                                "' '" + (elsewhere.path() / "secret").string() + "' '" +
                                GetParam().generator + "' " + listener.address();
    ASSERT_EQ(std::system(command.c_str()), 0);
  }
  std::filesystem::path came() const { return folder.path() / (std::string("came") + GetParam().ending); }

  /// The results that the file holds, by pool.
  static constexpr std::array<std::pair<const char*, const char*>, 6> stored{
      {{"B01", "12"}, {"B02", "13"}, {"B03", "14"}, {"B04", "15"}, {"B05", "16"}, {"B06", "17"}}};

  static std::unique_ptr<driver::Office> office_;
  driver::TemporaryFolder folder{"wetspell-test-"}, elsewhere{"wetspell-test-"};
  Listener listener;
};

std::unique_ptr<driver::Office> Outside::office_;

TEST_P(Outside, IsNeitherReadNorAskedWhenGathering) {
  const Document season = opened(smallSeason(), *office_);
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
  const Document open = Document::open(*office_, came());
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
