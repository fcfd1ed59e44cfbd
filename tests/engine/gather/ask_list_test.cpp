// Questions person by person: who is asked, what is not a question, and the text for a mail.
#include "engine/check/fixture.hpp"
#include "engine/check/question_words.hpp"
#include "gather/ask_table.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace wetspell {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

struct Checked {
  Season season;
  CheckReport report;
};

Checked checked() {
  std::vector<Table> sheets;
  sheets.push_back(test::fixture_table(TableKind::pools, {{"pool"}, {"B01"}, {"B02"}}));
  sheets.push_back(
      test::fixture_table(TableKind::people, {{"person", "name"}, {"RW", "Rowan West"}, {"AL", "Ada Lund"}}));
  sheets.push_back(
      test::fixture_table(TableKind::visits, {{"pool", "date", "person", "water", "depth", "fill"},
                                              {"B01", "2026-04-18", "AL", "no standing water", "20", ""},
                                              {"B02", "2026-04-19", "RW", "standing water", "20", "140"},
                                              {"B02", "2026-05-19", "ZZ", "standing water", "12", ""},
                                              {"B01", "2026-05-19", "", "no standing water", "30", ""}}));
  auto season = read_season(std::move(sheets), test::fixture_today());
  EXPECT_TRUE(season);
  Checked both{std::move(season).value(), {}};
  both.report = check(both.season);
  return both;
}

const AskList* list_of(const std::vector<AskList>& lists, std::string_view code) {
  for (const AskList& list : lists)
    if (list.code == code)
      return &list;
  return nullptr;
}

TEST(AskList, EveryoneIsAskedAboutTheirOwnRows) {
  const Checked both = checked();
  const auto lists = ask_lists(both.season, both.report);
  ASSERT_GE(lists.size(), 3u);
  EXPECT_EQ(lists[0].code, "RW") << "in the order of the table of people";
  EXPECT_EQ(lists[1].code, "AL");
  EXPECT_EQ(lists.back().code, "") << "last what has no person";
  ASSERT_NE(list_of(lists, "ZZ"), nullptr) << "a code nobody knows is somebody all the same";
  for (const Question& question : lists[1].questions) {
    EXPECT_EQ(question.pool, "B01");
    EXPECT_EQ(question.day, "2026-04-18");
  }
}

TEST(AskList, AnsweredFindingsAndNotesAreNoQuestions) {
  Checked both = checked();
  std::size_t questions = 0;
  for (const AskList& list : ask_lists(both.season, both.report))
    questions += list.questions.size();
  EXPECT_EQ(questions, both.report.open_fix + both.report.open_ask);
  for (Finding& finding : both.report.findings)
    finding.settled = true;
  EXPECT_TRUE(ask_lists(both.season, both.report).empty());
}

TEST(AskList, TheTextSaysPoolDateWhatWasWrittenAndWhatIsDoubtful) {
  const Checked both = checked();
  const auto lists = ask_lists(both.season, both.report);
  const std::string text = ask_text(both.season, *list_of(lists, "RW"));
  EXPECT_THAT(text, HasSubstr("Hello Rowan West,"));
  EXPECT_THAT(text, HasSubstr("Pool B02, 2026-04-19, Full: 140"));
  EXPECT_THAT(text, HasSubstr("Your answer:"));
  EXPECT_THAT(text, Not(HasSubstr("B01, 2026-04-18")));
  EXPECT_THAT(ask_text(both.season, lists.back()), HasSubstr("To whoever was there,"));
}

TEST(AskList, QuestionsSpeakToWhoeverWasThere) {
  const Checked both = checked();
  const auto lists = ask_lists(both.season, both.report);
  const AskList* full = list_of(lists, "RW");
  ASSERT_NE(full, nullptr);
  ASSERT_EQ(full->questions.size(), 1u);
  EXPECT_EQ(full->questions[0].asked, rule_named("overfull")->question);
  EXPECT_THAT(ask_text(both.season, *full), HasSubstr(full->questions[0].asked));
  for (const AskList& list : lists)
    for (const Question& question : list.questions)
      EXPECT_EQ(test::wrong_in_question(question.asked), "") << question.asked;
}

