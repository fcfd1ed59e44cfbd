#include "audit/audit_tables.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <initializer_list>

namespace wetspell {

namespace {

constexpr std::size_t reasons_told = 5;

std::string rows(std::size_t count) {
  return fmt::format("{} {}", count, count == 1 ? "row" : "rows");
}

/// Rows of texts and numbers, growing.
class Sheet {
public:
  explicit Sheet(std::size_t columns) : columns_(columns) {}
  void add(std::vector<Cell> cells) {
    cells.resize(columns_);
    rows_.push_back(std::move(cells));
  }
  void add(std::initializer_list<std::string> texts) {
    std::vector<Cell> cells;
    for (const std::string& text : texts)
      cells.push_back(Cell::of_text(text));
    add(std::move(cells));
  }
  [[nodiscard]] Table table(Place origin) && {
    Table table(std::move(origin), rows_.size(), columns_);
    for (std::size_t row = 0; row < rows_.size(); ++row)
      for (std::size_t column = 0; column < columns_; ++column)
        table.at(row, column) = std::move(rows_[row][column]);
    return table;
  }

private:
  std::size_t columns_;
  std::vector<std::vector<Cell>> rows_;
};

std::string columns_of(const std::vector<Field>& fields) {
  std::string words;
  for (const Field field : fields)
    words += fmt::format("{}{} ({})", words.empty() ? "" : ", ", spec(field).heading,
                         spec(spec(field).table).sheet);
  return words;
}

Cell tidy_cell(const Cell& cell, const FieldSpec& field, Unit unit, const Settings& settings) {
  const bool measure = field.type == FieldType::quantity && unit != Unit::none;
  if (cell.kind != CellKind::number || !measure || unit == settings.unit_of(field.kind))
    return cell;
  return Cell::of_text(fmt::format("{} {}", cell.number, symbol(unit)));
}

} // namespace

std::vector<std::string> verdict_lines(const Audit& audit) {
  std::vector<std::string> lines;
  const auto ours = std::count_if(audit.tables.begin(), audit.tables.end(),
                                  [](const AuditedTable& table) { return table.kind.has_value(); });
  if (ours == 0) {
    lines.push_back(fmt::format("{}: no table of visits, animals, pools or people was found.", audit.file));
    return lines;
  }
  lines.push_back(fmt::format("{}: {} in {} {}.", audit.file, rows(audit.rows.all()), ours,
                              ours == 1 ? "table" : "tables"));
  lines.push_back(fmt::format("{} can be used as they are.", rows(audit.rows.usable)));
  lines.push_back(fmt::format("{} can be used once questions are answered.", rows(audit.rows.after_answers)));
  lines.push_back(
      fmt::format("{} cannot be used: no pool, day or animal can be read.", rows(audit.rows.unusable)));
  const std::size_t told = std::min(reasons_told, audit.reasons.size());
  if (told > 0)
    lines.emplace_back("The commonest reasons:");
  for (std::size_t i = 0; i < told; ++i)
    lines.push_back(fmt::format("{}: {}", rows(audit.reasons[i].rows), audit.reasons[i].words));
  for (const AuditedTable& table : audit.tables)
    if (!table.kind && table.records > 0)
      lines.push_back(fmt::format("The table of {} on {} from row {} is none of ours: {}.",
                                  rows(table.records), table.sheet, table.first_row, table.reason));
  return lines;
}

Table audit_table(const Audit& audit, Place origin) {
  constexpr std::size_t width = 7;
  Sheet sheet(width);
  for (const std::string& line : verdict_lines(audit))
    sheet.add({line});
  sheet.add({""});
  sheet.add({"What was found"});
  sheet.add({"Where", "Level", "Rule", "Value", "What is doubtful", "What to do", "Proposed"});
  for (const AuditFinding& each : audit.findings) {
    const Finding& finding = each.finding;
    std::string proposed;
    for (const Change& change : finding.changes)
      proposed += fmt::format("{}{} = {}", proposed.empty() ? "" : ", ", to_text(change.place),
                              to_text(change.content));
    sheet.add({to_text(finding.place), std::string(name(finding.rule->level)),
               std::string(finding.rule->name), finding.value, finding.message, finding.advice, proposed});
  }
  sheet.add({""});
  sheet.add({"What was left unread"});
  sheet.add({"Where", "Heading", "Text", "Why"});
  for (const Unread& unread : audit.unread)
    sheet.add({to_text(unread.place), unread.heading, unread.text, unread.reason});
  if (audit.unread.size() < audit.unread_count)
    sheet.add({fmt::format("{} more cells were left unread.", audit.unread_count - audit.unread.size())});
  sheet.add({""});
  sheet.add({"Rules that could not run"});
  sheet.add({"Rule", "What must hold", "Columns that are missing"});
  for (const LackingRule& lacking : audit.lacking)
    sheet.add({std::string(lacking.rule->name), std::string(lacking.rule->expectation),
               columns_of(lacking.missing)});
  sheet.add({""});
  sheet.add({"Rows passed over"});
  sheet.add({"Sheet", "Row", "What it is", "Text"});
  for (const AuditedTable& table : audit.tables)
    for (const AuditedRow& row : table.passed)
      sheet.add({table.sheet, std::to_string(row.row), std::string(name(row.use)), row.text});
  for (const std::string& remark : audit.remarks)
    sheet.add({remark});
  return std::move(sheet).table(std::move(origin));
}

Table headings_table(std::span<const Audit> audits, Place origin) {
  Sheet sheet(8);
  sheet.add({"File", "Sheet", "Column", "Heading", "Field", "Unit", "Confidence", "Reason"});
  for (const Audit& audit : audits)
    for (const AuditedTable& table : audit.tables)
      for (const AuditedColumn& column : table.columns) {
        const Mapping& m = column.mapping;
        if (m.heading.empty() && m.open())
          continue;
        std::vector<Cell> cells;
        for (const std::string& text :
             {audit.file, table.sheet, column.spot, m.heading, meaning_word(m.field, m.part, m.count),
              m.field ? std::string(symbol(m.unit)) : std::string()})
          cells.push_back(Cell::of_text(text));
        cells.push_back(Cell::of_number(std::round(m.confidence * 100) / 100));
        cells.push_back(Cell::of_text(m.reason));
        sheet.add(std::move(cells));
      }
  return std::move(sheet).table(std::move(origin));
}

std::vector<TidySheet> tidy_tables(const Audit& audit, const Settings& settings) {
  std::vector<TidySheet> sheets;
  if (!audit.season)
    return sheets;
  for (const TidyTable& tidy : audit.tidy) {
    const Located& at = audit.season->where(tidy.kind());
    const std::size_t columns = tidy.fields().size();
    Table table(Place{std::string(spec(tidy.kind()).name), 1, 0}, tidy.rows() + 1, columns + 1);
    for (std::size_t column = 0; column < columns; ++column) {
      const FieldSpec& field = spec(tidy.fields()[column]);
      table.at(0, column) = Cell::of_text(std::string(field.heading));
      for (std::size_t row = 0; row < tidy.rows(); ++row)
        table.at(row + 1, column) =
            tidy_cell(at.table->at(row + 1, column), field, tidy.unit(column), settings);
    }
    table.at(0, columns) = Cell::of_text("From");
    for (std::size_t row = 0; row < tidy.rows(); ++row)
      table.at(row + 1, columns) = Cell::of_text(to_text(audit.source(tidy, row)));
    sheets.push_back({tidy.kind(), std::move(table)});
  }
  return sheets;
}

} // namespace wetspell
