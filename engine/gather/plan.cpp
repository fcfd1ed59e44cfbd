#include "gather/plan.hpp"

#include "gather/match.hpp"
#include "season/locate.hpp"
#include "season/words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>
#include <tuple>

namespace wetspell {

namespace {

bool says(const std::string& choice, std::string_view word) {
  std::string one;
  std::string other;
  return plain_word(choice, one) == plain_word(word, other);
}

/// What a line is about: which table, which field, which row.
struct Mark {
  static std::string of(Field field, const HeldRow& row) {
    return fmt::format("{}.{}: {}", spec(spec(field).table).name, spec(field).name, row_of(row));
  }
  static std::string row_of(const HeldRow& row) { return fmt::format("{} | {}", row.key, row.start); }
  /// The field of a mark, and the rest behind it.
  static std::optional<std::pair<Field, std::string>> read(const std::string& mark) {
    const std::size_t dot = mark.find('.');
    const std::size_t colon = mark.find(": ");
    if (dot == std::string::npos || colon == std::string::npos || dot > colon)
      return std::nullopt;
    for (const TableKind table : gathered_tables)
      if (spec(table).name == std::string_view(mark).substr(0, dot))
        if (const auto field = field_named(table, mark.substr(dot + 1, colon - dot - 1)))
          return std::pair(*field, mark.substr(colon + 2));
    return std::nullopt;
  }
};

class Planning {
public:
  Planning(const Season& season, GatherPlan& plan)
      : words_(season), visits_(season, TableKind::visits, words_), life_(season, TableKind::life, words_),
        plan_(plan) {}

  void carry_out_choices() {
    for (ChooseLine& line : plan_.lines)
      look_again(line);
  }

  void gather(const CameFile& came) {
    GatheredFile file;
    file.file = came.file;
    file.problem = came.problem;
    file.answers = came.answers.size();
    file.remarks = came.remarks;
    for (const TableKind table : gathered_tables)
      gather(came, table, file);
    plan_.files.push_back(std::move(file));
  }

private:
  TableMatch& rows(TableKind table) { return table == TableKind::life ? life_ : visits_; }
  static std::string shown(const HeldRow& row, Field field) { return to_text(row.cells[position(field)]); }
  std::string said(const HeldRow& row, Field field) { return words_.of(field, row.cells[position(field)]); }
  std::string said(const std::string& typed, Field field) { return words_.of(field, Cell::of_text(typed)); }

  /// The row that a line is about; of several alike, one that holds what the line shows.
  std::optional<std::size_t> row_of(const ChooseLine& line, Field field, const std::string& row) {
    std::optional<std::size_t> found;
    const auto& held = rows(spec(field).table).held();
    for (std::size_t i = 0; i < held.size(); ++i)
      if (Mark::row_of(held[i]) == row && (!found || said(held[i], field) == said(line.season, field)))
        found = i;
    return found;
  }

  void look_again(ChooseLine& line) {
    const auto mark = Mark::read(line.mark);
    if (!mark || line.state == LineState::taken || line.state == LineState::no_longer)
      return;
    const Field field = mark->first;
    const auto at = row_of(line, field, mark->second);
    if (!at)
      return;
    const HeldRow& row = rows(spec(field).table).held(*at);
    const std::string now = said(row, field);
    const std::string came = words_.of(field, line.came);
    if (says(line.choice, choose_season)) {
      line.state = LineState::kept;
    } else if (now == came) {
      line.state = LineState::no_longer;
    } else if (!says(line.choice, choose_came)) {
      line.season = shown(row, field);
      if (line.state == LineState::kept)
        line.state = LineState::open;
    } else if (now != said(line.season, field)) {
      line.season = shown(row, field);
      line.choice.clear();
      line.state = LineState::again;
    } else {
      take(line, field, *at);
    }
  }

