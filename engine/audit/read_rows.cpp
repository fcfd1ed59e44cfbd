// A row a record, and the tables that all layouts fill.
#include "audit/map_days.hpp"
#include "audit/rests.hpp"
#include "audit/row_reader.hpp"
#include "base/in_parts.hpp"
#include "season/locate.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <memory>

namespace wetspell {

namespace {

struct Keys {
  Field pool, date, person;
};
constexpr Keys visit_keys{Field::visit_pool, Field::visit_date, Field::visit_person};
constexpr Keys life_keys{Field::life_pool, Field::life_date, Field::life_person};

bool typed(Field field) {
  return spec(field).role == Role::typed;
}

/// The columns that the tables of one kind need together, and the unit most of them have.
struct Wanted {
  std::vector<Field> fields;
  std::vector<Unit> units;
  std::size_t rows = 0;

  void add(Field field, Unit unit) {
    const auto at = std::find(fields.begin(), fields.end(), field);
    if (at == fields.end()) {
      fields.push_back(field);
      units.push_back(unit);
    } else if (Unit& known = units[static_cast<std::size_t>(at - fields.begin())]; known == Unit::none) {
      known = unit;
    }
  }
  /// In the order of the catalogue.
  void sort() {
    std::vector<std::pair<Field, Unit>> both;
    for (std::size_t i = 0; i < fields.size(); ++i)
      both.emplace_back(fields[i], units[i]);
    std::sort(both.begin(), both.end());
    for (std::size_t i = 0; i < both.size(); ++i)
      std::tie(fields[i], units[i]) = both[i];
  }
};

bool has_counts(const BlockMap& map) {
  return std::any_of(map.columns.begin(), map.columns.end(),
                     [](const Mapping& mapping) { return mapping.count.has_value(); });
}

std::size_t counts_in(const Mapped& table) {
  std::size_t count = 0;
  for (const Mapping& mapping : table.map.columns)
    if (mapping.count)
      count += table.block.filled[mapping.column];
  return count;
}

class Reading {
public:
  explicit Reading(const std::vector<Mapped>& tables) : tables_(tables), reader_(tables, tidy_) {}

  Tidy tidy() {
    groups_.resize(tables_.size());
    for (std::size_t i = 0; i < tables_.size(); ++i)
      if (tables_[i].map.kind)
        want(tables_[i], i);
    for (const TableKind kind : {TableKind::visits, TableKind::life, TableKind::pools, TableKind::people}) {
      Wanted& wanted = wanted_[static_cast<std::size_t>(kind)];
      if (wanted.fields.empty())
        continue;
      wanted.sort();
      tidy_.tables.emplace_back(kind, wanted.fields, wanted.units, wanted.rows, tables_.size());
      fill(tidy_.tables.back());
      settle_keys(tidy_.tables.back());
    }
    return std::move(tidy_);
  }

private:
  Wanted& wanted(TableKind kind) { return wanted_[static_cast<std::size_t>(kind)]; }

  void want(const Mapped& table, std::size_t index) {
    const TableKind kind = *table.map.kind;
    const KeyReader keys(table);
    for (const Mapping& mapping : table.map.columns)
      if (mapping.field && typed(*mapping.field))
        wanted(kind).add(*mapping.field, mapping.unit);
    const auto want_keys = [&](TableKind of, const Keys& fields) {
      if (keys.has_pool())
        wanted(of).add(fields.pool, Unit::none);
      if (keys.has_date())
        wanted(of).add(fields.date, Unit::none);
      if (table.map.of(visit_keys.person) != nullptr)
        wanted(of).add(fields.person, Unit::none);
    };
    if (kind == TableKind::visits || kind == TableKind::life)
      want_keys(kind, kind == TableKind::visits ? visit_keys : life_keys);
    if (table.map.layout == Layout::cell_a_visit) {
      const Keys& fields = kind == TableKind::visits ? visit_keys : life_keys;
      wanted(kind).add(fields.date, Unit::none);
      if (kind == TableKind::life)
        want_counts();
      wanted(kind).rows += filled_cells(table.block);
      return;
    }
    if (table.map.layout == Layout::row_a_reading) {
      groups_[index] = std::make_unique<ReadingGroups>(table, static_cast<std::uint32_t>(index));
      want_readings(*groups_[index], table.map.words, kind);
      return;
    }
    wanted(kind).rows += table.block.records();
    if (has_counts(table.map)) {
      want_keys(TableKind::life, life_keys);
      want_counts();
      wanted(TableKind::life).rows += counts_in(table);
    }
  }

  void want_counts() {
    for (const Field field : {Field::life_species, Field::life_seen_as, Field::life_by_first})
      wanted(TableKind::life).add(field, Unit::none);
  }

  void want_readings(const ReadingGroups& groups, const std::vector<Mapping>& words, TableKind kind) {
    wanted(kind).rows += groups.visits();
    for (std::size_t i = 0; i < words.size(); ++i) {
      const Mapping& word = words[i];
      if (!word.field) {
        const std::size_t rows = groups.rows()[i];
        tidy_.remarks.push_back(fmt::format("\"{}\" is none of our readings: {} {} left alone.", word.heading,
                                            rows, rows == 1 ? "row is" : "rows are"));
        continue;
      }
      wanted(kind).add(*word.field, word.unit);
      if (*word.field == Field::visit_temperature_mean)
        for (const Field field :
             {Field::visit_temperature_1, Field::visit_temperature_2, Field::visit_temperature_3})
          wanted(kind).add(field, word.unit);
    }
  }

