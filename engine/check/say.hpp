// Words and numbers for messages, in the season's own units.
#pragma once

#include "check/rule.hpp"

#include <string>

namespace wetspell {

/// What stands in the cell, in double quotes, cut after some 40 bytes.
std::string as_typed(const SeasonView& view, Field field, std::uint32_t row);

/// A value in the unit in which the season writes this kind: "64 in".
std::string say(const SeasonView& view, Kind kind, double si);
/// A difference in the same unit: no zero offset.
std::string say_difference(const SeasonView& view, Kind kind, double si);
/// A reading as it was meant: in the unit it was typed in.
std::string say(const Quantity& quantity);

/// "1 day", "12 days".
std::string say_days(double days);
/// "1 minute", "25 minutes", "6 hours 20 minutes".
std::string say_minutes(double minutes);

/// The heading of a field's column, as the catalogue has it.
std::string_view heading(Field field);

/// The code of the visit's pool; "the pool" when it is not known.
std::string pool_of(const SeasonView& view, const Visit& visit);

/// "pool B07 on 2026-04-18"; the words as typed where the pool or the day is not known, less where they are
/// blank.
std::string pool_and_day(const SeasonView& view, const Visit& visit);

/// The row as the sheet numbers it.
std::size_t sheet_row(const SeasonView& view, Field field, std::uint32_t row);

/// A doubt in short.
Doubt doubt(Field field, std::string message, std::vector<Field> behind = {},
            std::vector<Proposal> proposals = {});

/// A cell that holds a value with its unit written out: "64 cm". Text, because the cell's own unit is
/// another.
Cell with_unit(double written, Unit unit);

} // namespace wetspell
