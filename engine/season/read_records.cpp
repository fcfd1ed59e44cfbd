#include "season/locate.hpp"
#include "season/read_parts.hpp"
#include "season/record_rows.hpp"

#include <algorithm>

namespace wetspell {

namespace {

/// Counts over the course may end in a half, and say themselves whether they are paces or steps; the reader
/// of lengths knows both.
void read_runs(const Season& season, std::vector<Person>& people) {
  constexpr std::array fields_of{Field::person_run_1, Field::person_run_2, Field::person_run_3,
                                 Field::person_run_4};
  constexpr std::array members{&Person::run_1, &Person::run_2, &Person::run_3, &Person::run_4};
  for (Person& person : people) {
    const Unit usual = person.counts.is(CountingWay::steps) ? Unit::step : Unit::pace;
    for (std::size_t i = 0; i < members.size(); ++i) {
      Quantity run = read(season.cell(fields_of[i], person.row), {.kind = Kind::length, .assume = usual});
      if (run.status == Status::paces || run.status == Status::steps) {
        run.status = Status::value;
        run.si = run.si_high = run.written;
      } else if (run.typed() && run.status != Status::missing) {
        run = read(season.cell(fields_of[i], person.row), {.kind = Kind::count}); // for its reason
        run.status = run.has_value() ? Status::bad : run.status;
      }
      person.*members[i] = run;
    }
  }
}

std::optional<PaceLength> pace_of(const Person& person) {
  if (!person.course.has_value() || person.counts.index == Choice::unreadable)
    return std::nullopt;
  std::vector<CalibrationRun> runs;
  const bool steps = person.counts.is(CountingWay::steps);
  for (const Quantity& run : person.runs()) {
    if (!run.has_value())
      continue;
    const double paces_per_count = run.unit == Unit::step ? 0.5 : 1.0;
    const double count = run.si * paces_per_count * (steps ? 2 : 1);
    runs.push_back({person.course.si, count});
  }
  auto pace = pace_from_runs(runs, steps ? CountedAs::steps : CountedAs::paces);
  return pace ? std::optional(std::move(pace).value()) : std::nullopt;
}

/// Without a table of pools or people, every code that visits and counts write is taken to be one.
template <class Record>
void imply(const Season& season, std::initializer_list<Field> references, std::vector<Record>& records,
           CodeIndex& codes) {
  for (Field field : references) {
    const TableKind kind = spec(field).table;
    if (!season.has(field))
      continue;
    const Located& at = season.where(kind);
    const auto column = static_cast<std::size_t>(at.columns[position(field)]);
    for (std::size_t row = at.first_row; row < at.end_row; ++row) {
      const Cell& cell = at.table->at(row, column);
      if (row > at.first_row && cell == at.table->at(row - 1, column))
        continue; // neighbours are often alike
      if (codes.find(cell).index != Ref::unknown || cell.kind() == CellKind::error)
        continue;
      Record& record = records.emplace_back();
      record.code = to_text(cell);
      codes.add_code(record.code, static_cast<std::int32_t>(records.size()) - 1);
    }
  }
}

template <class Record> void index(const std::vector<Record>& records, CodeIndex& codes) {
  for (std::size_t i = 0; i < records.size(); ++i) {
    codes.add_code(records[i].code, static_cast<std::int32_t>(i));
    codes.add_name(records[i].name, static_cast<std::int32_t>(i));
  }
}

void index_species(const Season& season, CodeIndex& codes) {
  for (std::size_t i = 0; i < season.species_names.size(); ++i) {
    const auto at = static_cast<std::int32_t>(i);
    codes.add_code(season.species_names[i], at);
    codes.add_name(season.species_names[i] + "s", at); // "wood frogs"
  }
}

/// What records are looked up by before there are any.
Lookups without_records(const Season& season) {
  Lookups lookups;
  lookups.depth_classes = class_words(season.depth_classes);
  lookups.fill_classes = class_words(season.fill_classes);
  index_species(season, lookups.species);
  return lookups;
}

} // namespace

Lookups lookups_of(const Season& season) {
  Lookups lookups = without_records(season);
  index(season.pools, lookups.pools);
  index(season.people, lookups.people);
  return lookups;
}

void read_records(Season& season) {
  Lookups lookups = without_records(season);

  read_rows(season, TableKind::pools, lookups, season.pools);
  index(season.pools, lookups.pools);
  if (!season.where(TableKind::pools).found())
    imply(season, {Field::visit_pool, Field::life_pool}, season.pools, lookups.pools);

  read_rows(season, TableKind::people, lookups, season.people);
  read_runs(season, season.people);
  index(season.people, lookups.people);
  if (!season.where(TableKind::people).found())
    imply(season,
          {Field::visit_person, Field::visit_second_person, Field::visit_paced_by, Field::life_person,
           Field::life_second_person},
          season.people, lookups.people);
  season.paces.reserve(season.people.size());
  for (const Person& person : season.people)
    season.paces.push_back(pace_of(person));

  read_rows(season, TableKind::visits, lookups, season.visits);
  read_rows(season, TableKind::life, lookups, season.life);
}

} // namespace wetspell
