// A row a reading: rows of one pool, day and person become one visit.
#include "audit/heading_unit.hpp"
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

ReadingGroups::ReadingGroups(const Mapped& table, std::uint32_t index)
    : table_(table), index_(index), rows_(table.map.words.size()) {
  const Block& block = table.block;
  const Mapping* what = table.map.of(Part::parameter);
  const Mapping* person = table.map.of(Field::visit_person);
  if (what == nullptr || table.map.of(Part::value) == nullptr)
    return;
  KeyReader keys(table);
  std::unordered_map<std::string, std::uint32_t> visit_of;
  std::unordered_map<std::string, std::int32_t> word_of;
  std::string buffer;
  for (std::size_t i = 0; i < table.map.words.size(); ++i)
    word_of.emplace(plain_word(table.map.words[i].heading, buffer), static_cast<std::int32_t>(i));
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
    std::int32_t word = -1;
    if (const Cell& cell = block.grid.at(row, what->column); holds_something(cell)) {
      word = word_of.at(std::string(plain_word(to_text(cell), buffer)));
      ++rows_[static_cast<std::size_t>(word)];
    }
    readings_.push_back({static_cast<std::uint32_t>(row), visit->second, word});
  }
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
    const Mapping* word =
        reading.word < 0 ? nullptr : &table_.map.words[static_cast<std::size_t>(reading.word)];
    if (word == nullptr || !word->field || !holds_something(cell))
      continue;
    Field field = *word->field;
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
    Unit unit = word->unit;
    bool open = word->unit_open;
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
