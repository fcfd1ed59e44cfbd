// A row a reading: rows of one pool, day and person become one visit.
#include "audit/column_units.hpp"
#include "audit/heading_unit.hpp"
#include "audit/name_of_reading.hpp"
#include "audit/row_reader.hpp"
#include "season/locate.hpp"
#include "season/words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace wetspell {

namespace {

constexpr std::array temperatures{Field::visit_temperature_1, Field::visit_temperature_2,
                                  Field::visit_temperature_3};

} // namespace

ReadingGroups::ReadingGroups(const Mapped& table, std::uint32_t index) : table_(table), index_(index) {
  const Block& block = table.block;
  const Mapping* what = table.map.of(Part::parameter);
  const Mapping* value = table.map.of(Part::value);
  const Mapping* person = table.map.of(Field::visit_person);
  if (what == nullptr || value == nullptr)
    return;
  KeyReader keys(table);
  std::unordered_map<std::string, std::uint32_t> visit_of;
  std::unordered_map<std::string, std::int32_t> meaning_of;
  std::vector<std::vector<const Cell*>> cells;
  std::string buffer;
  for (std::size_t row = block.first_data; row < block.end_data; ++row) {
    if (!block.is_record(row))
      continue;
    const Key typed = keys.at(row);
    const ReadDate read = date_from(typed.date, table.dates);
    std::string key(plain_code(to_text(typed.pool), buffer));
    key += '\n' + (read.readable ? fmt::format("{}", read.serial) : to_text(typed.date)) + '\n';
    if (person != nullptr)
      key += plain_code(to_text(block.grid.at(row, person->column)), buffer);
    const auto [visit, fresh] = visit_of.try_emplace(std::move(key), static_cast<std::uint32_t>(visits_));
    visits_ += fresh;
    const Cell& word = block.grid.at(row, what->column);
    std::int32_t meaning = -1;
    if (holds_something(word)) {
      const std::string text = to_text(word);
      const auto [at, first] = meaning_of.try_emplace(std::string(plain_word(text, buffer)),
                                                      static_cast<std::int32_t>(cells.size()));
      if (first) {
        meanings_.emplace_back(text, Meaning{});
        cells.emplace_back();
      }
      meaning = at->second;
      cells[static_cast<std::size_t>(meaning)].push_back(&block.grid.at(row, value->column));
    }
    readings_.push_back({static_cast<std::uint32_t>(row), visit->second, meaning});
  }
  for (std::size_t i = 0; i < cells.size(); ++i)
    learn(meanings_[i].first, std::move(cells[i]));
}

void ReadingGroups::learn(const std::string& word, std::vector<const Cell*> cells) {
  const auto at =
      std::find_if(meanings_.begin(), meanings_.end(), [&](const auto& each) { return each.first == word; });
  Meaning& meaning = at->second;
  meaning.rows = cells.size();
  const HeadingGuess guess = guess_heading(word);
  meaning.field = reading_meant(guess);
  if (!meaning.field || spec(*meaning.field).type != FieldType::quantity)
    return;
  const Kind kind = spec(*meaning.field).kind;
  if (usual_unit(kind) == Unit::none)
    return;
  Evidence evidence;
  evidence.cells = std::move(cells);
  std::erase_if(evidence.cells, [](const Cell* cell) { return !holds_something(*cell); });
  const UnitHints hints{TitleUnits(table_.block.titles)};
  meaning.unit = unit_told(kind, guess.unit, as_kind(evidence, kind), hints).unit;
  meaning.unit_open = meaning.unit == Unit::none;
}

void ReadingGroups::read(TidyTable& to, RowReader& reader) const {
  const Block& block = table_.block;
  const Mapping* value = table_.map.of(Part::value);
  const Mapping* units = table_.map.of(Part::unit_name);
  KeyReader keys(table_);
  std::vector<const Mapping*> others; // columns that stand beside every reading of a visit
  for (const Mapping& mapping : table_.map.columns)
    if (mapping.field && spec(*mapping.field).role == Role::typed) {
      to.comes_from(index_, static_cast<std::size_t>(to.column(*mapping.field)),
                    static_cast<std::uint32_t>(mapping.column));
      if (!spec(*mapping.field).required)
        others.push_back(&mapping);
    }
  constexpr std::size_t none = static_cast<std::size_t>(-1);
  std::vector<std::size_t> tidy_rows(visits_, none);
  for (const Reading& reading : readings_) {
    Spot at{index_, reading.row, 0};
    std::size_t& row = tidy_rows[reading.visit];
    if (row == none) {
      row = to.add_row(index_, reading.row);
      reader.keys(to, row, keys.at(at.row), at, Field::visit_pool, Field::visit_date);
    }
    for (const Mapping* other : others) {
      const auto column = static_cast<std::size_t>(to.column(*other->field));
      at.column = static_cast<std::uint32_t>(other->column);
      if (to.at(row, column).empty()) {
        reader.cell(to, row, column, block.grid.at(reading.row, other->column), at, other->unit,
                    other->unit_open);
        to.comes_from(row, column, at);
      }
    }
    at.column = static_cast<std::uint32_t>(value->column);
    const Cell& cell = block.grid.at(reading.row, value->column);
    const auto* meaning =
        reading.meaning < 0 ? nullptr : &meanings_[static_cast<std::size_t>(reading.meaning)].second;
    if (meaning == nullptr || !meaning->field || !holds_something(cell))
      continue;
    Field field = *meaning->field;
    if (field == Field::visit_temperature_mean) { // several that are not told apart: the readings themselves
      const auto mean = static_cast<std::size_t>(to.column(field));
      const auto first = static_cast<std::size_t>(to.column(temperatures[0]));
      if (!to.at(row, mean).empty() && to.at(row, first).empty()) {
        to.at(row, first) = std::move(to.at(row, mean));
        to.at(row, mean) = Cell{};
        to.comes_from(row, first, to.origin(row, mean));
      }
      if (!to.at(row, first).empty())
        for (const Field next : temperatures)
          if (field == Field::visit_temperature_mean &&
              to.at(row, static_cast<std::size_t>(to.column(next))).empty())
            field = next;
    }
    const auto column = static_cast<std::size_t>(to.column(field));
    if (!to.at(row, column).empty() ||
        (field == Field::visit_temperature_mean &&
         !to.at(row, static_cast<std::size_t>(to.column(temperatures[0]))).empty())) {
      reader.unread(to, row, at, cell,
                    fmt::format("{} stands there already for this visit", spec(field).heading),
                    fmt::format("{}: a second reading for one visit", spec(field).heading));
      continue;
    }
    Unit unit = meaning->unit;
    bool open = meaning->unit_open;
    const Kind kind = spec(field).kind;
    if (units != nullptr && spec(field).type == FieldType::quantity)
      if (const Unit said = unit_meant(to_text(block.grid.at(reading.row, units->column)));
          said != Unit::none && fits(said, kind)) {
        unit = said;
        open = false;
      }
    to.comes_from(row, column, at);
    reader.cell(to, row, column, cell, at, unit, open);
  }
}

} // namespace wetspell