  void take(ChooseLine& line, Field field, std::size_t at) {
    TableMatch& table = rows(spec(field).table);
    const std::string before = Mark::row_of(table.held(at));
    line.state = LineState::taken;
    plan_.carried.push_back({spec(field).table, *table.held(at).row, field, line.came});
    table.change(at, field, line.came);
    const std::string after = Mark::row_of(table.held(at));
    if (before == after)
      return;
    for (ChooseLine& other : plan_.lines) // the row is another visit now, and its lines are about that
      if (const auto mark = Mark::read(other.mark); mark && mark->second == before)
        other.mark = Mark::of(mark->first, table.held(at));
  }

  /// Whether this value was put beside the season's before, and turned down or taken.
  bool settled(const std::string& mark, Field field, const std::string& came) {
    return std::any_of(plan_.lines.begin(), plan_.lines.end(), [&](const ChooseLine& line) {
      if (line.mark != mark || line.open())
        return false;
      return words_.of(field, line.came) == came ||
             (line.state == LineState::taken && said(line.season, field) == came);
    });
  }

  /// Whether the difference is still to be chosen about; gives it a line unless it has one.
  bool to_choose(const CameFile& came, const CameRow& row, const HeldRow& held, Field field) {
    const std::string mark = Mark::of(field, held);
    const Cell& cell = row.cells[position(field)];
    const std::string value = words_.of(field, cell);
    if (settled(mark, field, value))
      return false;
    const bool known = std::any_of(plan_.lines.begin(), plan_.lines.end(), [&](const ChooseLine& line) {
      return line.mark == mark && line.open() && words_.of(field, line.came) == value;
    });
    if (!known)
      plan_.lines.push_back({name_of(held, spec(field).table),
                             std::string(spec(field).heading),
                             shown(held, field),
                             cell,
                             came.file,
                             row.where,
                             {},
                             LineState::open,
                             mark});
    return true;
  }

  static std::string name_of(const HeldRow& row, TableKind table) {
    std::string name;
    for (const Field field : RowWords::keys(table))
      if (const std::string text = shown(row, field); !text.empty())
        name += (name.empty() ? "" : ", ") + text;
    if (table == TableKind::visits)
      if (const std::string start = shown(row, Field::visit_start); !start.empty())
        name += " at " + start;
    return name;
  }

  void gather(const CameFile& came, TableKind table, GatheredFile& file) {
    const auto& coming = came.rows(table);
    const auto matches = rows(table).match(came);
    file.rows += coming.size();
    for (std::size_t i = 0; i < coming.size(); ++i) {
      const HeldRow& held = rows(table).held(matches[i].held);
      ++(held.file == came.file ? file.from_here : file.there);
      bool open = false;
      for (const Field field : matches[i].fields)
        open = to_choose(came, coming[i], held, field) || open;
      file.to_choose += open;
      if (matches[i].verdict == Verdict::added) {
        ++file.added;
        add(held, table);
      }
    }
  }

  void add(const HeldRow& held, TableKind table) {
    const bool life = table == TableKind::life;
    AddedRow added{held.cells};
    added.cells[position(life ? Field::life_source_file : Field::visit_source_file)] =
        Cell::of_text(held.file);
    added.cells[position(life ? Field::life_source_row : Field::visit_source_row)] =
        Cell::of_text(held.where);
    (life ? plan_.life : plan_.visits).push_back(std::move(added));
  }

  RowWords words_;
  TableMatch visits_, life_;
  GatherPlan& plan_;
};

} // namespace

std::size_t GatherPlan::open_lines() const {
  return static_cast<std::size_t>(
      std::count_if(lines.begin(), lines.end(), [](const ChooseLine& line) { return line.open(); }));
}

std::size_t GatherPlan::not_read() const {
  return static_cast<std::size_t>(std::count_if(
      files.begin(), files.end(), [](const GatheredFile& file) { return !file.problem.empty(); }));
}

GatherPlan plan_gathering(const Season& season, std::vector<ChooseLine> before,
                          const std::vector<CameFile>& came) {
  GatherPlan plan;
  plan.lines = std::move(before);
  Planning planning(season, plan);
  planning.carry_out_choices();
  for (const CameFile& file : came)
    planning.gather(file);
  return plan;
}

} // namespace wetspell
