// What a table needs so that it is one of ours.
#include "audit/mapper.hpp"

namespace wetspell {

Field pool_field(TableKind kind) {
  return kind == TableKind::visits ? Field::visit_pool
         : kind == TableKind::life ? Field::life_pool
                                   : Field::pool_code;
}

Field date_field(TableKind kind) {
  return kind == TableKind::life ? Field::life_date : Field::visit_date;
}

std::size_t pool_readings(const AsTable& table) {
  std::size_t count = 0;
  for (const Field field :
       {Field::visit_depth, Field::visit_fill, Field::visit_length, Field::visit_width, Field::visit_water,
        Field::visit_temperature_1, Field::visit_temperature_2, Field::visit_depth_class,
        Field::visit_isolated, Field::visit_inlet, Field::visit_outlet})
    count += table.has(field);
  return count;
}

bool is_possible(const AsTable& table, const Beside& beside) {
  const bool pool = table.has(pool_field(table.kind)) || beside.pool;
  const bool date = table.has(date_field(table.kind)) || beside.date;
  const std::size_t taken = table.taken.size();
  switch (table.kind) {
  case TableKind::visits: {
    const std::size_t others = taken - table.has(Field::visit_pool) - table.has(Field::visit_date);
    if (pool && date)
      return others >= 1 || beside.readings || beside.counts;
    return (pool || date) && others >= 4 && pool_readings(table) >= 3;
  }
  case TableKind::life:
    return pool && date && table.has(Field::life_species);
  case TableKind::pools:
    return table.has(Field::pool_code) && taken >= 2 && !date;
  case TableKind::people:
    return table.has(Field::person_code) && !pool && !date &&
           (table.has(Field::person_name) || table.has(Field::person_run_1) ||
            table.has(Field::person_course));
  default:
    return false;
  }
}

} // namespace wetspell
