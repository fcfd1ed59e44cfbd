#include "demo/gather_score.hpp"

#include "exchange/tables_json.hpp"
#include "gather/choose.hpp"
#include "season/season.hpp"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <map>
#include <optional>

namespace wetspell::demo {

namespace {

using nlohmann::json;

/// A season in its workbook, with the lines that are to be chosen between.
struct Held {
  Season season;
  std::vector<ChooseLine> lines;
};

Result<Held> held_in(std::string_view line) {
  const json told = json::parse(line, nullptr, false);
  if (told.is_discarded() || !told.contains("tables"))
    return Problem{ProblemKind::bad_argument,
                   "The season is not the JSON that 'wetspell-office tables' writes."};
  auto tables = tables_from(told["tables"]);
  if (!tables)
    return tables.error();
  std::vector<ChooseLine> lines;
  std::vector<Table> sheets;
  for (Table& table : tables.value())
    if (table.sheet() == "To choose")
      lines = choose_lines(table);
    else
      sheets.push_back(std::move(table));
  auto season = read_season(std::move(sheets), 0); // the season's own settings say what today is
  if (!season)
    return season.error();
  return Held{std::move(season).value(), std::move(lines)};
}

/// A visit as it was put in: its cells by the fields' names, and what later files say otherwise.
struct PutIn {
  std::string file;
  std::map<std::string, std::string> cells;
  std::map<std::string, std::string> otherwise;
};
/// By pool, day and person.
using AllPutIn = std::map<std::array<std::string, 3>, PutIn>;

AllPutIn visits_in(const json& files) {
  AllPutIn all;
  for (const json& file : files)
    for (const json& visit : file.at("visits")) {
      const auto cells = visit.get<std::map<std::string, std::string>>();
      const std::array<std::string, 3> key{cells.at("pool"), cells.at("date"), file.at("person")};
      const auto [known, fresh] = all.try_emplace(key, PutIn{file.at("file"), cells, {}});
      if (!fresh)
        for (const auto& [name, text] : cells)
          if (const auto before = known->second.cells.find(name);
              before == known->second.cells.end() || before->second != text)
            known->second.otherwise[name] = text;
    }
  return all;
}

std::string cell_of(const Season& season, const std::string& name, std::uint32_t row) {
  const auto field = field_named(TableKind::visits, name);
  return field ? to_text(season.cell(*field, row)) : std::string();
}

const Visit* visit_of(const Season& season, const std::array<std::string, 3>& key) {
  const auto found = std::find_if(season.visits.begin(), season.visits.end(), [&](const Visit& visit) {
    return cell_of(season, "pool", visit.row) == key[0] && cell_of(season, "date", visit.row) == key[1] &&
           cell_of(season, "person", visit.row) == key[2];
  });
  return found == season.visits.end() ? nullptr : &*found;
}

void look_for_visits(const AllPutIn& visits, const Held& after, GatherScore& score) {
  for (const auto& [key, put_in] : visits) {
    const std::string name = fmt::format("{}, {}, {}", key[0], key[1], key[2]);
    ++score.visits;
    score.cells += put_in.cells.size();
    score.contradictions += put_in.otherwise.size();
    const Visit* visit = visit_of(after.season, key);
    if (visit == nullptr) {
      score.missed.push_back(fmt::format("the visit {} of {}", name, put_in.file));
      continue;
    }
    ++score.visits_found;
    for (const auto& [field, text] : put_in.cells)
      if (const std::string stands = cell_of(after.season, field, visit->row); stands == text)
        ++score.cells_found;
      else
        score.missed.push_back(fmt::format("{} of {}: '{}' became '{}'", field, name, text, stands));
    for (const auto& [field, text] : put_in.otherwise) {
      const std::string_view heading = spec(*field_named(TableKind::visits, field)).heading;
      if (std::any_of(after.lines.begin(), after.lines.end(), [&, &other = text](const ChooseLine& line) {
            return line.open() && line.column == heading && to_text(line.came) == other &&
                   line.visit.starts_with(name);
          }))
        ++score.contradictions_found;
      else
        score.missed.push_back(fmt::format("two versions of {} of {} to choose between", field, name));
    }
  }
}

/// The row of a finding on the sheet of findings.
std::optional<std::uint32_t> row_of_finding(const Season& season, const std::string& key) {
  const Located& where = season.where(TableKind::findings);
  for (auto row = static_cast<std::uint32_t>(where.first_row); where.found() && row < where.end_row; ++row)
    if (to_text(season.cell(Field::finding_key, row)) == key)
      return row;
  return std::nullopt;
}

void look_for_answers(const json& files, const Season& before, const Season& after, GatherScore& score) {
  for (const json& file : files)
    for (const json& given : file.at("answers")) {
      ++score.answers;
      const std::string key = given.at("key"), answer = given.at("answer");
      const auto row = row_of_finding(after, key);
      if (!row && row_of_finding(before, key))
        ++score.answers_unasked;
      else if (row && (to_text(after.cell(Field::finding_answer, *row)) == answer ||
                       to_text(after.cell(Field::finding_note, *row)).ends_with(answer)))
        ++score.answers_found;
      else
        score.missed.push_back(fmt::format("the answer '{}' to {}", answer, key));
    }
}

/// The cells that people typed, place by place.
void compare(const Season& before, const Season& after, GatherScore& score) {
  for (const TableKind kind : {TableKind::pools, TableKind::people, TableKind::visits, TableKind::life}) {
    const Located& where = before.where(kind);
    for (auto row = static_cast<std::uint32_t>(where.first_row); where.found() && row < where.end_row; ++row)
      for (const FieldSpec& field : fields(kind)) {
        const Cell& cell = before.cell(field.field, row);
        if (field.role != Role::typed || cell.empty())
          continue;
        ++score.held;
        if (after.cell(field.field, row) == cell)
          continue;
        ++score.changed;
        score.missed.push_back(fmt::format("{} in row {} of the season's {} was changed", field.heading,
                                           where.table->sheet_row(row), spec(kind).name));
      }
  }
}

} // namespace

bool GatherScore::whole() const {
  return visits == visits_found && cells == cells_found && contradictions == contradictions_found &&
         answers == answers_found + answers_unasked && changed == 0;
}

Result<GatherScore> score_gathering(std::string_view put_in, std::string_view before,
                                    std::string_view after) {
  const json files = json::parse(put_in, nullptr, false);
  if (!files.is_array())
    return Problem{ProblemKind::bad_argument, "What was put in is not the JSON that fill_handouts writes."};
  const auto was = held_in(before), is = held_in(after);
  if (!was)
    return was.error();
  if (!is)
    return is.error();
  GatherScore score;
  score.files = files.size();
  look_for_visits(visits_in(files), is.value(), score);
  look_for_answers(files, was.value().season, is.value().season, score);
  compare(was.value().season, is.value().season, score);
  return score;
}

std::string in_words(const GatherScore& score) {
  std::string out = fmt::format(
      "{} files came back with {} visits: {} stand in the season, {} of their {} cells as they were typed.\n"
      "Cells that came in two versions: {}, side by side to choose between: {}.\n"
      "Of {} answers {} stand at their findings, {} to questions that the new visits settled.\n"
      "Of {} cells that the season held before {} were changed.\n",
      score.files, score.visits, score.visits_found, score.cells_found, score.cells, score.contradictions,
      score.contradictions_found, score.answers, score.answers_found, score.answers_unasked, score.held,
      score.changed);
  for (const std::string& each : score.missed)
    out += "  missed: " + each + "\n";
  return out;
}

} // namespace wetspell::demo
