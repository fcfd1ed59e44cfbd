#include "audit/audit_tables.hpp"

#include "quantity/with_unit.hpp"

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

Cell tidy_cell(const Cell& cell, const FieldSpec& field, Unit unit, const Settings& settings) {
  const bool measure = field.type == FieldType::quantity && unit != Unit::none;
  return !measure || unit == settings.unit_of(field.kind) ? cell : with_unit(cell, field.kind, unit);
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
  lines.push_back(fmt::format("{} can be used as {}.", rows(audit.rows.usable),
                              audit.rows.usable == 1 ? "it is" : "they are"));
  lines.push_back(fmt::format("{} can be used once questions are answered.", rows(audit.rows.after_answers)));
  lines.push_back(fmt::format("{} cannot be used{}.", rows(audit.rows.unusable),
                              audit.rows.unusable == 0 ? "" : ": no pool, day or animal can be read"));
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

std::vector<TidySheet> tidy_tables(const Audit& audit, TidyColumns which) {
  std::vector<TidySheet> sheets;
  if (!audit.season)
    return sheets;
  for (const TidyTable& tidy : audit.tidy) {
    const Located& at = audit.season->where(tidy.kind());
    std::vector<Field> shown = tidy.fields();
    if (which == TidyColumns::all_typed) {
      shown.clear();
      for (const FieldSpec& field : fields(tidy.kind()))
        if (field.role == Role::typed)
          shown.push_back(field.field);
    }
    const std::size_t columns = shown.size();
    TidySheet sheet{tidy.kind(),
                    Table(Place{std::string(spec(tidy.kind()).name), 1, 0}, tidy.rows() + 1, columns + 1),
                    {},
                    tidy.states};
    for (std::size_t column = 0; column < columns; ++column) {
      const FieldSpec& field = spec(shown[column]);
      sheet.table.at(0, column) = Cell::of_text(std::string(field.heading));
      const std::int32_t found = tidy.column(shown[column]);
      if (found < 0)
        continue;
      const auto from = static_cast<std::size_t>(found);
      for (std::size_t row = 0; row < tidy.rows(); ++row)
        sheet.table.at(row + 1, column) =
            tidy_cell(at.table->at(row + 1, from), field, tidy.unit(from), audit.settings);
    }
    sheet.table.at(0, columns) = Cell::of_text("From");
    for (std::size_t row = 0; row < tidy.rows(); ++row) {
      sheet.from.push_back(audit.source(tidy, row));
      sheet.table.at(row + 1, columns) = Cell::of_text(to_text(sheet.from.back()));
    }
    sheets.push_back(std::move(sheet));
  }
  return sheets;
}

} // namespace wetspell
