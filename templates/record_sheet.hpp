// A sheet with one table, built from the catalogue: title, bands, headings, rows ready to be filled.
#pragma once

#include "filling.hpp"
#include "model.hpp"

#include <functional>
#include <string>

namespace wetspell::workbook {

/// The formula of a derived or check cell in a row of the sheet, from 0; empty: the cell stays empty.
using RowFormula = std::function<std::string(Field field, std::size_t row)>;

/// The heading's formula with the unit in force behind it, or nothing when the field has no unit.
std::string unit_name(const FieldSpec& field);

SheetCell text_cell(Look look, std::string text);
SheetCell formula_cell(Look look, std::string formula);

/// The cell above a column: "YOU TYPE · Water temperature", or blank where a band runs on.
SheetCell band_cell(const FieldSpec& field);
SheetCell heading_cell(const FieldSpec& field);
SheetCell body_cell(const FieldSpec& field, std::size_t index, const Filling& filling,
                    const RowFormula& formula);

/// Room beside a narrow table, so that the line above it is printed in full.
void add_room(Sheet& sheet, double width);

Sheet record_sheet(TableKind table, std::string explanation, const Filling& filling,
                   const RowFormula& formula);

} // namespace wetspell::workbook
