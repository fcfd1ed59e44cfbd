#include "record_sheet.hpp"

#include "entry.hpp"
#include "formula.hpp"
#include "layout.hpp"

#include <fmt/format.h>

#include <utility>

namespace wetspell::workbook {
namespace {

constexpr double title_height = 1.3, band_height = 0.6, heading_height = 1.5;

constexpr double widest_title = 4.2; // cm, "Findings"

/// The title, and the explanation beside it: behind the title and the columns that stay in view, because text
/// that runs across their edge is cut off when the others move.
SheetRow title_row(const Sheet& sheet, std::string title, std::string explanation) {
  SheetRow row{title_height, {text_cell(Look::title, std::move(title))}, 1};
  double behind = 0;
  for (std::size_t column = 0; behind < widest_title || column < sheet.frozen_columns; ++column) {
    behind += sheet.columns[column].width;
    row.cells.emplace_back();
  }
  row.cells.back() = text_cell(Look::subtitle, std::move(explanation));
  return row;
}

} // namespace

SheetCell text_cell(Look look, std::string text) {
  SheetCell cell;
  cell.look = look;
  cell.holds = text.empty() ? Holds::nothing : Holds::text;
  cell.text = std::move(text);
  return cell;
}

SheetCell formula_cell(Look look, std::string formula) {
  SheetCell cell;
  cell.look = look;
  cell.holds = formula.empty() ? Holds::nothing : Holds::formula;
  cell.text = std::move(formula);
  return cell;
}

std::string unit_name(const FieldSpec& field) {
  if (field.type != FieldType::quantity)
    return {};
  switch (field.kind) {
  case Kind::temperature:
    return "unit_temperature";
  case Kind::depth:
    return "unit_depth";
  case Kind::length:
    return "unit_length";
  case Kind::area:
    return "unit_area";
  default:
    return {};
  }
}

SheetCell band_cell(const FieldSpec& field) {
  const std::string_view title = layout(field.field).band;
  std::string text;
  if (!title.empty())
    text = fmt::format("{} · {}", part_words(part(field)), title);
  return text_cell(band_look(part(field)), std::move(text));
}

SheetCell heading_cell(const FieldSpec& field) {
  const Look look = heading_look(part(field));
  // Class limits are kept in the unit of the common classes, whatever the workbook's units are.
  if (field.table == TableKind::depth_classes && field.type == FieldType::quantity)
    return text_cell(look, fmt::format("{} (in)", field.heading));
  if (field.type == FieldType::quantity && field.kind == Kind::percent)
    return text_cell(look, fmt::format("{} (%)", field.heading));
  if (const std::string unit = unit_name(field); !unit.empty())
    return formula_cell(look,
                        fmt::format("{}&{}&\")\"", text_literal(fmt::format("{} (", field.heading)), unit));
  return text_cell(look, std::string(field.heading));
}

SheetCell body_cell(const FieldSpec& field, std::size_t index, const Filling& filling,
                    const RowFormula& formula) {
  SheetCell cell;
  cell.look = cell_look(field);
  cell.entry = entry_name(field.field);
  const Cell& given = filling.at(field.field, index);
  if (!given.empty())
    put(cell, given, cell.look);
  else if (field.role != Role::typed)
    if (std::string text = formula(field.field, layout(field.table).heading_row + 1 + index); !text.empty()) {
      cell.holds = Holds::formula;
      cell.text = std::move(text);
    }
  return cell;
}

void add_room(Sheet& sheet, double width) {
  sheet.columns.push_back({width});
  sheet.print->last_column = sheet.columns.size() - 1;
}

Sheet record_sheet(TableKind table, std::string explanation, const Filling& filling,
                   const RowFormula& formula) {
  const TableSpec& what = spec(table);
  const TableLayout& where = layout(table);
  Sheet sheet;
  sheet.name = what.sheet;
  sheet.tab_colour = where.tab_colour;
  sheet.page = where.page;
  sheet.frozen_columns = where.frozen_columns;
  sheet.frozen_rows = where.heading_row + 1;
  sheet.repeat_columns = where.page == PageLook::very_wide ? where.frozen_columns : 0;
  sheet.repeat_from = where.heading_row - 1;
  sheet.repeat_to = where.heading_row + 1;
  SheetRow bands{band_height, {}, 1};
  SheetRow headings{heading_height, {}, 1};
  for (const FieldSpec& field : fields(table)) {
    const FieldLayout look = layout(field.field);
    sheet.columns.push_back({look.width, Look::page, look.new_page});
    bands.cells.push_back(band_cell(field));
    headings.cells.push_back(heading_cell(field));
  }
  const std::size_t columns = sheet.columns.size();
  sheet.rows.push_back(title_row(sheet, std::string(what.sheet), std::move(explanation)));
  sheet.rows.push_back(std::move(bands));
  sheet.rows.push_back(std::move(headings));
  for (std::size_t index = 0; index < filling.ready(table); ++index) {
    SheetRow row;
    for (const FieldSpec& field : fields(table))
      row.cells.push_back(body_cell(field, index, filling, formula));
    sheet.rows.push_back(std::move(row));
  }
  sheet.print = Range{0, 0, columns - 1, where.heading_row + filling.printed(table)};
  return sheet;
}

} // namespace wetspell::workbook
