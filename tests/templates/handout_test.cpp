// The workbook of a volunteer as it is written, before any office has seen it.
#include "templates/handout.hpp"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <regex>

namespace {

using namespace wetspell;
using namespace wetspell::workbook;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::Not;

Table table(std::string_view name, const std::vector<std::vector<std::string>>& rows) {
  Table cells(Place{std::string(name), 1, 0}, rows.size(), rows.front().size());
  for (std::size_t r = 0; r < rows.size(); ++r)
    for (std::size_t c = 0; c < rows[r].size(); ++c)
      cells.at(r, c) = rows[r][c].empty() ? Cell{} : Cell::of_text(rows[r][c]);
  return cells;
}

/// Two pools and three people; RW and the second person AL have been to P1 alone.
Season season(const std::string& system = "US customary") {
  std::vector<Table> sheets;
  sheets.push_back(table("settings", {{"Setting", "Value"},
                                      {"Programme", "Pools & friends"},
                                      {"Season (year)", "2026"},
                                      {"Unit system", system}}));
  sheets.push_back(table("pools", {{"Pool code", "Pool name", "Locality", "Owner", "Permission"},
                                   {"P1", "Split <Rock>", "North lot", "a neighbour", "yes"},
                                   {"P2", "Far End", "South lot", "a school", "yes"}}));
  sheets.push_back(table("people", {{"Person code", "Name", "Counts in", "Taped course", "Run 1", "Run 2"},
                                    {"RW", "Rosa \"R\" Winter", "paces", "100 ft", "20", "20"},
                                    {"AL", "Alan", "", "", "", ""},
                                    {"NN", "Nobody Yet", "", "", "", ""}}));
  sheets.push_back(
      table("visits",
            {{"Pool", "Date", "Person", "Second person", "Water", "Temperature 1", "Temperature 2",
              "Temperature 3", "Mean as noted", "Depth", "Length", "Width", "Size by", "Paced by"},
             {"P1", "2026-04-10", "RW", "AL", "no standing water", "", "", "", "", "20", "", "", "", ""}}));
  auto read = read_season(std::move(sheets), 46200);
  EXPECT_TRUE(read.has_value()) << read.error().text;
  return std::move(read).value();
}

const Question asked{
    "k-1", Level::ask, Place{}, "P1", "2026-04-10", "Depth", "20", "Dry, yet 20 in deep.", "Read it again."};

std::string handout(const Season& of, std::size_t person = 0, const std::vector<Question>& questions = {}) {
  return handout_workbook(of, person, questions);
}

std::string sheet(const std::string& file, std::string_view name) {
  const auto start = file.find(fmt::format("<table:table table:name=\"{}\"", name));
  if (start == std::string::npos)
    return {};
  return file.substr(start, file.find("</table:table>", start) - start);
}

std::string entry(const std::string& file, std::string_view name) {
  const auto start = file.find(fmt::format("table:name=\"{}\"", name));
  if (start == std::string::npos)
    return {};
  return file.substr(start, file.find("</table:content-validation>", start) - start);
}

TEST(Handout, IsTheSameBytesEveryTime) {
  EXPECT_EQ(handout(season()), handout(season()));
}

TEST(Handout, HasNoFunctionOfTheExtensionAndNoMacro) {
  const std::string file = handout(season(), 0, {asked});
  EXPECT_THAT(file, HasSubstr("table:formula=")) << "there is something to look through";
  EXPECT_THAT(file, Not(HasSubstr("ORG.WETSPELL")));
  EXPECT_THAT(file, Not(HasSubstr("ORG.OPENOFFICE"))) << "no function of one program alone";
  EXPECT_THAT(file, Not(HasSubstr("script:")));
  // What every spreadsheet program knows.
  const std::regex function("([A-Z][A-Z.]+)\\(");
  std::set<std::string> used;
  const std::regex formula("table:formula=\"of:=([^\"]*)\"");
  for (auto each = std::sregex_iterator(file.begin(), file.end(), formula); each != std::sregex_iterator();
       ++each) {
    const std::string text = (*each)[1];
    for (auto name = std::sregex_iterator(text.begin(), text.end(), function); name != std::sregex_iterator();
         ++name)
      used.insert((*name)[1]);
  }
  const std::set<std::string> plain{"IF",    "COUNTA",  "COUNT", "TRIM",  "ISNUMBER", "TODAY",
                                    "YEAR",  "OR",      "AND",   "MAX",   "MIN",      "NOT",
                                    "ROUND", "AVERAGE", "PI",    "FALSE", "SUM"};
  for (const std::string& name : used)
    EXPECT_TRUE(plain.contains(name)) << name;
  EXPECT_GE(used.size(), 10u);
}

TEST(Handout, HasTheHeadingsOfTheCatalogueWithTheUnitsOfTheSeason) {
  const std::string visits = sheet(handout(season()), "Visits");
  for (const char* heading : {"Pool", "Date", "Person", "Water", "Temperature 1 (°F)", "Depth (in)",
                              "Length (ft)", "Width (ft)", "Size by"})
    EXPECT_THAT(visits, HasSubstr(fmt::format("<text:p>{}</text:p>", heading)));
  const std::string metric = sheet(handout(season("metric")), "Visits");
  for (const char* heading : {"Temperature 1 (°C)", "Depth (cm)", "Length (m)"})
    EXPECT_THAT(metric, HasSubstr(fmt::format("<text:p>{}</text:p>", heading)));
}

TEST(Handout, HasOnlyTheColumnsThatAVolunteerFills) {
  const std::string visits = sheet(handout(season()), "Visits");
  EXPECT_THAT(visits, Not(HasSubstr("<text:p>Inlet</text:p>"))) << "this season has no such column";
  EXPECT_THAT(visits, Not(HasSubstr("Mean as noted")));
  EXPECT_THAT(visits, Not(HasSubstr("Paced by")));
}

TEST(Handout, OffersThePoolsThatThePersonHasBeenTo) {
  const Season of = season();
  EXPECT_THAT(handout_pools(of, 0), ElementsAre(0u));
  EXPECT_THAT(handout_pools(of, 1), ElementsAre(0u)) << "as the second person";
  EXPECT_THAT(handout_pools(of, 2), ElementsAre(0u, 1u)) << "been to none: all of them";
  const std::string you = sheet(handout(of), "You");
  EXPECT_THAT(you, HasSubstr("<text:p>P1</text:p>"));
  EXPECT_THAT(you, HasSubstr("<text:p>Split &lt;Rock&gt;</text:p>"));
  EXPECT_THAT(you, Not(HasSubstr("<text:p>P2</text:p>")));
  EXPECT_THAT(entry(handout(of), "entry-visits-pool"), HasSubstr("in-list([$You.$A$9:.$A$9])"));
  EXPECT_THAT(entry(handout(of, 2), "entry-visits-pool"), HasSubstr("in-list([$You.$A$9:.$A$10])"));
}

TEST(Handout, KeepsToItselfWhatIsNobodyElsesBusiness) {
  const std::string file = handout(season());
  EXPECT_THAT(file, Not(HasSubstr("a neighbour"))) << "owners";
  EXPECT_THAT(file, Not(HasSubstr("Nobody Yet"))) << "names of others";
  EXPECT_THAT(sheet(file, "Words"), HasSubstr("<text:p>NN</text:p>")) << "their codes are needed";
}

TEST(Handout, HasThePersonAndTheirPaceInPlainNumbers) {
  const std::string file = handout(season());
  EXPECT_THAT(file, HasSubstr("For Rosa \"R\" Winter · Pools &amp; friends · season 2026"));
  const std::string you = sheet(file, "You");
  EXPECT_THAT(you, HasSubstr("office:value=\"100\"")) << "the course of 100 ft";
  EXPECT_THAT(you, HasSubstr("<text:p>Taped course (ft)</text:p>"));
  EXPECT_THAT(sheet(file, "Read first"), HasSubstr("5 ft, from 2 walks"));
  EXPECT_THAT(sheet(handout(season("metric")), "You"), HasSubstr("office:value=\"30.48\""));
  EXPECT_THAT(sheet(handout(season(), 1), "Read first"), HasSubstr("Not known yet."));
}

TEST(Handout, PutsThePersonInByAFormulaSoThatAnEmptyRowStaysEmpty) {
  EXPECT_THAT(
      sheet(handout(season()), "Visits"),
      HasSubstr("table:formula=\"of:=IF(COUNTA([.B4:.C4];[.E4:.M4])=0;&quot;&quot;;&quot;RW&quot;)\""));
}

TEST(Handout, KeepsCodesAsTexts) {
  const std::string visits = sheet(handout(season()), "Visits");
  EXPECT_THAT(visits, HasSubstr("<table:table-cell table:style-name=\"Pool-typed-code\" "
                                "table:content-validation-name=\"entry-visits-pool\"/>"));
}

TEST(Handout, TakesTheLimitsOfTheSeason) {
  Season of = season();
  const std::string usual = entry(handout(of), "entry-visits-depth");
  EXPECT_THAT(usual, HasSubstr("&lt;=196.8")) << "5 m in inches";
  of.limits.si[static_cast<std::size_t>(Limit::depth_most)] = 2.54;
  EXPECT_THAT(entry(handout(of), "entry-visits-depth"), HasSubstr("&lt;=100)"));
  EXPECT_THAT(sheet(handout(of), "Visits"), HasSubstr("Depth is more than the limit of 100 in: read again?"));
}

TEST(Handout, AsksItsQuestionsUnderTheKeysOfTheFindings) {
  const std::string questions = sheet(handout(season(), 0, {asked}), "Questions");
  for (const char* text : {"Key", "Pool", "Date", "What", "Written", "Doubt", "Question", "Answer", "k-1",
                           "P1", "2026-04-10", "Depth", "20", "Dry, yet 20 in deep.", "Read it again."})
    EXPECT_THAT(questions, HasSubstr(fmt::format("<text:p>{}</text:p>", text)));
  EXPECT_THAT(questions, HasSubstr("table:visibility=\"collapse\"")) << "the key is for Wetspell";
  EXPECT_THAT(sheet(handout(season()), "Questions"), HasSubstr("Nothing is asked of you"));
}

TEST(Handout, AsksNobodyToAsk) {
  const Season of = season();
  const auto lists = ask_lists(of, check(of));
  const std::span<const Question> own = questions_to(lists, 0);
  ASSERT_FALSE(own.empty());
  const std::string questions = sheet(handout_workbook(of, 0, own), "Questions");
  EXPECT_THAT(questions, HasSubstr(fmt::format("<text:p>{}</text:p>", own.front().asked)));
  EXPECT_THAT(questions, Not(HasSubstr("<text:p>Ask ")));
}

TEST(Handout, LetsAnyAnswerBeTyped) {
  const std::string answer = entry(handout(season(), 0, {asked}), "entry-answer");
  EXPECT_THAT(answer, HasSubstr("right as it is"));
  EXPECT_THAT(answer, HasSubstr("<table:error-message table:display=\"false\"/>"));
}

TEST(Handout, WarnsOfWhatIsDangerousAndSaysWhatItIsNot) {
  const std::string page = sheet(handout(season()), "Read first");
  for (const char* words :
       {"deeper than 36 in", "Cold water", "Thin ice", "Disease", "let them dry",
        "only where licensed and needed", "owner has agreed", "Local rules", "legal wetland determination"})
    EXPECT_THAT(page, HasSubstr(words));
  EXPECT_THAT(sheet(handout(season("metric")), "Read first"), HasSubstr("deeper than 91.4 cm"));
}

} // namespace
