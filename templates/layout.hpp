// How the fields of the catalogue stand on a sheet: widths and the bands that group the columns.
// Words and meaning come from the catalogue; here is only what a page needs besides.
#pragma once

#include "look.hpp"
#include "season/field.hpp"

#include <cstddef>
#include <cstdint>
#include <string_view>

namespace wetspell::workbook {

struct FieldLayout {
  double width;          ///< cm
  std::string_view band; ///< begins a new band with this title; empty: belongs to the band before
  bool new_page = false; ///< on paper, a new page begins at this column
};
FieldLayout layout(Field field);

/// Where a table stands in the template. All tables but settings and classes have a sheet of their own.
struct TableLayout {
  std::size_t heading_row;  ///< from 0
  std::size_t first_column; ///< from 0
  std::size_t rows;         ///< rows ready to be filled
  std::size_t frozen_columns;
  std::size_t printed_least; ///< rows that a print shows even when they are empty
  std::string_view tab_colour;
  PageLook page;
};
const TableLayout& layout(TableKind table);

/// Column of a field on its sheet, from 0. Two sheets have a column that is no field: the visits begin with a
/// mark that stays in view and says in a word whether the row is worth another look (it must not stand among
/// the typed columns, which the formula of the doubts takes as one range); the settings have the value in
/// use between the typed value and its help.
std::size_t column_of(Field field);
inline constexpr std::size_t mark_column = 0;
inline constexpr std::size_t in_use_column = 3;
inline constexpr std::size_t caution_column = 6;
/// The first column behind a table's own.
std::size_t beside(TableKind table);

/// Whose a column is. The catalogue's roles, with `check` told apart by what the table uses it for.
enum class Part : std::uint8_t { you_type, worked_out, look_again, written, reading };
Part part(const FieldSpec& field);
/// "YOU TYPE", "WORKED OUT", "LOOK AGAIN", "WETSPELL WRITES", "TO READ"
std::string_view part_words(Part part);
Look cell_look(const FieldSpec& field);
Look heading_look(Part part);
Look band_look(Part part);

} // namespace wetspell::workbook
