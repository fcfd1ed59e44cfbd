#include "command/program.hpp"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace wetspell::test {
namespace {

using nlohmann::json;

constexpr const char* old_sheet = "Pools of the north woods; spring 2019\n\n"
                                  "Site;Dt;Max depth, cm;Water temp;pH\n"
                                  "B07;1/4/2019;30;6,5;6.1\n"
                                  "B08;16/4/2019;41;7;6.2\n"
                                  "B09;17/4/2019;stick lost;8;6.0\n"
                                  "Total;;71;;\n";

TEST(AuditCommand, SaysAllThatWasFoundAsJson) {
  const Folder folder;
  write(folder / "old.csv", old_sheet);
  const Said said = run({"audit", (folder / "old.csv").string(), "--format", "json"});
  EXPECT_EQ(said.exit, 1) << said.err;
  const json audit = json::parse(said.out);
  EXPECT_EQ(audit["sheet"], "old");
  EXPECT_EQ(audit["table"]["first_row"], 3);
  EXPECT_EQ(audit["table"]["last_row"], 6);
  ASSERT_EQ(audit["headings"].size(), 5u);
  const json depth = audit["headings"][2];
  EXPECT_EQ(depth["column"], "C");
  EXPECT_EQ(depth["heading"], "Max depth, cm");
  EXPECT_EQ(depth["field"], "depth");
  EXPECT_EQ(depth["unit"], "cm");
  EXPECT_GE(depth["confidence"], 0.6);
  EXPECT_FALSE(depth["reason"].get<std::string>().empty());
  EXPECT_EQ(audit["headings"][3]["unit"], "°C");
  EXPECT_TRUE(audit["headings"][4]["field"].is_null());
  EXPECT_EQ(audit["rows"]["usable"].get<int>() + audit["rows"]["after_answers"].get<int>(), 3);
  EXPECT_EQ(audit["rows"]["unusable"], 0);
  ASSERT_EQ(audit["unread"].size(), 1u);
  EXPECT_EQ(audit["unread"][0]["row"], 6);
  EXPECT_EQ(audit["unread"][0]["column"], "C");
  EXPECT_EQ(audit["unread"][0]["text"], "stick lost");
  EXPECT_FALSE(audit["could_not_run"].empty());
}

TEST(AuditCommand, LeavesTheSourceAloneAndWritesBesideIt) {
  const Folder folder;
  write(folder / "old.csv", old_sheet);
  const Said said = run({"audit", (folder / "old.csv").string(), "--out", (folder / "out").string()});
  EXPECT_EQ(text_of(folder / "old.csv"), old_sheet);
  EXPECT_NE(said.out.find("3 rows in 1 table"), std::string::npos) << said.out;
  for (const char* name :
       {"old-audit.txt", "old-audit.csv", "old-audit.json", "old-headings.csv", "old-tidy-visits.csv"})
    EXPECT_FALSE(text_of(folder / "out" / name).empty()) << name;
  EXPECT_NE(text_of(folder / "out" / "old-tidy-visits.csv").find("old.A4"), std::string::npos);
}

TEST(AuditCommand, NamesWhatARowIs) {
  const Folder folder;
  write(folder / "counts.csv", "Pool,Date,Species,Count\nB07,2019-04-01,wood frog,2\n");
  write(folder / "list.csv", "Pool code,Pool name,Owner\nB07,Alder,Town\n");
  write(folder / "old.csv", old_sheet);
  const auto said = [&](const char* name) { return run({"audit", (folder / name).string()}).out; };
  EXPECT_NE(said("counts.csv").find("a table of life, a row a count ("), std::string::npos);
  EXPECT_NE(said("list.csv").find("a table of pools, a row a pool ("), std::string::npos);
  EXPECT_NE(said("old.csv").find("a table of visits, a row a visit ("), std::string::npos);
}

TEST(AuditCommand, TakesHeadingsAsAPersonCorrectedThem) {
  const Folder folder;
  write(folder / "old.csv", "Pool,Date,Murk\nB07,2019-04-01,20\nB08,2019-04-02,21\n");
  write(folder / "map.csv", "Heading,Field,Unit\nMURK,Visits: Depth,in\n");
  const std::string file = (folder / "old.csv").string();
  const json mapped =
      json::parse(run({"audit", file, "--map", (folder / "map.csv").string(), "--format", "json"}).out);
  EXPECT_EQ(mapped["headings"][2]["field"], "depth");
  EXPECT_EQ(mapped["headings"][2]["unit"], "in");
  EXPECT_EQ(mapped["rows"]["usable"], 2);
  write(folder / "bad.csv", "Heading,Field\nMurk,Shoe size\n");
  const Said refused = run({"audit", file, "--map", (folder / "bad.csv").string()});
  EXPECT_EQ(refused.exit, 2);
  EXPECT_NE(refused.err.find("Shoe size"), std::string::npos);
}

TEST(AuditCommand, MakesFormulasHarmlessWhereverTheyComeOut) {
  const Folder folder;
  write(folder / "old.tsv",
        "Pool\tDate\tDepth (cm)\tNotes\n=A1\t2019-04-01\t@x\t+1+1\n-B\t2019-04-02\t=2+3\t\"\ttab\"\n");
  const Said said =
      run({"audit", (folder / "old.tsv").string(), "--format", "csv", "--out", (folder / "out").string()});
  for (const std::string& csv : {said.out, text_of(folder / "out" / "old-tidy-visits.csv"),
                                 text_of(folder / "out" / "old-headings.csv")}) {
    EXPECT_FALSE(csv.empty());
    for (const char* harmful : {",=", ",+1", ",@", ",-B", ",\"\t", "\n=", "\n+", "\n@", "\n-B", "\n\"="})
      EXPECT_EQ(csv.find(harmful), std::string::npos) << harmful << " in " << csv;
  }
  EXPECT_NE(text_of(folder / "out" / "old-tidy-visits.csv").find("'=A1"), std::string::npos);
}

TEST(AuditCommand, TakesSheetsAsWideAsTheyGetAndTextsAsLong) {
  const Folder folder;
  const auto sheet = [](std::size_t columns, const std::string& words) {
    std::string text = "Pool,Date,Depth (cm)";
    for (std::size_t i = 3; i < columns; ++i)
      text += ",more " + std::to_string(i);
    return text + "\nB07,2019-04-01,30\nB08,2019-04-02," + words + "\n";
  };
  write(folder / "wide.csv", sheet(16'384, "31"));
  EXPECT_EQ(
      json::parse(run({"audit", (folder / "wide.csv").string(), "--format", "json"}).out)["rows"]["usable"],
      2);
  write(folder / "wider.csv", sheet(16'385, "31"));
  const Said wider = run({"audit", (folder / "wider.csv").string()});
  EXPECT_EQ(wider.exit, 2);
  EXPECT_NE(wider.err.find("3 rows of up to 16385 columns are more than can be read"), std::string::npos)
      << wider.err;
  write(folder / "long.csv", sheet(3, std::string(32'767, 'x')));
  EXPECT_EQ(
      json::parse(run({"audit", (folder / "long.csv").string(), "--format", "json"}).out)["unread"].size(),
      1u);
  write(folder / "zeros.csv", std::string(100'000, '\0'));
  EXPECT_NE(run({"audit", (folder / "zeros.csv").string()}).out.find("no table"), std::string::npos);
  write(folder / "zero.csv",
        std::string("Pool,Date,Depth (cm)\nB07,2019-04-01,30\nB08") + '\0' + ",2019-04-02,31\n");
  EXPECT_EQ(
      json::parse(run({"audit", (folder / "zero.csv").string(), "--format", "json"}).out)["rows"]["usable"],
      2);
}

#ifndef WETSPELL_SANITIZED // a sanitizer sets aside more address space than there is memory
TEST(AuditCommand, SaysInWordsThatThereIsTooLittleMemory) {
  const Folder folder;
  std::string text = "Pool,Date,Depth (cm)\n";
  for (int i = 0; i < 200'000; ++i)
    text += "B07,2019-04-01,30\n";
  write(folder / "tall.csv", text);
  write(folder / "small.sh", "ulimit -v 60000; exec \"$1\" audit \"$2\"\n"); // kilobytes
  namespace bp = boost::process;
  EXPECT_EQ(bp::system(bp::search_path("bash"), (folder / "small.sh").string(), WETSPELL_PROGRAM,
                       (folder / "tall.csv").string(), bp::std_out > bp::null,
                       bp::std_err > (folder / "err").string()),
            2);
  EXPECT_EQ(text_of(folder / "err"),
            "wetspell: this needs more memory than there is; give fewer or smaller files.\n");
}
#endif

TEST(AuditCommand, AnswersForEveryFileAndForBytesOfAnyKind) {
  const Folder folder;
  std::string noise;
  for (int i = 0; i < 4000; ++i)
    noise += static_cast<char>((i * 7919 + i / 3) % 256);
  write(folder / "noise.csv", noise);
  write(folder / "old.csv", old_sheet);
  write(folder / "empty.csv", "");
  const Said said = run({"audit", (folder / "noise.csv").string(), (folder / "old.csv").string(),
                         (folder / "empty.csv").string(), "--format", "json"});
  EXPECT_EQ(said.exit, 1) << said.err;
  EXPECT_GE(json::parse(said.out).size(), 3u);
  EXPECT_EQ(run({"audit", (folder / "none.csv").string()}).exit, 2);
  EXPECT_EQ(run({"audit"}).exit, 2);
  EXPECT_EQ(run({"audit", (folder / "old.csv").string(), "--format", "xml"}).exit, 2);
}

} // namespace
} // namespace wetspell::test
