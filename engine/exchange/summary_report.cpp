#include "exchange/summary_report.hpp"

#include "exchange/csv.hpp"
#include "quantity/print.hpp"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <array>
#include <cmath>

namespace wetspell {

namespace {

using json = nlohmann::ordered_json;

std::string counted(std::size_t number, std::string_view thing) {
  return fmt::format("{} {}{}", number, thing, number == 1 ? "" : "s");
}

/// "Owner: town forest"; empty for all pools.
std::string group_of(const ProgrammeFigure& each) {
  return each.column.empty() ? std::string() : fmt::format("{}: {}", each.column, each.group);
}

std::string code_of(const Season& season, const PoolSummary& pool) {
  return season.pools[pool.pool].code;
}

json number_in(const std::optional<double>& si, Figured figured, const Settings& settings) {
  if (!si)
    return nullptr;
  if (figured == Figured::date)
    return print_date(std::round(*si));
  return shown(*si, figured, settings);
}

json figure_in(const Figure& figure, const Settings& settings) {
  const Figured figured = figure.spec->figured;
  json value = number_in(figure.value, figured, settings);
  if (!figure.words.empty())
    value = figure.words;
  return {{"name", full_name(figure)},
          {"value", std::move(value)},
          {"unit", figured == Figured::date ? std::string("date") : shown_unit(figured, settings)},
          {"low", number_in(figure.low, figured, settings)},
          {"high", number_in(figure.high, figured, settings)},
          {"level", figure.level > 0 ? json(figure.level) : json(nullptr)},
          {"n", figure.n},
          {"note", figure.note}};
}

std::string line_of(const Figure& figure, const Settings& settings) {
  std::string line = fmt::format("  {:<34} {}", full_title(figure), in_words(figure, settings));
  if (!figure.note.empty() && (figure.value || !figure.words.empty() || figure.low || figure.high))
    line += fmt::format("; {}", figure.note);
  return line + "\n";
}

Cell cell_of(const std::optional<double>& si, Figured figured, const Settings& settings) {
  if (!si)
    return {};
  return figured == Figured::date ? Cell::of_text(print_date(std::round(*si)))
                                  : Cell::of_number(shown(*si, figured, settings));
}

constexpr std::array columns{"Pool", "Group", "Name",  "Figure", "Value", "Unit",
                             "From", "To",    "Level", "n",      "Note"};

void write_row(Table& table, std::size_t row, const std::string& pool, const std::string& group,
               const Figure& figure, const Settings& settings) {
  const Figured figured = figure.spec->figured;
  const auto text = [](std::string_view words) { return Cell::of_text(words); }; // no words: a blank cell
  std::size_t at = 0;
  table.at(row, at++) = text(pool);
  table.at(row, at++) = text(group);
  table.at(row, at++) = text(full_name(figure));
  table.at(row, at++) = text(full_title(figure));
  table.at(row, at++) = figure.words.empty() ? cell_of(figure.value, figured, settings) : text(figure.words);
  table.at(row, at++) = text(shown_unit(figured, settings));
  table.at(row, at++) = cell_of(figure.low, figured, settings);
  table.at(row, at++) = cell_of(figure.high, figured, settings);
  table.at(row, at++) = figure.level > 0 ? Cell::of_number(figure.level) : Cell{};
  table.at(row, at++) = Cell::of_number(static_cast<double>(figure.n));
  table.at(row, at++) = text(figure.note);
}

} // namespace

std::string summary_text(const Season& season, const SeasonSummary& summary, std::string_view file) {
  std::string out =
      fmt::format("{}: {}, {}; {} left out.\n", file, counted(summary.pools.size(), "pool"),
                  counted(season.visits.size(), "visit"), counted(summary.left_out.size(), "reading"));
  for (const std::string& remark : summary.remarks)
    out += remark + "\n";
  std::string heading = "-";
  for (const ProgrammeFigure& each : summary.programme) {
    if (const std::string group = group_of(each); group != heading) {
      out += fmt::format("\n{}\n", group.empty() ? "All pools" : group);
      heading = group;
    }
    out += line_of(each.figure, season.settings);
  }
  for (const PoolSummary& pool : summary.pools) {
    out += fmt::format("\nPool {}\n", code_of(season, pool));
    for (const Figure& figure : pool.figures)
      out += line_of(figure, season.settings);
  }
  if (!summary.left_out.empty())
    out += "\nLeft out, because something about them cannot be right\n";
  for (const LeftOut& each : summary.left_out)
    out += fmt::format("  {}  {}  {}\n", to_text(each.place), each.value, each.why);
  return out;
}

std::string summary_csv(const Season& season, const SeasonSummary& summary) {
  std::size_t rows = 1 + summary.programme.size();
  for (const PoolSummary& pool : summary.pools)
    rows += pool.figures.size();
  Table table(Place{"figures", 1, 0}, rows, columns.size());
  for (std::size_t c = 0; c < columns.size(); ++c)
    table.at(0, c) = Cell::of_text(columns[c]);
  std::size_t row = 1;
  for (const ProgrammeFigure& each : summary.programme)
    write_row(table, row++, "", group_of(each), each.figure, season.settings);
  for (const PoolSummary& pool : summary.pools)
    for (const Figure& figure : pool.figures)
      write_row(table, row++, code_of(season, pool), "", figure, season.settings);
  return csv_from_table(table);
}

std::string summary_json(const Season& season, const SeasonSummary& summary, std::string_view file) {
  json pools = json::array();
  for (const PoolSummary& pool : summary.pools) {
    json figures = json::array();
    for (const Figure& figure : pool.figures)
      figures.push_back(figure_in(figure, season.settings));
    pools.push_back({{"pool", code_of(season, pool)}, {"figures", std::move(figures)}});
  }
  json programme = json::array();
  for (const ProgrammeFigure& each : summary.programme) {
    json entry = figure_in(each.figure, season.settings);
    entry["group"] = each.column.empty() ? json(nullptr) : json(group_of(each));
    programme.push_back(std::move(entry));
  }
  json left_out = json::array();
  for (const LeftOut& each : summary.left_out)
    left_out.push_back({{"sheet", each.place.sheet},
                        {"row", each.place.row},
                        {"column", column_letters(each.place.column)},
                        {"field", spec(each.field).name},
                        {"pool", each.pool},
                        {"value", each.value},
                        {"why", each.why}});
  const json whole{{"file", file},
                   {"pools", std::move(pools)},
                   {"programme", std::move(programme)},
                   {"left_out", std::move(left_out)},
                   {"remarks", summary.remarks}};
  return whole.dump(2, ' ', false, json::error_handler_t::replace) + "\n";
}

} // namespace wetspell
