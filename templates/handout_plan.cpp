#include "handout_plan.hpp"

#include "formula.hpp"
#include "layout.hpp"
#include "table/table.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace wetspell::workbook {

namespace {

/// A mean belongs to notes on paper; paces are the person's own.
constexpr std::array left_out{Field::visit_temperature_mean, Field::visit_paced_by};

std::vector<Field> typed_columns(const Season& season, TableKind table) {
  std::vector<Field> columns;
  for (const FieldSpec& field : fields(table)) {
    const bool used = !season.where(table).found() || season.has(field.field);
    if (field.role == Role::typed && used &&
        std::find(left_out.begin(), left_out.end(), field.field) == left_out.end())
      columns.push_back(field.field);
  }
  return columns;
}

constexpr std::array listed{Field::person_code, Field::species_name, Field::depth_class_label,
                            Field::fill_class_label};

std::vector<std::string> labels(const ClassTable& table) {
  std::vector<std::string> words;
  for (const ClassRow& row : table.rows)
    words.push_back(row.label);
  if (!table.not_known.empty())
    words.push_back(table.not_known);
  return words;
}

} // namespace

std::vector<std::size_t> handout_pools(const Season& season, std::size_t person) {
  std::vector<bool> been(season.pools.size(), false);
  const auto is = [&](const Ref& ref) {
    return ref.known() && static_cast<std::size_t>(ref.index) == person;
  };
  for (const Visit& visit : season.visits)
    if (visit.pool.known() && (is(visit.person) || is(visit.second_person)))
      been[static_cast<std::size_t>(visit.pool.index)] = true;
  const bool any = std::find(been.begin(), been.end(), true) != been.end();
  std::vector<std::size_t> pools;
  for (std::size_t pool = 0; pool < been.size(); ++pool)
    if (been[pool] || !any)
      pools.push_back(pool);
  return pools;
}

HandoutPlan::HandoutPlan(const Season& of, std::size_t whom, std::span<const Question> asked)
    : season(of), person(whom), questions(asked), pools(handout_pools(of, whom)),
      visits(typed_columns(of, TableKind::visits)), life(typed_columns(of, TableKind::life)) {}

const std::vector<Field>& HandoutPlan::columns(TableKind table) const {
  return table == TableKind::visits ? visits : life;
}

std::optional<std::size_t> HandoutPlan::column(Field field) const {
  const auto& all = columns(spec(field).table);
  const auto found = std::find(all.begin(), all.end(), field);
  if (found == all.end())
    return std::nullopt;
  return static_cast<std::size_t>(found - all.begin()) + 1;
}

namespace handout {

std::string heading(const FieldSpec& field, const Settings& settings) {
  const Unit unit = field.type == FieldType::quantity ? settings.unit_of(field.kind) : Unit::none;
  return unit == Unit::none ? std::string(field.heading)
                            : fmt::format("{} ({})", field.heading, symbol(unit));
}

std::span<const Field> listed_fields() {
  return listed;
}

std::vector<std::string> offered_words(const HandoutPlan& plan, Field declared) {
  const Season& season = plan.season;
  std::vector<std::string> words;
  switch (declared) {
  case Field::pool_code:
    for (const std::size_t pool : plan.pools)
      words.push_back(season.pools[pool].code);
    return words;
  case Field::person_code: // codes only: names of others are theirs to give
    for (const Person& person : season.people)
      words.push_back(person.code);
    return words;
  case Field::species_name:
    return season.species_names;
  case Field::depth_class_label:
    return labels(season.depth_classes);
  case Field::fill_class_label:
    return labels(season.fill_classes);
  default:
    return words;
  }
}

std::string offered(const HandoutPlan& plan, Field declared) {
  const std::size_t count = std::max<std::size_t>(offered_words(plan, declared).size(), 1);
  if (declared == Field::pool_code)
    return fmt::format("[{}]", fixed_range(you_name, 0, pool_heading_row + 1, 0, pool_heading_row + count));
  const auto at =
      static_cast<std::size_t>(std::find(listed.begin(), listed.end(), declared) - listed.begin());
  const std::size_t column = first_list_column + at;
  return fmt::format("[{}]", fixed_range(words_name, column, first_row, column, first_row + count - 1));
}

std::string typed_in_row(const HandoutPlan& plan, TableKind table, std::size_t row) {
  const std::size_t last = plan.columns(table).size();
  const Field person = table == TableKind::visits ? Field::visit_person : Field::life_person;
  const auto at = plan.column(person);
  if (at && *at > 1 && *at < last)
    return here(1, *at - 1, row) + ";" + here(*at + 1, last, row);
  return here(at == 1U ? 2 : 1, at == last ? last - 1 : last, row);
}

std::string number(double value) {
  return to_text(Cell::of_number(value));
}

} // namespace handout

} // namespace wetspell::workbook