  void fill(TidyTable& to) {
    for (std::size_t i = 0; i < tables_.size(); ++i) {
      const Mapped& table = tables_[i];
      if (!table.map.kind)
        continue;
      const auto index = static_cast<std::uint32_t>(i);
      if (*table.map.kind == to.kind()) {
        if (groups_[i])
          groups_[i]->read(to, reader_);
        else if (table.map.layout == Layout::cell_a_visit)
          read_cells(tables_, index, to, reader_);
        else
          read_records(tables_, index, to, reader_);
      } else if (to.kind() == TableKind::life && !groups_[i] && has_counts(table.map)) {
        read_counts(tables_, index, to, reader_);
      }
    }
  }

  const std::vector<Mapped>& tables_;
  Tidy tidy_;
  RowReader reader_;
  std::array<Wanted, table_kinds> wanted_;
  std::vector<std::unique_ptr<ReadingGroups>> groups_;
};

} // namespace

void read_records(const std::vector<Mapped>& tables, std::uint32_t index, TidyTable& to, RowReader& reader) {
  const Mapped& table = tables[index];
  const bool visits = to.kind() == TableKind::visits;
  const bool dated = visits || to.kind() == TableKind::life;
  const Keys& keys = visits ? visit_keys : life_keys;
  struct Use {
    std::size_t to, from;
    const Mapping* mapping;
  };
  std::vector<Use> uses;
  for (const Mapping& mapping : table.map.columns) {
    if (!mapping.field || !typed(*mapping.field))
      continue;
    const auto column = static_cast<std::size_t>(to.column(*mapping.field));
    to.comes_from(index, column, static_cast<std::uint32_t>(mapping.column));
    if (!dated || (*mapping.field != keys.pool && *mapping.field != keys.date))
      uses.push_back({column, mapping.column, &mapping});
  }
  const KeyReader key_reader(table);
  if (dated && key_reader.date_column() != nullptr && to.column(keys.date) >= 0)
    to.comes_from(index, static_cast<std::size_t>(to.column(keys.date)),
                  static_cast<std::uint32_t>(key_reader.date_column()->column));
  std::vector<std::uint32_t> rows;
  rows.reserve(table.block.records());
  auto passed = table.block.passed.begin();
  for (std::size_t row = table.block.first_data; row < table.block.end_data; ++row) {
    if (passed != table.block.passed.end() && passed->row == row)
      ++passed;
    else
      rows.push_back(static_cast<std::uint32_t>(row));
  }
  const std::size_t first_tidy = to.rows();
  for (const std::uint32_t row : rows)
    to.add_row(index, row);
  const auto read = [&](std::uint32_t row, std::size_t tidy_row, KeyReader& own_keys, RowReader& own) {
    Spot at{index, row, 0};
    to.open_row(tidy_row);
    if (dated)
      own.keys(to, tidy_row, own_keys.at(row), at, keys.pool, keys.date);
    for (const Use& use : uses) {
      at.column = static_cast<std::uint32_t>(use.from);
      const Cell& cell = table.block.grid.at(row, use.from);
      const auto& rest = use.mapping->rest;
      own.cell(to, tidy_row, use.to,
               rest ? with_rest(cell, use.mapping->unit, table.block.grid.at(row, rest->column), rest->unit)
                    : cell,
               at, use.mapping->unit, use.mapping->unit_open);
    }
  };
  constexpr std::size_t least = 20'000;
  std::vector<Tidy> parts(parts_of(rows.size(), least));
  in_parts(parts.size(), [&](std::size_t part) {
    RowReader own(tables, parts[part]);
    KeyReader own_keys = key_reader;
    const auto [first, end] = range_of(part, parts.size(), rows.size());
    if (first < end)
      own_keys.begin_at(rows[first]);
    for (std::size_t i = first; i < end; ++i)
      read(rows[i], first_tidy + i, own_keys, own);
  });
  for (Tidy& part : parts)
    reader.take_unread(std::move(part));
}

void read_counts(const std::vector<Mapped>& tables, std::uint32_t index, TidyTable& to, RowReader& reader) {
  const Mapped& table = tables[index];
  KeyReader keys(table);
  const auto column = [&](Field field) { return static_cast<std::size_t>(to.column(field)); };
  const auto from_same = [&](const Mapping* mapping, Field field) {
    if (mapping != nullptr && to.column(field) >= 0)
      to.comes_from(index, column(field), static_cast<std::uint32_t>(mapping->column));
  };
  const Mapping* person = table.map.of(Field::visit_person);
  from_same(keys.pool_column(), Field::life_pool);
  from_same(keys.date_column(), Field::life_date);
  from_same(person, Field::life_person);
  for (std::size_t row = table.block.first_data; row < table.block.end_data; ++row) {
    if (!table.block.is_record(row))
      continue;
    for (const Mapping& mapping : table.map.columns) {
      if (!mapping.count || !holds_something(table.block.grid.at(row, mapping.column)))
        continue;
      const Spot at{index, static_cast<std::uint32_t>(row), static_cast<std::uint32_t>(mapping.column)};
      const std::size_t tidy_row = to.add_row(index, at.row);
      reader.keys(to, tidy_row, keys.at(at.row), at, Field::life_pool, Field::life_date, true);
      if (person != nullptr)
        to.at(tidy_row, column(Field::life_person)) = table.block.grid.at(row, person->column);
      to.at(tidy_row, column(Field::life_species)) = Cell::of_text(mapping.count->species);
      to.at(tidy_row, column(Field::life_seen_as)) = Cell::of_text(mapping.count->seen_as);
      for (const Field field : {Field::life_species, Field::life_seen_as, Field::life_by_first})
        to.comes_from(tidy_row, column(field), at);
      reader.cell(to, tidy_row, column(Field::life_by_first), table.block.grid.at(row, mapping.column), at,
                  Unit::none, false);
    }
  }
}

Tidy read_rows(const std::vector<Mapped>& tables) {
  return Reading(tables).tidy();
}

} // namespace wetspell
