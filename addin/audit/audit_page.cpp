#include "audit/audit_page.hpp"

#include "audit/audit_sheet.hpp"
#include "audit/blocks.hpp"
#include "audit/links.hpp"
#include "base/text.hpp"
#include "sheet/strip.hpp"
#include "summary/blocks.hpp"
#include "summary/look.hpp"

#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/sheet/XPrintAreas.hpp>

#include <algorithm>
#include <array>
#include <map>

namespace wetspell::addin {

using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

constexpr sal_Int32 lineHeight = 520; // 1/100 mm
constexpr std::array<sal_Int32, audit_columns> widths{3600, 1500, 4200, 8200, 7200, 3800, 4200};

Dress dressOf(AuditLine line) {
  switch (line) {
  case AuditLine::title:
    return Dress::title;
  case AuditLine::verdict:
  case AuditLine::section:
    return Dress::section;
  case AuditLine::words:
    return Dress::words;
  case AuditLine::heading:
    return Dress::heading;
  case AuditLine::body:
    break;
  }
  return Dress::text;
}

/// Rows of one kind, from one row to the next of another kind.
void layOut(const SheetDocument& document, const Corner& corner, const std::vector<AuditLine>& lines) {
  for (std::size_t column = 0; column < widths.size(); ++column)
    setWidth(corner.at(0, column), widths[column]);
  setHeights(corner.range(1, lines.size()), lineHeight);
  setHeights(corner.range(1, 1), 2 * lineHeight);
  std::map<AuditLine, std::vector<css::table::CellRangeAddress>> parts;
  for (std::size_t first = 0; first < lines.size();) {
    std::size_t end = first + 1;
    while (end < lines.size() && lines[end] == lines[first])
      ++end;
    parts[lines[first]].push_back(addressOf(corner.at(first, 0).range(audit_columns, end - first)));
    first = end;
  }
  for (const auto& [line, cells] : parts)
    dress(together(document, cells), dressOf(line));
  // What was typed in the old sheet stays the text it was there; the first column has formulas.
  for (css::table::CellRangeAddress& body : parts[AuditLine::body])
    ++body.StartColumn;
  if (!parts[AuditLine::body].empty())
    setFormat(together(document, parts[AuditLine::body]), textFormat(document));
}

/// Sentences are wrapped. Finding a row's height takes about a millisecond, so far down they are on one line.
void wrapSentences(const Corner& corner, const std::vector<AuditLine>& lines) {
  constexpr std::size_t looked = 500;
  const auto first =
      static_cast<std::size_t>(std::find(lines.begin(), lines.end(), AuditLine::heading) - lines.begin());
  if (first >= lines.size())
    return;
  const std::size_t count = std::min(looked, lines.size() - first);
  wrap(corner.at(first, 2).range(audit_columns - 2, count));
  findHeights(corner.at(first, 0).range(1, count));
}

std::string nameOfSheet(const Corner& corner) {
  return fromOffice(Reference<css::container::XNamed>(corner.sheet, UNO_QUERY_THROW)->getName());
}

} // namespace

void writeAuditPage(const SheetDocument& document, const Audit& audit) {
  const AuditSheet sheet = audit_sheet(audit);
  const std::size_t rows = sheet.cells.rows();
  const Corner corner = takeBlock(document, auditBlock, "Audit", audit_columns, rows);
  layOut(document, corner, sheet.lines);
  putCells(document, corner, sheet.cells);
  std::vector<Link> links(rows);
  for (std::size_t row = 0; row < rows; ++row) {
    links[row] = {to_text(sheet.cells.at(row, 0)), sheet.leads_to[row]};
    if (auto& to = links[row].to; to && to->sheet.empty())
      to = Place{nameOfSheet(corner), to->row + static_cast<std::size_t>(corner.row),
                 static_cast<std::size_t>(corner.column)};
  }
  putLinks(document, corner, links);
  wrapSentences(corner, sheet.lines);
  const auto area = addressOf(corner.range(audit_columns, rows));
  Reference<css::sheet::XPrintAreas>(corner.sheet, UNO_QUERY_THROW)->setPrintAreas({&area, 1});
  setPage(document, corner.sheet, PageKind::one_wide);
}

} // namespace wetspell::addin
