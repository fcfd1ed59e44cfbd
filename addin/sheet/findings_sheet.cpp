#include "sheet/findings_sheet.hpp"

#include "check/findings_table.hpp"
#include "sheet/add_sheet.hpp"
#include "sheet/cells.hpp"
#include "sheet/findings_look.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/util/XProtectable.hpp>

#include <algorithm>
#include <set>

namespace wetspell::addin {

namespace {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using Target = FindingsTarget;

std::optional<Target> targetIn(const SheetDocument& document, const Season& season) {
  const Located& where = season.where(TableKind::findings);
  if (!where.found())
    return std::nullopt;
  Target target{sheetNamed(document, where.table->sheet()), {}, 0, 0};
  for (const std::int32_t at : where.columns)
    target.columns.push_back(
        at < 0 ? -1 : static_cast<sal_Int32>(where.table->sheet_column(static_cast<std::size_t>(at))));
  target.first = static_cast<sal_Int32>(where.table->sheet_row(where.first_row)) - 1;
  target.end = std::max(target.first, static_cast<sal_Int32>(where.table->sheet_row(where.end_row)) - 1);
  return target;
}

/// A plain findings sheet for a document that was not made from the template.
Target newTarget(const SheetDocument& document) {
  const std::string name = addSheet(document, std::string(spec(TableKind::findings).sheet));
  Target target{sheetNamed(document, name), {}, 1, 1};
  const auto columns = fields(TableKind::findings);
  for (std::size_t i = 0; i < columns.size(); ++i) {
    const Place heading{name, 1, i};
    write(document, heading, Cell::of_text(std::string(columns[i].heading)));
    Reference<css::beans::XPropertySet>(cellAt(document, heading), UNO_QUERY_THROW)
        ->setPropertyValue("CharWeight", Any(150.0F));
    target.columns.push_back(static_cast<sal_Int32>(i));
    layOut(document, target, target.columns.back(), columns[i].field);
  }
  return target;
}

void requireUnprotected(const Target& target) {
  if (Reference<css::util::XProtectable>(target.sheet, UNO_QUERY_THROW)->isProtected())
    refuse("The findings sheet is protected; nothing was written. Take its protection off first.");
}

void clear(const Target& target) {
  if (target.end <= target.first)
    return;
  for (const sal_Int32 at : target.columns)
    if (at >= 0)
      clearCells(target.column(at, target.first, target.end));
}

/// Columns of the findings that stand side by side on the sheet, as they do unless the person moved them.
struct Block {
  std::size_t begin, end; ///< indices into Target::columns
};

std::vector<Block> blocksOf(const Target& target) {
  std::vector<Block> blocks;
  for (std::size_t c = 0; c < target.columns.size(); ++c) {
    if (target.columns[c] < 0)
      continue;
    if (!blocks.empty() && blocks.back().end == c && target.columns[c] == target.columns[c - 1] + 1)
      ++blocks.back().end;
    else
      blocks.push_back({c, c + 1});
  }
  return blocks;
}

void fill(const SheetDocument& document, const Target& target, const Table& table) {
  for (const Block& block : blocksOf(target))
    putCells(document, {target.sheet, target.columns[block.begin], target.first}, table, block.begin,
             block.end);
}

/// The findings, and after a check that was ended early also the old rows with an answer that it did not come
/// across again: an answer is somebody's work.
Table contents(const Season& season, const CheckReport& report) {
  Table found = findings_table(season, report, Place{});
  const Located& where = season.where(TableKind::findings);
  if (!report.cancelled || !where.found())
    return found;
  std::set<std::string> keys;
  for (const Finding& finding : report.findings)
    keys.insert(finding.key);
  std::vector<std::uint32_t> kept;
  for (auto row = static_cast<std::uint32_t>(where.first_row); row < where.end_row; ++row) {
    const bool answered =
        !season.cell(Field::finding_answer, row).empty() || !season.cell(Field::finding_note, row).empty();
    if (answered && keys.count(to_text(season.cell(Field::finding_key, row))) == 0)
      kept.push_back(row);
  }
  const auto columns = fields(TableKind::findings);
  Table all(Place{}, found.rows() + kept.size(), columns.size());
  for (std::size_t row = 0; row < all.rows(); ++row)
    for (std::size_t c = 0; c < columns.size(); ++c)
      all.at(row, c) =
          row < found.rows() ? found.at(row, c) : season.cell(columns[c].field, kept[row - found.rows()]);
  return all;
}

} // namespace

void requireFindingsWritable(const SheetDocument& document, const Season& season) {
  if (const auto target = targetIn(document, season))
    requireUnprotected(*target);
}

void writeFindings(const SheetDocument& document, const Season& season, const CheckReport& report) {
  auto found = targetIn(document, season);
  const Target target = found ? std::move(*found) : newTarget(document);
  requireUnprotected(target);
  const Table table = contents(season, report);
  const sal_Int32 end = target.first + static_cast<sal_Int32>(table.rows());
  holdHeights(target, std::max(target.end, end));
  clear(target);
  if (table.rows() > 0) {
    makeReady(target, end);
    keepTexts(document, target, end);
    fill(document, target, table);
  }
  showRows(target, end);
  fitPrint(target, end);
}

std::size_t clearFindings(const SheetDocument& document, const Season& season) {
  const auto target = targetIn(document, season);
  if (!target)
    return 0;
  requireUnprotected(*target);
  holdHeights(*target, target->end);
  clear(*target);
  showRows(*target, target->first);
  return static_cast<std::size_t>(target->end - target->first);
}

std::vector<std::string> keysInRows(const Season& season, std::size_t first, std::size_t last) {
  std::vector<std::string> keys;
  const Located& where = season.where(TableKind::findings);
  if (!where.found())
    return keys;
  for (std::size_t row = where.first_row; row < where.end_row; ++row) {
    const Cell& key = season.cell(Field::finding_key, static_cast<std::uint32_t>(row));
    if (where.table->sheet_row(row) >= first && where.table->sheet_row(row) <= last && !key.empty())
      keys.push_back(to_text(key));
  }
  return keys;
}

std::optional<Place> rowOfKey(const Season& season, const std::string& key) {
  const Located& where = season.where(TableKind::findings);
  for (std::size_t row = where.first_row; where.found() && row < where.end_row; ++row)
    if (to_text(season.cell(Field::finding_key, static_cast<std::uint32_t>(row))) == key)
      return season.place(Field::finding_where, static_cast<std::uint32_t>(row));
  return std::nullopt;
}

} // namespace wetspell::addin