TEST(AskList, AnotherVisitIsToldByItsTimeToThePersonAndByItsRowToTheCoordinator) {
  std::vector<Table> sheets;
  sheets.push_back(test::fixture_table(TableKind::people, {{"person", "name"}, {"RW", "Rowan West"}}));
  sheets.push_back(test::fixture_table(TableKind::visits, {{"pool", "date", "person", "start", "end"},
                                                           {"B01", "2026-04-18", "RW", "9:40", "10:00"},
                                                           {"B01", "2026-04-18", "RW", "14:05", "14:30"},
                                                           {"B01", "2026-04-19", "RW", "14:05", "14:30"},
                                                           {"B02", "2026-04-19", "RW", "14:10", "14:40"}}));
  auto season = read_season(std::move(sheets), test::fixture_today());
  ASSERT_TRUE(season);
  const CheckReport report = check(season.value());
  const auto advice = [&](std::string_view rule, std::size_t row) {
    for (const Finding& finding : report.findings)
      if (finding.rule->name == rule && finding.place.row == row)
        return finding.advice;
    return std::string();
  };
  EXPECT_THAT(advice("double-visit", 2), HasSubstr("at row 3;"));
  EXPECT_THAT(advice("double-visit", 3), HasSubstr("at row 2;"));
  EXPECT_THAT(advice("two-places-at-once", 5), HasSubstr("in row 4."));
  const auto lists = ask_lists(season.value(), report);
  ASSERT_EQ(lists.size(), 1u);
  const std::string text = ask_text(season.value(), lists[0]);
  EXPECT_THAT(text,
              HasSubstr("visited pool B01 on 2026-04-18 more than once; another visit began at 14:05."));
  EXPECT_THAT(text, HasSubstr("another visit began at 09:40."));
  EXPECT_THAT(text, HasSubstr("at pool B02 from 14:10 to 14:40, and at pool B01 from 14:05 to 14:30"));
  EXPECT_THAT(text, Not(HasSubstr("row")));
}

TEST(AskList, AWordThatIsNotKnownIsAskedForWithTheWordsThatAre) {
  std::vector<Table> sheets;
  sheets.push_back(test::fixture_table(TableKind::visits, {{"pool", "date", "person", "water", "depth"},
                                                           {"B01", "2026-04-18", "AL", "soggy", "20"}}));
  auto season = read_season(std::move(sheets), test::fixture_today());
  ASSERT_TRUE(season);
  const auto lists = ask_lists(season.value(), check(season.value()));
  ASSERT_EQ(lists.size(), 1u);
  ASSERT_EQ(lists[0].questions.size(), 1u);
  EXPECT_THAT(lists[0].questions[0].asked,
              ::testing::AllOf(HasSubstr("Which of these is meant: "), HasSubstr("standing water")));
}

TEST(AskList, ATableHoldsARowForEveryQuestionAndALetterForEveryPerson) {
  const Checked both = checked();
  const auto lists = ask_lists(both.season, both.report);
  const Table table = ask_table(both.season, lists, Place{"Ask list", 1, 0});
  ASSERT_EQ(table.columns(), ask_columns);
  EXPECT_EQ(table.at(0, AskColumn::person), Cell::of_text("Person"));
  std::size_t row = 1;
  for (const AskList& list : lists) {
    EXPECT_EQ(table.at(row, AskColumn::letter), Cell::of_text(ask_text(both.season, list)));
    for (std::size_t i = 0; i < list.questions.size(); ++i, ++row) {
      EXPECT_EQ(table.at(row, AskColumn::person),
                Cell::of_text(list.code.empty() ? "nobody is named" : list.code));
      EXPECT_EQ(table.at(row, AskColumn::what), Cell::of_text(list.questions[i].what));
      EXPECT_EQ(table.at(row, AskColumn::doubt), Cell::of_text(list.questions[i].doubt));
      EXPECT_EQ(table.at(row, AskColumn::question), Cell::of_text(list.questions[i].asked));
      EXPECT_EQ(table.at(row, AskColumn::letter).empty(), i > 0) << "once a person";
    }
  }
  EXPECT_EQ(table.rows(), row);
  EXPECT_EQ(table.at(1, AskColumn::person), Cell::of_text("RW"));
  EXPECT_EQ(table.at(1, AskColumn::name), Cell::of_text("Rowan West"));
  EXPECT_EQ(table.at(row - 1, AskColumn::person), Cell::of_text("nobody is named"));
}

} // namespace
} // namespace wetspell
