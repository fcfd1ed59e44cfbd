// A workbook on the disk is replaced whole or stays as it was: no room, no right, an office that is killed.
#include "base/text.hpp"
#include "driver/failure.hpp"
#include "driver/files.hpp"
#include "driver/replace_file.hpp"
#include "harness/host.hpp"
#include "small_disk.hpp"

#include <com/sun/star/sheet/XArrayFormulaRange.hpp>
#include <gmock/gmock.h>

#include <fstream>
#include <sstream>

#include <unistd.h>

namespace wetspell::host {
namespace {

namespace fs = std::filesystem;
using driver::Document;
using driver::Failure;
using driver::Office;
using driver::replaceFile;
using ::testing::AllOf;
using ::testing::ElementsAre;
using ::testing::HasSubstr;

std::string bytesOf(const fs::path& file) {
  std::ifstream in(file, std::ios::binary);
  std::ostringstream bytes;
  bytes << in.rdbuf();
  return bytes.str();
}

std::vector<std::string> namesIn(const fs::path& folder) {
  std::vector<std::string> names;
  for (const auto& entry : fs::directory_iterator(folder))
    names.push_back(entry.path().filename().string());
  return names;
}

/// The words with which it is refused; empty when the file was replaced.
std::string refusal(const Document& document, const fs::path& file) {
  try {
    replaceFile(document, file);
  } catch (const Failure& failure) {
    return failure.what();
  }
  return {};
}

class ReplaceFile : public HostTest {
protected:
  ReplaceFile() {
    document.setValue("A1", 1);
    document.store(file);
    before = bytesOf(file);
    document.setValue("A1", 2);
  }
  void expectAsItWas() const {
    EXPECT_TRUE(bytesOf(file) == before) << "the file on the disk has changed";
    EXPECT_THAT(namesIn(folder.path()), ElementsAre("season.ods")) << "something is left beside it";
  }

  driver::TemporaryFolder folder{"wetspell-test-"};
  fs::path file = folder.path() / "season.ods";
  std::string before;
};

TEST_F(ReplaceFile, WritesTheWholeFileAndNothingElse) {
  fs::permissions(file, fs::perms::owner_read | fs::perms::owner_write | fs::perms::group_read);
  replaceFile(document, file);
  EXPECT_EQ(Document::open(office(), file).read("A1").value, 2);
  EXPECT_THAT(namesIn(folder.path()), ElementsAre("season.ods"));
  EXPECT_EQ(fs::status(file).permissions(),
            fs::perms::owner_read | fs::perms::owner_write | fs::perms::group_read);
}

TEST_F(ReplaceFile, ANameThatLeadsElsewhereKeepsLeadingThere) {
  const driver::TemporaryFolder other("wetspell-test-");
  const fs::path link = other.path() / "season.ods";
  fs::create_symlink(file, link);
  replaceFile(document, link);
  EXPECT_TRUE(fs::is_symlink(link));
  EXPECT_EQ(Document::open(office(), file).read("A1").value, 2);
}

TEST_F(ReplaceFile, AFileThatMayOnlyBeReadStays) {
  fs::permissions(file, fs::perms::owner_read);
  EXPECT_THAT(refusal(document, file), HasSubstr("it may only be read"));
  expectAsItWas();
}

TEST_F(ReplaceFile, AFolderThatIsGoneIsNamed) {
  EXPECT_THAT(refusal(document, folder.path() / "gone" / "season.ods"), HasSubstr("was not written"));
  expectAsItWas();
}

/// For a while nobody of importance: root may write to anything.
class WithoutPrivileges {
public:
  WithoutPrivileges() {
    constexpr uid_t nobody = 65534;
    if (was_ == 0 && seteuid(nobody) != 0)
      ADD_FAILURE() << "root could not give up its rights";
  }
  ~WithoutPrivileges() { EXPECT_EQ(seteuid(was_), 0); }
  WithoutPrivileges(const WithoutPrivileges&) = delete;
  WithoutPrivileges& operator=(const WithoutPrivileges&) = delete;

private:
  uid_t was_ = geteuid();
};

TEST_F(ReplaceFile, WithoutTheRightToWriteTheFileStays) {
  fs::permissions(folder.path(), fs::perms::owner_read | fs::perms::owner_exec | fs::perms::others_read |
                                     fs::perms::others_exec);
  std::string words;
  {
    const WithoutPrivileges nobody;
    words = refusal(document, file);
  }
  fs::permissions(folder.path(), fs::perms::owner_all);
  EXPECT_THAT(words, AllOf(HasSubstr("nothing can be written in the folder"), HasSubstr("ermission")));
  expectAsItWas();
}

TEST_F(ReplaceFile, WithoutRoomOnTheDiskTheFileStays) {
  if (geteuid() != 0) {
    EXPECT_EQ(test::run_again_as_root(), 0);
    return;
  }
  const driver::TemporaryFolder mountedAt("wetspell-test-");
  const test::SmallDisk disk(mountedAt.path(), std::size_t{64} << 10U);
  ASSERT_TRUE(disk.mounted());
  const fs::path season = mountedAt.path() / "season.ods";
  fs::copy_file(file, season);
  for (int row = 1; row <= 4000; ++row) // what does not pack well
    document.setValue("B" + std::to_string(row), 1.0 / row);
  EXPECT_THAT(refusal(document, season), HasSubstr("no room on the disk"));
  EXPECT_TRUE(bytesOf(season) == before);
  EXPECT_THAT(namesIn(mountedAt.path()), ElementsAre("season.ods"));
}

TEST_F(ReplaceFile, AnOfficeThatIsKilledLeavesAWholeFile) {
  driver::OfficeOptions options = withoutExtension();
  options.lifeLimit = std::chrono::seconds(6);
  Office office(options);
  const Document season = Document::open(office, file);
  std::string words;
  std::string last = before;
  for (int i = 1; words.empty() && i < 10'000; ++i) {
    try {
      const css::uno::Reference<css::sheet::XArrayFormulaRange> rows(season.range("A2:A20000"),
                                                                     css::uno::UNO_QUERY_THROW);
      rows->setArrayFormula(addin::toOffice("=SIN(ROW(A2:A20000)*" + std::to_string(i) + ")"));
      replaceFile(season, file);
      last = bytesOf(file);
    } catch (const Failure& failure) {
      words = failure.what();
    } catch (const css::uno::Exception&) { // it was killed between two files, while cells were written
      words = office.failed("no cells").what();
    }
  }
  EXPECT_THAT(words, HasSubstr("longer than 6 s"));
  EXPECT_TRUE(bytesOf(file) == last) << "what was stored whole last";
  EXPECT_THAT(namesIn(folder.path()), ElementsAre("season.ods"));
  EXPECT_GT(Document::open(host::office(), file).read("A1").value, 0);
}

} // namespace
} // namespace wetspell::host
