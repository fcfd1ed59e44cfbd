#include "fods_parts.hpp"

#include "formula.hpp"

#include "table/cell.hpp"
#include "table/table.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wetspell::workbook {
namespace {

std::string iso_time(double serial) {
  const long minutes = std::lround((serial - std::floor(serial)) * 24 * 60);
  return fmt::format("PT{:02}H{:02}M00S", minutes / 60, minutes % 60);
}

void paragraphs(Xml& xml, const SheetCell& cell) {
  std::size_t from = 0;
  while (from <= cell.text.size()) {
    const std::size_t end = std::min(cell.text.find('\n', from), cell.text.size());
    const std::string line = cell.text.substr(from, end - from);
    xml.open("text:p");
    if (cell.link.empty())
      xml.text(line);
    else
      xml.open_inline("text:a")
          .attribute("xlink:href", cell.link)
          .attribute("xlink:type", "simple")
          .text(line)
          .close()
          .text(cell.after_link);
    xml.close();
    from = end + 1;
  }
}

void content(Xml& xml, const SheetCell& cell) {
  switch (cell.holds) {
  case Holds::nothing:
    break;
  case Holds::text:
    xml.attribute("office:value-type", "string");
    paragraphs(xml, cell);
    break;
  case Holds::number:
    xml.attribute("office:value-type", "float")
        .attribute("office:value", to_text(Cell::of_number(cell.number)));
    break;
  case Holds::date:
    xml.attribute("office:value-type", "date")
        .attribute("office:date-value", to_text(Cell::of_date(cell.number)));
    break;
  case Holds::time:
    xml.attribute("office:value-type", "time").attribute("office:time-value", iso_time(cell.number));
    break;
  case Holds::formula: // without a result: the office works it out when it opens the file
    xml.attribute("table:formula", "of:=" + cell.text);
    break;
  }
}

bool same_blank(const SheetCell& a, const SheetCell& b) {
  return a.holds == Holds::nothing && b.holds == Holds::nothing && a.look == b.look && a.entry == b.entry &&
         a.across == 1 && a.down == 1 && b.across == 1 && b.down == 1;
}

void write_cell(Xml& xml, const SheetCell& cell, std::size_t repeated) {
  xml.open("table:table-cell").attribute("table:style-name", spec(cell.look).name);
  if (!cell.entry.empty())
    xml.attribute("table:content-validation-name", cell.entry);
  if (repeated > 1)
    xml.attribute("table:number-columns-repeated", repeated);
  if (cell.across > 1 || cell.down > 1)
    xml.attribute("table:number-columns-spanned", cell.across)
        .attribute("table:number-rows-spanned", cell.down);
  content(xml, cell);
  xml.close();
}

void write_row(Xml& xml, const SheetRow& row) {
  xml.open("table:table-row").attribute("table:style-name", row_style(row));
  if (row.repeated > 1)
    xml.attribute("table:number-rows-repeated", row.repeated);
  for (std::size_t at = 0; at < row.cells.size();) {
    std::size_t end = at + 1;
    while (end < row.cells.size() && same_blank(row.cells[at], row.cells[end]))
      ++end;
    write_cell(xml, row.cells[at], end - at);
    const std::size_t covered = row.cells[at].across - 1;
    if (covered > 0)
      xml.open("table:covered-table-cell").attribute("table:number-columns-repeated", covered).close();
    at = end + covered;
  }
  xml.close();
}

void write_columns(Xml& xml, const Sheet& sheet) {
  const auto column = [&](std::size_t at) {
    xml.open("table:table-column")
        .attribute("table:style-name", column_style(sheet.columns[at]))
        .attribute("table:default-cell-style-name", spec(sheet.columns[at].look).name);
    if (sheet.columns[at].hidden)
      xml.attribute("table:visibility", "collapse");
    xml.close();
  };
  std::size_t at = 0;
  for (; at < sheet.repeat_first; ++at)
    column(at);
  if (sheet.repeat_columns > 0) {
    xml.open("table:table-header-columns");
    for (; at < sheet.repeat_columns; ++at)
      column(at);
    xml.close();
  }
  for (; at < sheet.columns.size(); ++at)
    column(at);
}

std::string address(const std::string& sheet, const Range& range) {
  return fmt::format("{0}.{1}{2}:{0}.{3}{4}", sheet_in_reference(sheet), column_letters(range.first_column),
                     range.first_row + 1, column_letters(range.last_column), range.last_row + 1);
}

void write_look_rules(Xml& xml, const Sheet& sheet) {
  if (sheet.look_rules.empty())
    return;
  xml.open("calcext:conditional-formats");
  for (const LookRules& rules : sheet.look_rules) {
    xml.open("calcext:conditional-format").attribute("calcext:target-range-address", rules.range);
    for (const LookRule& rule : rules.rules)
      xml.open("calcext:condition")
          .attribute("calcext:apply-style-name", spec(rule.look).name)
          .attribute("calcext:value", fmt::format("formula-is({})", rule.condition))
          .attribute("calcext:base-cell-address", rules.first)
          .close();
    xml.close();
  }
  xml.close();
}

void write_sheet(Xml& xml, const Sheet& sheet) {
  xml.open("table:table")
      .attribute("table:name", sheet.name)
      .attribute("table:style-name", table_style(sheet));
  if (sheet.print)
    xml.attribute("table:print-ranges", address(sheet.name, *sheet.print));
  write_columns(xml, sheet);
  std::size_t at = 0; // counts rows as the sheet does
  for (const SheetRow& row : sheet.rows) {
    if (sheet.repeat_to > sheet.repeat_from && at == sheet.repeat_from)
      xml.open("table:table-header-rows");
    write_row(xml, row);
    at += row.repeated;
    if (sheet.repeat_to > sheet.repeat_from && at == sheet.repeat_to)
      xml.close();
  }
  write_look_rules(xml, sheet);
  xml.close();
}

void message(Xml& xml, std::string_view element, const std::string& title, const std::string& text,
             std::string_view type) {
  xml.open(element).attribute("table:title", title).attribute("table:display", "true");
  if (!type.empty())
    xml.attribute("table:message-type", type);
  xml.open("text:p").text(text).close();
  xml.close();
}

void write_entries(Xml& xml, const Workbook& workbook) {
  xml.open("table:content-validations");
  for (const EntryCheck& entry : workbook.entries) {
    xml.open("table:content-validation").attribute("table:name", entry.name);
    if (!entry.condition.empty())
      xml.attribute("table:condition", entry.condition);
    xml.attribute("table:allow-empty-cell", "true").attribute("table:base-cell-address", entry.base);
    if (entry.list)
      xml.attribute("table:display-list", "unsorted");
    message(xml, "table:help-message", entry.title, entry.help, {});
    if (!entry.refusal.empty())
      message(xml, "table:error-message", entry.title, entry.refusal, entry.stop ? "stop" : "warning");
    else if (!entry.condition.empty())
      xml.open("table:error-message").attribute("table:display", "false").close();
    xml.close();
  }
  xml.close();
}

void write_names(Xml& xml, const Workbook& workbook) {
  xml.open("table:named-expressions");
  for (const Name& name : workbook.names) {
    const bool range = name.expression.empty();
    xml.open(range ? "table:named-range" : "table:named-expression")
        .attribute("table:name", name.name)
        .attribute("table:base-cell-address", name.range.substr(0, name.range.find(':')))
        .attribute(range ? "table:cell-range-address" : "table:expression",
                   range ? name.range : "of:" + name.expression)
        .close();
  }
  xml.close();
}

void write_filters(Xml& xml, const Workbook& workbook) {
  xml.open("table:database-ranges");
  for (const Sheet& sheet : workbook.sheets)
    if (sheet.filter)
      xml.open("table:database-range")
          .attribute("table:name", "filter_" + sheet.name)
          .attribute("table:target-range-address", address(sheet.name, *sheet.filter))
          .attribute("table:display-filter-buttons", "true")
          .close();
  xml.close();
}

} // namespace

void write_body(Xml& xml, const Workbook& workbook) {
  xml.open("office:body").open("office:spreadsheet");
  xml.open("table:calculation-settings")
      .attribute("table:case-sensitive", "false")
      .attribute("table:search-criteria-must-apply-to-whole-cell", "true")
      .attribute("table:use-regular-expressions", "false")
      .attribute("table:use-wildcards", "true")
      .attribute("table:automatic-find-labels", "false")
      .close();
  write_entries(xml, workbook);
  for (const Sheet& sheet : workbook.sheets)
    write_sheet(xml, sheet);
  write_names(xml, workbook);
  write_filters(xml, workbook);
  xml.close().close();
}

} // namespace wetspell::workbook
