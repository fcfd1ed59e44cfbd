#include "gather/row_words.hpp"

#include "season/locate.hpp"

#include <fmt/format.h>

#include <array>

namespace wetspell {

RowWords::RowWords(const Season& season) : season_(season), lookups_(lookups_of(season)) {}

std::span<const Field> RowWords::keys(TableKind table) {
  static constexpr std::array visits{Field::visit_pool, Field::visit_date, Field::visit_person};
  static constexpr std::array life{Field::life_pool, Field::life_date, Field::life_person,
                                   Field::life_species, Field::life_seen_as};
  if (table == TableKind::life)
    return life;
  return visits;
}

std::vector<std::string> RowWords::key(TableKind table, const std::vector<Cell>& cells) {
  std::vector<std::string> words;
  for (const Field field : keys(table))
    words.push_back(of(field, cells[position(field)]));
  return words;
}

std::string RowWords::reference(const FieldSpec& field, const Cell& cell) {
  std::string buffer;
  const auto code = [&](std::string_view known) { return std::string(plain_code(known, buffer)); };
  switch (field.type) {
  case FieldType::pool_ref:
    if (const Ref ref = lookups_.pools.find(cell); ref.known())
      return code(season_.pools[static_cast<std::size_t>(ref.index)].code);
    break;
  case FieldType::person_ref:
    if (const Ref ref = lookups_.people.find(cell); ref.known())
      return code(season_.people[static_cast<std::size_t>(ref.index)].code);
    break;
  default:
    if (const Ref ref = lookups_.species.find(cell); ref.known())
      return code(season_.species_names[static_cast<std::size_t>(ref.index)]);
  }
  return code(to_text(cell));
}

std::string RowWords::of(Field which, const Cell& cell) {
  if (!holds_something(cell))
    return {};
  const FieldSpec& field = spec(which);
  std::string buffer;
  std::string typed(plain_code(to_text(cell), buffer));
  switch (field.type) {
  case FieldType::pool_ref:
  case FieldType::person_ref:
  case FieldType::species_ref:
    return reference(field, cell);
  case FieldType::quantity: {
    const Quantity q = read(
        cell, {.kind = field.kind, .assume = season_.unit(which), .date_order = season_.settings.date_order});
    if (q.status == Status::bad || q.status == Status::blank || q.status == Status::missing)
      return typed;
    const bool counted = q.status == Status::paces || q.status == Status::steps;
    // Nine digits: what was typed comes back from a conversion with as many.
    return fmt::format("{} {:.9g} {:.9g}", static_cast<int>(q.status), counted ? q.written : q.si, q.si_high);
  }
  case FieldType::choice:
  case FieldType::depth_class:
  case FieldType::fill_class: {
    ChoiceIndex* words = &lookups_.depth_classes;
    if (field.type == FieldType::fill_class)
      words = &lookups_.fill_classes;
    else if (field.type == FieldType::choice)
      words = &words_.try_emplace(which, *field.choices).first->second;
    const Choice choice = words->find(to_text(cell));
    return choice.index == Choice::unreadable ? typed : fmt::format("{}", choice.index);
  }
  case FieldType::text:
  case FieldType::key:
    break;
  }
  return typed;
}

} // namespace wetspell
