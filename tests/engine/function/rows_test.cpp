// Functions over rows keep the tables of their last call: whatever was asked before, they answer as if
// nothing had been.
#include "function/function.hpp"

#include "check/check.hpp"
#include "season/season.hpp"

#include <gtest/gtest.h>

#include <charconv>

namespace wetspell::test {

namespace {

using Lines = std::vector<std::string_view>;

/// "Pool|Depth": cells with a bar between them; a whole number is one, everything else is text.
std::vector<Cell> cells_of(std::string_view line) {
  std::vector<Cell> cells;
  for (std::string_view rest = line;;) {
    const std::size_t bar = rest.find('|');
    const std::string_view part = rest.substr(0, bar);
    int number = 0;
    const auto [end, error] = std::from_chars(part.data(), part.data() + part.size(), number);
    const bool whole = error == std::errc{} && end == part.data() + part.size();
    cells.push_back(whole ? Cell::of_number(number) : Cell::of_text(std::string(part)));
    if (bar == std::string_view::npos)
      return cells;
    rest.remove_prefix(bar + 1);
  }
}

Argument block(const Lines& lines) {
  Argument argument;
  argument.given = true;
  argument.rows = lines.size();
  for (const std::string_view line : lines) {
    const auto cells = cells_of(line);
    argument.columns = cells.size();
    argument.cells.insert(argument.cells.end(), cells.begin(), cells.end());
  }
  return argument;
}

Table table(const std::string& sheet, const std::vector<const Argument*>& parts) {
  std::size_t rows = 0;
  for (const Argument* part : parts)
    rows += part->rows;
  Table table({.sheet = sheet}, rows, parts.front()->columns);
  std::size_t at = 0;
  for (const Argument* part : parts)
    for (const Cell& cell : part->cells) {
      table.at(at / table.columns(), at % table.columns()) = cell;
      ++at;
    }
  return table;
}

/// The answers worked out from a season that is read for this alone.
std::vector<std::string> afresh(const std::vector<Argument>& arguments) {
  std::vector<Table> sheets{table("Visits", {&arguments[0], &arguments[1]})};
  for (std::size_t i = 2; i < arguments.size(); ++i)
    sheets.push_back(table("table " + std::to_string(i - 1), {&arguments[i]}));
  const auto season = read_season(std::move(sheets), 2958465);
  std::vector<std::string> answers(arguments[1].rows);
  const SeasonView view(season.value());
  for (std::uint32_t i = 0; i < season.value().visits.size(); ++i)
    answers[view.visit(i).row - 1] = doubts_in_words(view, i);
  return answers;
}

std::vector<std::string> asked(const std::vector<Argument>& arguments) {
  const auto value = run(*function_named("POOL.DOUBTS"), arguments);
  std::vector<std::string> answers;
  for (const Cell& cell : value.value().cells)
    answers.push_back(to_text(cell));
  return answers;
}

const Argument headings =
    block({"Pool|Date|Person|Water|Depth|Depth class|Length|Width|Length found by|Notes"});
const std::vector<Lines> rows{
    {"B07|2026-04-18|KL|standing water|25|over 24 to 36 in|20|10|tape|"},
    {"B7|2026-04-18|LK|standing water|25|no standing water|10|20|tape|"},
    {"||||||||"},
    {"B07|2026-04-18|RW|none|25||12 paces|30 paces|paces|a note"},
    {"B07|2026-04-18|RW|standing water|90||12|30|paces|"},
    {"B07|3/4/2026|RW|standing water|90 cm||12|30|paces|", "B12|2026-04-18|KL|standing water|9||9|9|tape|"},
    {"||||cm||m|m||", "B07|2026-04-18|KL|standing water|64||6|3|tape|"}, // units below the headings
    {"B07|Date|KL|Depth|64||6|3|tape|"},                                 // half a row of headings
    {"Pool|Date|Person|Water|Depth (cm)|Depth class|Length|Width|Length found by|Notes",
     "B07|2026-04-18|KL|standing water|64||6|3|tape|"},
    {"Unit system|metric|KL|||||||", "Depths in|cm|KL|||||||",
     "B07|2026-04-18|KL|standing water|64||6|3|tape|"},
};
const Argument pools = block({"Pool code|Pool name|Deepest ever", "B07|Owl hollow|30", "B12|Long marsh|20"});
const Argument renamed = block({"Pool code|Pool name|Deepest ever", "B7|Owl hollow|30", "B12|Long marsh|20"});
const Argument shallower =
    block({"Pool code|Pool name|Deepest ever", "B07|Owl hollow|12", "B12|Long marsh|20"});
const Argument people = block({"Person code|Name|Counts in|Taped course|Run 1|Run 2",
                               "KL|Kit Low|paces|100|19|20", "RW|Ro Wend|steps|100|40|41"});
const Argument metric = block({"Setting|Value", "Unit system|metric"});
const std::vector<std::vector<Argument>> tables{
    {pools, people}, {renamed, people}, {pools, people, metric}, {shallower, people}, {pools}, {people}, {},
    {people, pools}, {metric},
};

std::vector<Argument> call(const Lines& lines, const std::vector<Argument>& beside) {
  std::vector<Argument> arguments{headings, block(lines)};
  arguments[1].columns = headings.columns;
  arguments[1].cells.resize(lines.size() * headings.columns);
  arguments.insert(arguments.end(), beside.begin(), beside.end());
  return arguments;
}

TEST(Rows, are_answered_as_if_nothing_had_been_asked_before) {
  std::size_t said = 0;
  for (const auto& beside : tables)
    for (const Lines& lines : rows) {
      const auto arguments = call(lines, beside);
      const auto answers = asked(arguments);
      EXPECT_EQ(answers, afresh(arguments)) << lines.front();
      for (const std::string& answer : answers)
        said += !answer.empty();
    }
  EXPECT_GT(said, 30u) << "answers without a word would prove nothing";
  for (const Lines& lines : rows) // the tables changing between any two rows
    for (const auto& beside : tables)
      EXPECT_EQ(asked(call(lines, beside)), afresh(call(lines, beside))) << lines.front();
}

TEST(Rows, follow_a_table_in_which_one_cell_changed) {
  const Lines deep{"B07|2026-04-18|KL|standing water|25||20|10|tape|"};
  EXPECT_EQ(asked(call(deep, {pools, people})), std::vector<std::string>{""});
  EXPECT_NE(asked(call(deep, {shallower, people})), std::vector<std::string>{""});
  EXPECT_EQ(asked(call(deep, {pools, people})), std::vector<std::string>{""});
}

TEST(Rows, are_refused_as_before_when_a_table_cannot_be_used) {
  const Lines good{"B07|2026-04-18|KL|standing water|25||20|10|tape|"};
  EXPECT_EQ(asked(call(good, {pools, people})), std::vector<std::string>{""});
  auto arguments = call(good, {pools, people, Argument::of(Cell::of_text("furlong"))});
  EXPECT_FALSE(run(*function_named("POOL.DOUBTS"), arguments));
  arguments = call(good, {pools, people});
  arguments[0] = block({"a|b|c|d|e|f|g|h|i|j"});
  const auto value = run(*function_named("POOL.DOUBTS"), arguments);
  ASSERT_FALSE(value);
  EXPECT_EQ(value.error().kind, ProblemKind::not_enough);
  EXPECT_EQ(asked(call(good, {pools, people})), std::vector<std::string>{""});
}

} // namespace

} // namespace wetspell::test
