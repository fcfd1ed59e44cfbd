// Workbooks whose linked picture is not where one would look for it: in an old workbook, under a name of
// another format, in other signs. Gathering looks through all of them or refuses them; the office would fetch
// it.

#include "commands/season_in_office.hpp"
#include "driver/files.hpp"
#include "harness/listener.hpp"
#include "outside/trusting_office.hpp"

#include <com/sun/star/frame/XStorable.hpp>
#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

namespace wetspell::host {
namespace {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using driver::Document;
using ::testing::HasSubstr;

struct Disguise {
  const char* from;    ///< ending of the workbook that links to a picture
  const char* to;      ///< name of the one that comes back
  const char* how;     ///< as disguise.py names it; "stored": by the office in that format
  const char* refusal; ///< words of it; empty: the workbook is read
};

class Disguised : public ::testing::TestWithParam<Disguise> {
protected:
  void SetUp() override {
    const auto plain = elsewhere.path() / (std::string("plain") + GetParam().from);
    writeOutside(plain, elsewhere.path() / "secret", "Another program", listener.address());
    if (std::string(GetParam().how) != "stored") {
      disguise(plain, came(), GetParam().how);
      return;
    }
    const Document open = Document::open(office(), plain); // an office that cannot fetch keeps the link
    const css::beans::PropertyValue filter("FilterName", 0, Any(rtl::OUString("MS Excel 97")),
                                           css::beans::PropertyState_DIRECT_VALUE);
    Reference<css::frame::XStorable>(open.model(), UNO_QUERY_THROW)
        ->storeToURL(driver::urlOf(came()), {&filter, 1});
  }
  std::filesystem::path came() const { return folder.path() / GetParam().to; }

  driver::TemporaryFolder folder{"wetspell-test-"}, elsewhere{"wetspell-test-"};
  Listener listener;
};

TEST_P(Disguised, FetchesNothingWhenGathered) {
  const Document season = opened(smallSeason(), trustingOffice());
  const auto told = nlohmann::json::parse(text(Desk(season).call("gather", {any(folder.path().string())})));
  EXPECT_FALSE(listener.somebodyCame());
  const std::string refusal = GetParam().refusal;
  EXPECT_EQ(told["not_read"], refusal.empty() ? 0 : 1) << told.dump(2);
  EXPECT_THAT(told.dump(), HasSubstr(refusal));
}

/// What happens without that care.
TEST_P(Disguised, FetchesWhereItIsOpenedAsItIs) {
  Document::open(trustingOffice(), came());
  EXPECT_TRUE(listener.somebodyCame()) << "the listener hears who comes";
}

INSTANTIATE_TEST_SUITE_P(
    Files, Disguised,
    ::testing::Values(Disguise{".ods", "old.xls", "stored", ""}, Disguise{".ods", "new.xls", "renamed", ""},
                      Disguise{".xlsx", "new.xls", "renamed", ""}, Disguise{".ods", "flat.xls", "flat", ""},
                      Disguise{".xlsx", "moved.xlsx", "moved", ""},
                      Disguise{".ods", "chart.ods", "chart", ""},
                      Disguise{".ods", "library.ods", "library", ""},
                      Disguise{".ods", "utf16.ods", "utf16", "content.xml is not written in UTF-8"},
                      Disguise{".ods", "utf7.ods", "utf7", "content.xml is written in UTF-7"},
                      Disguise{".ods", "declared.ods", "declared",
                               "content.xml makes declarations of its own"}),
    [](const auto& test) {
      std::string name = std::string(test.param.how) + (test.param.from + 1) + test.param.to;
      std::erase(name, '.');
      return name;
    });

} // namespace
} // namespace wetspell::host
