#include "audit/given_map.hpp"

#include "audit/heading_unit.hpp"
#include "measure/refuse.hpp"
#include "season/words.hpp"

#include <algorithm>
#include <array>

namespace wetspell {

namespace {

struct PartWord {
  Part part;
  std::string_view word;
};
constexpr std::array part_words{
    PartWord{Part::year, "Year"},        PartWord{Part::month, "Month"},
    PartWord{Part::day, "Day of month"}, PartWord{Part::parameter, "What was read"},
    PartWord{Part::value, "Reading"},    PartWord{Part::unit_name, "Unit of reading"}};
constexpr std::array record_tables{TableKind::visits, TableKind::life, TableKind::pools, TableKind::people};

std::string plain(std::string_view text) {
  std::string buffer;
  return std::string(plain_word(text, buffer));
}

std::optional<CountColumn> count_meant(std::string_view text) {
  constexpr std::string_view front = "Life: ";
  const std::size_t comma = text.rfind(", ");
  if (!text.starts_with(front) || comma == std::string_view::npos || comma < front.size())
    return std::nullopt;
  return CountColumn{std::string(text.substr(front.size(), comma - front.size())),
                     std::string(text.substr(comma + 2))};
}

/// "Visits: Depth", "visits.depth", or "depth" where only one meaning is likely (visits first).
std::optional<Field> field_meant(std::string_view text) {
  const std::size_t mark = text.find_first_of(":.");
  for (const TableKind kind : record_tables) {
    if (mark != std::string_view::npos && plain(text.substr(0, mark)) != plain(spec(kind).name))
      continue;
    const auto field = field_named(kind, mark == std::string_view::npos ? text : text.substr(mark + 1));
    if (field)
      return field;
  }
  return std::nullopt;
}

Result<GivenMapping> mapping_from(const Place& place, const std::string& heading, const std::string& field,
                                  const std::string& unit) {
  GivenMapping given;
  given.heading = plain(heading);
  if (plain(field) == plain(leave_alone_word)) {
    given.leave_alone = true;
    return given;
  }
  for (const PartWord& each : part_words)
    if (plain(field) == plain(each.word))
      given.part = each.part;
  if (given.part == Part::none && !(given.field = field_meant(field)))
    given.count = count_meant(field);
  if (given.part == Part::none && !given.field && !given.count)
    return bad_argument(fmt::format("{}: \"{}\" is no field; write for example \"Visits: Depth\", or \"{}\".",
                                    to_text(place), field, leave_alone_word));
  if (!unit.empty()) {
    given.unit = unit_meant(unit);
    const bool fitting = given.field && fits(given.unit, spec(*given.field).kind);
    if (given.unit == Unit::none || !fitting)
      return bad_argument(
          fmt::format("{}: \"{}\" is not a unit in which {} can be written.", to_text(place), unit, field));
  }
  return given;
}

/// Fields that mean the same, each in its table.
constexpr std::array<std::array<Field, 4>, 5> alike{{
    {Field::visit_pool, Field::life_pool, Field::pool_code, Field::pool_code},
    {Field::visit_date, Field::life_date, Field::life_date, Field::life_date},
    {Field::visit_person, Field::life_person, Field::person_code, Field::person_code},
    {Field::visit_second_person, Field::life_second_person, Field::life_second_person,
     Field::life_second_person},
    {Field::visit_notes, Field::life_notes, Field::pool_notes, Field::person_notes},
}};

Field in_table(Field field, TableKind table) {
  for (const auto& same : alike)
    if (std::find(same.begin(), same.end(), field) != same.end())
      for (const Field each : same)
        if (spec(each).table == table)
          return each;
  return field;
}

} // namespace

void GivenMap::add(GivenMapping mapping) {
  all_.push_back(std::move(mapping));
}

void GivenMap::add(const GivenMap& other) {
  all_.insert(all_.end(), other.all_.begin(), other.all_.end());
}

const GivenMapping* GivenMap::find(std::string_view heading) const {
  const std::string wanted = plain(heading);
  for (const GivenMapping& each : all_)
    if (each.heading == wanted)
      return &each;
  return nullptr;
}

std::optional<std::size_t> GivenMap::which(std::string_view heading, TableKind table) const {
  const std::string wanted = plain(heading);
  std::optional<std::size_t> first;
  for (std::size_t i = 0; i < all_.size(); ++i) {
    if (all_[i].heading != wanted)
      continue;
    if (all_[i].field && spec(*all_[i].field).table == table)
      return i;
    if (!first)
      first = i;
  }
  return first;
}

std::optional<GivenMapping> GivenMap::find(std::string_view heading, TableKind table) const {
  const auto at = which(heading, table);
  if (!at)
    return std::nullopt;
  GivenMapping given = all_[*at];
  if (given.field)
    given.field = in_table(*given.field, table);
  return given;
}

Result<GivenMap> read_given_map(const Table& table) {
  constexpr std::size_t nowhere = static_cast<std::size_t>(-1);
  for (std::size_t row = 0; row < table.rows(); ++row) {
    std::size_t heading = nowhere;
    std::size_t field = nowhere;
    std::size_t unit = nowhere;
    for (std::size_t column = 0; column < table.columns(); ++column) {
      const std::string word = plain(to_text(table.at(row, column)));
      heading = word == "heading" ? column : heading;
      field = word == "field" ? column : field;
      unit = word == "unit" ? column : unit;
    }
    if (heading == nowhere || field == nowhere)
      continue;
    GivenMap map;
    for (++row; row < table.rows(); ++row) {
      const std::string meant = to_text(table.at(row, field));
      const std::string named = to_text(table.at(row, heading));
      if (plain(meant).empty() || plain(named).empty())
        continue;
      auto given = mapping_from(table.place(row, field), named, meant,
                                unit == nowhere ? std::string() : to_text(table.at(row, unit)));
      if (!given)
        return given.error();
      map.add(std::move(given).value());
    }
    return map;
  }
  return not_enough(fmt::format("{}: no row has the headings Heading and Field.", table.sheet()));
}

std::string meaning_word(const std::optional<Field>& field, Part part,
                         const std::optional<CountColumn>& count) {
  if (field)
    return fmt::format("{}: {}", spec(spec(*field).table).sheet, spec(*field).heading);
  if (count)
    return fmt::format("Life: {}, {}", count->species, count->seen_as);
  for (const PartWord& each : part_words)
    if (each.part == part)
      return std::string(each.word);
  return {};
}

std::vector<std::string> meaning_words() {
  std::vector<std::string> words{std::string(leave_alone_word)};
  for (const TableKind kind : record_tables)
    for (const FieldSpec& field : fields(kind))
      if (field.role == Role::typed)
        words.push_back(meaning_word(field.field, Part::none, std::nullopt));
  for (const PartWord& each : part_words)
    words.emplace_back(each.word);
  return words;
}

} // namespace wetspell
