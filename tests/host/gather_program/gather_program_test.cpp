// Whatever happens while `wetspell gather` runs, the season on the disk is whole: what it was, or everything
// that came back.
#include "command/program.hpp"
#include "small_disk.hpp"
#include "templates/workbook.hpp"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include <chrono>
#include <sstream>
#include <thread>

#include <csignal>
#include <unistd.h>

namespace wetspell::test {
namespace {

namespace fs = std::filesystem;
using ::testing::AllOf;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::Not;

constexpr int files = 40;

std::string season() {
  workbook::WorkbookContent content;
  content.tables = {{TableKind::pools, {Field::pool_code}, {{Cell::of_text("B01")}}},
                    {TableKind::people, {Field::person_code}, {{Cell::of_text("RW")}}}};
  return workbook::season_workbook(content);
}

std::vector<std::string> names_in(const fs::path& folder) {
  std::vector<std::string> names;
  for (const auto& entry : fs::directory_iterator(folder))
    names.push_back(entry.path().filename().string());
  return names;
}

class GatherProgram : public ::testing::Test {
protected:
  GatherProgram() {
    fs::create_directory(folder / "came");
    fs::create_directory(folder / "season");
    write(file, season());
    for (int i = 0; i < files; ++i)
      write(folder / "came" / (std::to_string(i) + ".csv"), "Pool,Date,Person,Depth\nB01,2026-04-" +
                                                                std::to_string(10 + i % 20) + ",V" +
                                                                std::to_string(i) + ",12\n");
  }
  [[nodiscard]] Said gather(const fs::path& into) const {
    return run({"gather", (folder / "came").string(), "--into", into.string(), "--format", "json"});
  }
  void expect_as_it_was() const {
    EXPECT_TRUE(text_of(file) == season()) << "the season on the disk has changed";
    EXPECT_THAT(names_in(file.parent_path()), ElementsAre("season.fods")) << "something is left beside it";
  }

  Folder folder;
  fs::path file = folder / "season/season.fods";
};

TEST_F(GatherProgram, WritesTheSeasonOnceAndThenNoMore) {
  const Said first = gather(file);
  EXPECT_EQ(first.exit, 0) << first.err;
  EXPECT_EQ(nlohmann::json::parse(first.out).at("added").at("visits"), files);
  const std::string after = text_of(file);
  EXPECT_FALSE(after == season());
  const Said again = gather(file);
  EXPECT_EQ(again.exit, 0) << again.err;
  EXPECT_EQ(nlohmann::json::parse(again.out).at("changed"), false);
  EXPECT_TRUE(text_of(file) == after);
  EXPECT_THAT(names_in(file.parent_path()), ElementsAre("season.fods"));
}

TEST_F(GatherProgram, SaysNoInPlainWords) {
  const auto refused = [&](const fs::path& from) {
    const Said said = run({"gather", from.string(), "--into", file.string()});
    EXPECT_EQ(said.exit, 2);
    EXPECT_THAT(said.err, Not(HasSubstr("exception")));
    expect_as_it_was();
    return said.err;
  };
  EXPECT_THAT(refused(folder / "nowhere"),
              HasSubstr("wetspell-office: There is no folder " + (folder / "nowhere").string() + "."));
  EXPECT_THAT(refused(folder / "came/0.csv"),
              HasSubstr("0.csv is a file: name the folder in which it lies."));
}

TEST_F(GatherProgram, ASeasonThatMayOnlyBeReadStays) {
  fs::permissions(file, fs::perms::owner_read);
  const Said said = gather(file);
  EXPECT_EQ(said.exit, 2);
  EXPECT_THAT(said.err, HasSubstr("read"));
  expect_as_it_was();
}

TEST_F(GatherProgram, WithoutRoomOnTheDiskTheSeasonStays) {
  if (geteuid() != 0) {
    EXPECT_EQ(run_again_as_root(), 0);
    return;
  }
  const fs::path small = folder / "small";
  fs::create_directory(small);
  const SmallDisk disk(small, season().size() + 100'000); // no room for a second one
  ASSERT_TRUE(disk.mounted());
  fs::copy_file(file, small / "season.fods");
  const Said said = gather(small / "season.fods");
  EXPECT_EQ(said.exit, 2) << said.out;
  EXPECT_THAT(said.err, AllOf(HasSubstr("no room on the disk"), HasSubstr("as it was")));
  EXPECT_TRUE(text_of(small / "season.fods") == season());
  EXPECT_THAT(names_in(small), ElementsAre("season.fods"));
}

/// Whether the process comes from the other one.
bool comes_from(int process, int ancestor) {
  while (process > 1 && process != ancestor) {
    std::ifstream file("/proc/" + std::to_string(process) + "/stat");
    const std::string stat{std::istreambuf_iterator<char>(file), {}};
    std::istringstream behind_name(stat.substr(std::min(stat.size(), stat.rfind(')') + 1)));
    std::string state;
    process = 0;
    behind_name >> state >> process;
  }
  return process == ancestor;
}

/// Kills the office that a program started; gives whether there was one.
bool kill_office_of(int program) {
  bool killed = false;
  for (const auto& entry : fs::directory_iterator("/proc")) {
    const std::string name = entry.path().filename().string();
    if (name.find_first_not_of("0123456789") != std::string::npos)
      continue;
    if (text_of(entry.path() / "comm").starts_with("soffice.bin") && comes_from(std::stoi(name), program))
      killed = kill(std::stoi(name), SIGKILL) == 0 || killed;
  }
  return killed;
}

TEST_F(GatherProgram, AnOfficeThatIsKilledWhileItWritesLeavesTheSeasonWhole) {
  namespace bp = boost::process;
  const Folder out;
  bp::child program(WETSPELL_OFFICE_PROGRAM, "gather", file.string(), (folder / "came").string(), "--oxt",
                    WETSPELL_OXT, bp::std_out > bp::null, bp::std_err > (out / "err").string());
  // The new season is begun in a folder of its own beside the old one.
  while (program.running() && names_in(file.parent_path()).size() == 1)
    std::this_thread::sleep_for(std::chrono::milliseconds(1));
  EXPECT_TRUE(kill_office_of(program.id())) << "nothing was tried";
  program.wait();
  EXPECT_EQ(program.exit_code(), 2);
  EXPECT_THAT(text_of(out / "err"), HasSubstr("as it was"));
  expect_as_it_was();
}

TEST_F(GatherProgram, AnOfficeWhoseTimeIsOverLeavesTheSeasonWhole) {
  const Folder out;
  const int exit = boost::process::system(WETSPELL_OFFICE_PROGRAM, "gather", file.string(),
                                          (folder / "came").string(), "--oxt", WETSPELL_OXT, "--limit", "0",
                                          boost::process::std_out > boost::process::null,
                                          boost::process::std_err > (out / "err").string());
  EXPECT_EQ(exit, 2);
  expect_as_it_was();
}

TEST_F(GatherProgram, RefusesWhatIsNoSeasonOrNoFolder) {
  EXPECT_EQ(gather(folder / "season/gone.ods").exit, 2);
  write(folder / "season.csv", "Pool,Date,Depth\n");
  const Said csv = gather(folder / "season.csv");
  EXPECT_EQ(csv.exit, 2);
  EXPECT_THAT(csv.err, HasSubstr(".ods"));
  fs::remove_all(folder / "came");
  const Said none = gather(file);
  EXPECT_EQ(none.exit, 2);
  EXPECT_THAT(none.err, HasSubstr("folder"));
  expect_as_it_was();
}

} // namespace
} // namespace wetspell::test
