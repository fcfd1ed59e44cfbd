#include "season/season.hpp"

#include "season/locate.hpp"
#include "season/read_parts.hpp"

namespace wetspell {

bool Season::has(Field field) const {
  const Located& at = where(spec(field).table);
  return at.found() && at.columns[position(field)] >= 0;
}

const Cell& Season::cell(Field field, std::uint32_t row) const {
  static const Cell none;
  const Located& at = where(spec(field).table);
  if (!at.found())
    return none;
  const std::int32_t column = at.columns[position(field)];
  if (column < 0 || row >= at.table->rows())
    return none;
  return at.table->at(row, static_cast<std::size_t>(column));
}

std::optional<Place> Season::place(Field field, std::uint32_t row) const {
  if (!has(field))
    return std::nullopt;
  const Located& at = where(spec(field).table);
  return at.table->place(row, static_cast<std::size_t>(at.columns[position(field)]));
}

Unit Season::unit(Field field) const {
  const FieldSpec& s = spec(field);
  if (s.type != FieldType::quantity)
    return Unit::none;
  const Located& at = where(s.table);
  return at.found() ? at.units[position(field)] : settings.unit_of(s.kind);
}

Result<Season> read_season(std::vector<Table> sheets, double today) {
  Season season;
  season.sheets.reserve(sheets.size());
  for (Table& sheet : sheets)
    season.sheets.push_back(std::make_unique<Table>(std::move(sheet)));
  locate_tables(season);
  if (!season.where(TableKind::visits).found())
    return Problem{
        ProblemKind::not_enough,
        "No table of visits was found. It is known by its headings: at least Pool, Date, and one of "
        "the readings, such as Depth or Temperature 1, in one row."};
  read_settings(season, today);
  read_classes(season);
  settle_units(season);
  read_species(season);
  read_limits(season);
  read_records(season);
  return season;
}

} // namespace wetspell
