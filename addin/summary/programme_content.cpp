#include "summary/programme_content.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wetspell::addin {

namespace {

constexpr std::size_t most_left_out = 1000;

/// Rows that grow; a Table has a size from the beginning.
class Rows {
public:
  std::size_t add() {
    rows_.emplace_back();
    return rows_.size() - 1;
  }
  void say(std::size_t row, std::size_t column, std::string_view words) {
    if (!words.empty())
      rows_[row][column] = Cell::of_text(words);
  }
  void put(std::size_t row, std::size_t column, Cell cell) { rows_[row][column] = std::move(cell); }
  std::size_t line(std::string_view words) {
    const std::size_t row = add();
    say(row, 0, words);
    return row;
  }
  [[nodiscard]] Table table() const {
    Table all(Place{}, rows_.size(), programme_columns);
    for (std::size_t r = 0; r < rows_.size(); ++r)
      for (std::size_t c = 0; c < programme_columns; ++c)
        all.at(r, c) = rows_[r][c];
    return all;
  }

private:
  std::vector<std::array<Cell, programme_columns>> rows_;
};

std::string counted(std::size_t count, std::string_view one, std::string_view many) {
  return fmt::format("{} {}", count, count == 1 ? one : many);
}

std::vector<std::string> openingWords(const SeasonHistory& history, const SeasonSummary& summary) {
  const Season& season = history.season;
  std::size_t visits = 0;
  std::optional<double> first, last;
  for (const PoolHistory& pool : history.pools)
    for (const CountedVisit& visit : pool.visits) {
      ++visits;
      first = std::min(first.value_or(visit.day), visit.day);
      last = std::max(last.value_or(visit.day), visit.day);
    }
  std::string span;
  if (first)
    span = fmt::format(", from {} to {}", in_words(*first, Figured::date, season.settings),
                       in_words(*last, Figured::date, season.settings));
  const std::string& programme = season.settings.programme;
  std::vector<std::string> words{
      fmt::format("{}{}{}; {} that count, of {}{}.", programme, programme.empty() ? "" : ": ",
                  counted(season.pools.size(), "pool", "pools"), counted(visits, "visit", "visits"),
                  counted(season.visits.size(), "row of visits", "rows of visits"), span)};
  words.push_back(
      summary.left_out.empty()
          ? "Nothing was left out: no finding to fix is open."
          : fmt::format("{} left out of all figures, because an open finding says that it cannot be "
                        "right; the list stands below the figures.",
                        counted(summary.left_out.size(), "reading is", "readings are")));
  words.push_back(
      "From and to: the interval at the level beside it. n: the readings, visits or pools behind the "
      "figure. The charts stand to the right.");
  words.insert(words.end(), summary.remarks.begin(), summary.remarks.end());
  return words;
}

Cell cellOf(double si, Figured figured, const Settings& settings) {
  const double value = shown(si, figured, settings);
  return figured == Figured::date ? Cell::of_date(value) : Cell::of_number(value);
}

bool isWhole(const std::optional<double>& value) {
  return !value || *value == std::floor(*value);
}

void addFigure(Rows& rows, ProgrammeContent& content, const ProgrammeFigure& of, const Settings& settings) {
  const Figure& figure = of.figure;
  const Figured figured = figure.spec->figured;
  const std::size_t row = rows.add();
  content.figures.push_back(
      {row, figured, isWhole(figure.value) && isWhole(figure.low) && isWhole(figure.high)});
  rows.say(row, of_what, full_title(figure));
  rows.say(row, of_group, of.group.empty() ? "all pools" : fmt::format("{}: {}", of.column, of.group));
  if (figured == Figured::words)
    rows.say(row, value, figure.words);
  else if (figure.value)
    rows.put(row, value, cellOf(*figure.value, figured, settings));
  rows.say(row, unit, shown_unit(figured, settings));
  if (figure.low)
    rows.put(row, from, cellOf(*figure.low, figured, settings));
  if (figure.high)
    rows.put(row, to, cellOf(*figure.high, figured, settings));
  constexpr double per_cent = 100;
  if (figure.level > 0)
    rows.put(row, level, Cell::of_number(per_cent * figure.level));
  else if (figure.low || figure.high)
    rows.say(row, level, "certain");
  rows.put(row, n, Cell::of_number(static_cast<double>(figure.n)));
  rows.say(row, note, figure.note);
}

void addLeftOut(Rows& rows, ProgrammeContent& content, const SeasonSummary& summary) {
  content.first_left_out = 0;
  if (summary.left_out.empty())
    return;
  rows.add();
  content.sections.push_back(rows.line("Left out"));
  const std::size_t heading = rows.add();
  content.headings.push_back(heading);
  for (const auto& [column, words] : {std::pair{of_what, "Where"},
                                      {of_group, "Pool"},
                                      {value, "Reading"},
                                      {from, "As typed"},
                                      {note, "Why"}})
    rows.say(heading, column, words);
  content.first_left_out = heading + 1;
  for (std::size_t i = 0; i < std::min(most_left_out, summary.left_out.size()); ++i) {
    const LeftOut& out = summary.left_out[i];
    const std::size_t row = rows.add();
    content.left_out.emplace_back(out.place);
    rows.say(row, of_what, to_text(out.place));
    rows.say(row, of_group, out.pool);
    rows.say(row, value, std::string(spec(out.field).heading));
    rows.say(row, from, out.value);
    rows.say(row, note, out.why);
  }
  if (summary.left_out.size() > most_left_out)
    content.words.push_back(rows.line(
        fmt::format("{} more stand on the findings sheet.", summary.left_out.size() - most_left_out)));
}

} // namespace

ProgrammeContent programmeContent(const SeasonHistory& history, const SeasonSummary& summary) {
  ProgrammeContent content;
  Rows rows;
  rows.line("Programme this season");
  for (std::string& words : openingWords(history, summary))
    content.words.push_back(rows.line(std::move(words)));
  rows.add();
  content.sections.push_back(rows.line("Figures"));
  const std::size_t heading = rows.add();
  content.headings.push_back(heading);
  constexpr std::array<std::string_view, programme_columns> headings{
      "Figure", "Of", "Value", "Unit", "From", "To", "Level (%)", "n", "Note"};
  for (std::size_t c = 0; c < headings.size(); ++c)
    rows.say(heading, c, std::string(headings[c]));
  for (const ProgrammeFigure& figure : summary.programme)
    addFigure(rows, content, figure, history.season.settings);
  if (summary.programme.empty())
    rows.line("none");
  addLeftOut(rows, content, summary);
  content.cells = rows.table();
  return content;
}

} // namespace wetspell::addin
