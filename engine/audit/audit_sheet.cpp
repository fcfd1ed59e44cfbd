#include "audit/audit_sheet.hpp"

#include "audit/audit_tables.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <initializer_list>
#include <map>

namespace wetspell {

namespace {

constexpr std::size_t longest_quoted = 200, longest_sentence = 1000;

/// Nobody reads a page of text in a list, and a row would be as high as a screen.
std::string shortened(const std::string& text, std::size_t longest = longest_quoted) {
  if (text.size() <= longest)
    return text;
  std::size_t end = longest;
  while (end > 0 && (static_cast<unsigned char>(text[end]) >> 6) == 0x2) // not within a letter
    --end;
  return text.substr(0, end) + " …";
}

class Writer {
public:
  std::size_t add(AuditLine line, std::initializer_list<std::string> texts,
                  std::optional<Place> leads_to = std::nullopt) {
    std::vector<Cell>& cells = rows_.emplace_back();
    for (const std::string& text : texts)
      cells.push_back(Cell::of_text(shortened(text, longest_sentence)));
    cells.resize(audit_columns);
    lines_.push_back(line);
    leads_.push_back(std::move(leads_to));
    return rows_.size() - 1;
  }
  /// A line that leads to a part further down, whose row is not known yet.
  void promise(std::size_t part, const std::string& words) {
    promised_.emplace(part, add(AuditLine::words, {words}));
  }
  void begin(std::size_t part, const std::string& title, std::initializer_list<std::string> headings) {
    add(AuditLine::body, {});
    const std::size_t row = add(AuditLine::section, {title});
    if (const auto promised = promised_.find(part); promised != promised_.end())
      leads_[promised->second] = Place{{}, row + 1, 0};
    add(AuditLine::heading, headings);
    told_ = 0;
  }
  /// Whether the part has room for one more; a line says so where it has not.
  bool room(std::size_t all) {
    if (told_++ < audit_lines_told)
      return true;
    if (told_ == audit_lines_told + 1)
      add(AuditLine::words, {fmt::format("{} more are not listed here; the report for programs has them all.",
                                         all - audit_lines_told)});
    return false;
  }
  AuditSheet sheet() && {
    AuditSheet sheet{Table(Place{}, rows_.size(), audit_columns), std::move(lines_), std::move(leads_)};
    for (std::size_t row = 0; row < rows_.size(); ++row)
      for (std::size_t column = 0; column < audit_columns; ++column)
        sheet.cells.at(row, column) = std::move(rows_[row][column]);
    return sheet;
  }

private:
  std::vector<std::vector<Cell>> rows_;
  std::vector<AuditLine> lines_;
  std::vector<std::optional<Place>> leads_;
  std::map<std::size_t, std::size_t> promised_; ///< part to the row that leads there
  std::size_t told_ = 0;
};

enum Part : std::size_t { findings, unread, passed, lacking };

std::string proposed(const Finding& finding) {
  std::string words;
  for (const Change& change : finding.changes)
    words +=
        fmt::format("{}{} = {}", words.empty() ? "" : ", ", to_text(change.place), to_text(change.content));
  return words;
}

std::string columns_of(const std::vector<Field>& fields) {
  std::string words;
  for (const Field field : fields)
    words += fmt::format("{}{} ({})", words.empty() ? "" : ", ", spec(field).heading,
                         spec(spec(field).table).sheet);
  return words;
}

struct Rules {
  std::string names, hold;
};

/// One column often keeps many rules from running.
std::map<std::string, Rules> lacking_by_columns(const Audit& audit) {
  std::map<std::string, Rules> all;
  for (const LackingRule& each : audit.lacking) {
    Rules& rules = all[columns_of(each.missing)];
    rules.names += fmt::format("{}{}", rules.names.empty() ? "" : ", ", each.rule->name);
    rules.hold += fmt::format("{}{}.", rules.hold.empty() ? "" : " ", each.rule->expectation);
  }
  return all;
}

std::size_t passed_rows(const Audit& audit) {
  std::size_t rows = 0;
  for (const AuditedTable& table : audit.tables)
    rows += static_cast<std::size_t>(
        std::count_if(table.passed.begin(), table.passed.end(),
                      [](const AuditedRow& row) { return row.use != RowUse::blank; }));
  return rows;
}

/// Where a row that is no record stands; a column where the table is turned.
Place place_of(const AuditedTable& table, const Frame& frame, const AuditedRow& row) {
  return frame.turned ? Place{table.sheet, table.first_row, row.row - 1} : Place{table.sheet, row.row, 0};
}

void first_screen(Writer& writer, const Audit& audit) {
  writer.add(AuditLine::title, {"Audit"});
  constexpr std::size_t counts = 4; // sentences: all rows, and what becomes of them
  const auto verdict = verdict_lines(audit);
  for (std::size_t i = 0; i < verdict.size(); ++i)
    writer.add(i < counts ? AuditLine::verdict : AuditLine::words, {verdict[i]});
  if (!audit.findings.empty())
    writer.promise(findings, fmt::format("To what the check found ({})", audit.findings.size()));
  if (audit.unread_count > 0)
    writer.promise(unread, fmt::format("To the cells that were left unread ({})", audit.unread_count));
  if (passed_rows(audit) > 0)
    writer.promise(passed, fmt::format("To the rows that are no records ({})", passed_rows(audit)));
  if (!audit.lacking.empty())
    writer.promise(lacking, fmt::format("To the rules that could not run ({})", audit.lacking.size()));
  for (const std::string& remark : audit.remarks)
    writer.add(AuditLine::words, {remark});
}

} // namespace

AuditSheet audit_sheet(const Audit& audit) {
  Writer writer;
  first_screen(writer, audit);
  if (!audit.findings.empty())
    writer.begin(
        findings, "What was found",
        {"Where", "Level", "What stands there", "What is doubtful", "What to do", "Proposed", "Rule"});
  for (const AuditFinding& each : audit.findings) {
    const Finding& finding = each.finding;
    if (writer.room(audit.findings.size()))
      writer.add(AuditLine::body,
                 {to_text(finding.place), std::string(name(finding.rule->level)), shortened(finding.value),
                  finding.message, finding.advice, proposed(finding), std::string(finding.rule->name)},
                 finding.place);
  }
  if (audit.unread_count > 0)
    writer.begin(unread, "What was left unread", {"Where", "", "What stands there", "Why", "Heading"});
  for (const Unread& each : audit.unread)
    if (writer.room(audit.unread_count))
      writer.add(AuditLine::body, {to_text(each.place), "", shortened(each.text), each.reason, each.heading},
                 each.place);
  const std::size_t all_passed = passed_rows(audit);
  if (all_passed > 0)
    writer.begin(passed, "Rows that are no records", {"Where", "", "What stands there", "What it is"});
  for (std::size_t t = 0; t < audit.tables.size(); ++t)
    for (const AuditedRow& row : audit.tables[t].passed) {
      if (row.use == RowUse::blank || !writer.room(all_passed))
        continue;
      const Place place = place_of(audit.tables[t], audit.frames[t], row);
      writer.add(AuditLine::body, {to_text(place), "", shortened(row.text), std::string(name(row.use))},
                 place);
    }
  if (!audit.lacking.empty())
    writer.begin(lacking, "Rules that could not run",
                 {"Columns that are missing", "", "", "What must hold", "Rules"});
  for (const auto& [columns, rules] : lacking_by_columns(audit))
    writer.add(AuditLine::body, {columns, "", "", rules.hold, rules.names});
  return std::move(writer).sheet();
}

} // namespace wetspell
