#include "audit/find_tables.hpp"

#include "audit/block_headings.hpp"
#include "audit/row_uses.hpp"
#include "base/in_parts.hpp"
#include "season/locate.hpp"

#include <algorithm>

namespace wetspell {

namespace {

// Rows that are searched for headings one by one. Further down a table only ends where a row is blank, so
// that long tables are not read twice.
constexpr std::size_t searched_closely = 2000;
constexpr std::size_t most_tables = 500; // below one another; what follows is part of the last one
constexpr std::size_t titles_above = 12; // rows above the headings that may tell about the table

/// The rows in which tables begin. Inside a table another one begins only below a gap.
std::vector<std::size_t> heading_rows(HeadingScan& scan) {
  const Grid& grid = scan.grid();
  std::vector<std::size_t> rows;
  bool gap = true; // nothing, or a line of words alone, stands right above
  for (std::size_t row = 0; row < grid.rows(); ++row) {
    if (row >= searched_closely && rows.empty())
      break;
    std::size_t filled = 0;
    for (std::size_t column = 0; column < grid.columns() && filled < 2; ++column)
      filled += holds_something(grid.at(row, column));
    if (filled < 2) {
      gap = true;
      continue;
    }
    if ((rows.empty() || gap) && rows.size() < most_tables && scan.names_columns(row))
      rows.push_back(row);
    gap = false;
  }
  return rows;
}

/// Without known headings: the first row of words that stands over something else.
std::optional<std::size_t> headings_by_shape(const Grid& grid) {
  const std::size_t last = std::min(grid.rows(), searched_closely);
  for (std::size_t row = 0; row + 1 < last; ++row) {
    std::size_t texts = 0;
    std::size_t others = 0;
    std::size_t numbers_below = 0;
    for (std::size_t column = 0; column < grid.columns(); ++column) {
      const Cell& cell = grid.at(row, column);
      texts += cell.kind() == CellKind::text;
      others += !cell.empty() && cell.kind() != CellKind::text;
      const CellKind below = grid.at(row + 1, column).kind();
      numbers_below +=
          cell.kind() == CellKind::text && (below == CellKind::number || below == CellKind::date);
    }
    if (texts >= 2 && others == 0 && numbers_below > 0)
      return row;
  }
  return std::nullopt;
}

/// Columns that hold nothing from the headings to the end.
bool column_is_blank(const Grid& grid, std::size_t column, std::size_t first, std::size_t end) {
  for (std::size_t row = first; row < std::min(end, first + searched_closely); ++row)
    if (holds_something(grid.at(row, column)))
      return false;
  return true;
}

/// Whether headings could be a table alone: a pool, or a person by name or runs, and something else.
bool stands_alone(HeadingScan& scan, std::size_t row, Span columns) {
  std::size_t known = 0;
  bool pool = false;
  bool person = false;
  bool of_person = false;
  for (std::size_t column = columns.first; column < columns.end; ++column) {
    const std::string_view text = text_in(scan.grid().at(row, column));
    if (text.empty())
      continue;
    const HeadingGuess& guess = scan.guess(text);
    known += says_something(guess);
    pool = pool || names_pool(guess);
    for (const WordMatch& match : guess.matches)
      if (match.score >= known_heading) {
        person = person || match.field == Field::person_code;
        of_person = of_person || match.field == Field::person_name || match.field == Field::person_course ||
                    match.field == Field::person_run_1;
      }
  }
  return known >= 2 && (pool || (person && of_person));
}

/// The columns of the tables that begin in a row: parted at blank columns where both sides stand alone.
std::vector<Span> tables_in_row(HeadingScan& scan, std::size_t row, std::size_t end) {
  const Grid& grid = scan.grid();
  std::vector<Span> runs;
  for (std::size_t column = 0; column < grid.columns(); ++column) {
    if (column_is_blank(grid, column, row, end))
      continue;
    if (runs.empty() || runs.back().end != column)
      runs.push_back({column, column});
    runs.back().end = column + 1;
  }
  std::vector<Span> tables;
  for (const Span& run : runs) {
    if (!tables.empty() && !(stands_alone(scan, row, tables.back()) && stands_alone(scan, row, run)))
      tables.back().end = run.end;
    else
      tables.push_back(run);
  }
  return tables;
}

class BlockMaker {
public:
  BlockMaker(HeadingScan& scan, std::size_t row, std::size_t end, std::size_t above)
      : scan_(scan), row_(row), end_(end), above_(above) {}

  Block block(Span columns) {
    const HeadingLines rows = headings_of(scan_, row_, end_, above_, columns);
    Block block;
    block.grid = scan_.grid().part({rows.first, end_}, columns);
    block.headings = rows.headings;
    block.first_data = rows.first_data - rows.first;
    block.end_data = block.grid.rows();
    titles(block, rows.first, columns);
    pass(block);
    return block;
  }

private:
  void titles(Block& block, std::size_t first, Span columns) const {
    const std::size_t from = std::max(above_, first > titles_above ? first - titles_above : 0);
    const Grid& grid = scan_.grid();
    for (std::size_t row = from; row < first; ++row)
      for (std::size_t column = columns.first; column < columns.end; ++column)
        if (const Cell& cell = grid.at(row, column); holds_something(cell)) {
          // "Pool:" in one cell and its code in the next belong together.
          std::string text = to_text(cell);
          const bool label = text.ends_with(':') && column + 1 < columns.end;
          if (label && holds_something(grid.at(row, column + 1)))
            text += " " + to_text(grid.at(row, ++column));
          block.titles.push_back(std::move(text));
        }
  }

  /// A line of words alone right above the next table is its title, whatever column it stands in.
  void leave_title_to_next(Block& block) const {
    const auto lone_words = [&](std::size_t row) {
      std::size_t filled = 0;
      bool words = true;
      for (std::size_t column = 0; column < block.grid.columns(); ++column)
        if (const Cell& cell = block.grid.at(row, column); holds_something(cell)) {
          ++filled;
          words = words && cell.kind() == CellKind::text;
        }
      return filled <= 1 && words;
    };
    std::size_t end = block.end_data;
    while (end > block.first_data && lone_words(end - 1))
      --end;
    block.end_data = end;
  }

  static void look_at(std::size_t row, const Grid& grid, const RowUses& uses, Block& said) {
    if (const auto use = uses.use(row)) {
      said.passed.push_back({row, *use, *use == RowUse::blank ? std::string() : uses.words(row)});
      return;
    }
    for (std::size_t column = 0; column < said.filled.size(); ++column)
      said.filled[column] += holds_something(grid.at(row, column));
  }

  void pass(Block& block) {
    if (end_ < scan_.grid().rows())
      leave_title_to_next(block);
    const RowUses uses(block.grid, block.headings, key_columns(block.headings, scan_));
    block.filled.resize(block.grid.columns());
    constexpr std::size_t least = 50'000;
    const std::size_t rows = block.end_data - block.first_data;
    std::vector<Block> parts(parts_of(rows, least));
    in_parts(parts.size(), [&](std::size_t part) {
      Block looked; // what these rows say
      looked.filled.resize(block.grid.columns());
      const auto [first, end] = range_of(part, parts.size(), rows);
      for (std::size_t row = first; row < end; ++row)
        look_at(block.first_data + row, block.grid, uses, looked);
      parts[part] = std::move(looked);
    });
    for (Block& part : parts) {
      std::move(part.passed.begin(), part.passed.end(), std::back_inserter(block.passed));
      for (std::size_t column = 0; column < block.filled.size(); ++column)
        block.filled[column] += part.filled[column];
    }
    // Blanks at the end are not part of the table.
    while (!block.passed.empty() && block.passed.back().row + 1 == block.end_data &&
           block.passed.back().use == RowUse::blank) {
      block.passed.pop_back();
      --block.end_data;
    }
  }

  HeadingScan& scan_;
  std::size_t row_, end_, above_;
};

std::vector<Block> blocks_of(HeadingScan& scan, const std::vector<std::size_t>& rows) {
  std::vector<Block> blocks;
  std::size_t above = 0;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const std::size_t end = i + 1 < rows.size() ? rows[i + 1] : scan.grid().rows();
    std::size_t lowest = above;
    for (const Span& columns : tables_in_row(scan, rows[i], end)) {
      blocks.push_back(BlockMaker(scan, rows[i], end, above).block(columns));
      lowest = std::max(lowest, end - (blocks.back().grid.rows() - blocks.back().end_data));
    }
    above = lowest;
  }
  return blocks;
}

/// A second row of headings of the same words is the first one repeated, on the next page of a print.
void drop_repeats(HeadingScan& scan, std::vector<std::size_t>& rows) {
  const Grid& grid = scan.grid();
  std::size_t last = 0;
  std::erase_if(rows, [&](std::size_t row) {
    if (row == rows.front()) {
      last = row;
      return false;
    }
    for (std::size_t column = 0; column < grid.columns(); ++column)
      if (grid.at(row, column) != grid.at(last, column)) {
        last = row;
        return false;
      }
    return true;
  });
}

} // namespace

std::string_view name(RowUse use) {
  switch (use) {
  case RowUse::title:
    return "title";
  case RowUse::heading:
    return "heading";
  case RowUse::units:
    return "units";
  case RowUse::blank:
    return "blank";
  case RowUse::sums:
    return "sums";
  case RowUse::section:
    return "section";
  }
  return {};
}

bool Block::is_record(std::size_t row) const {
  const auto at = std::lower_bound(passed.begin(), passed.end(), row,
                                   [](const PassedRow& one, std::size_t wanted) { return one.row < wanted; });
  return at == passed.end() || at->row != row;
}

std::vector<Block> find_tables(const Table& sheet) {
  if (sheet.rows() == 0 || sheet.columns() == 0)
    return {};
  const Grid whole(sheet);
  HeadingScan across(whole);
  std::vector<std::size_t> rows = heading_rows(across);
  if (!rows.empty()) {
    drop_repeats(across, rows);
    return blocks_of(across, rows);
  }
  constexpr std::size_t widest = 4096; // more columns than this are no visits side by side
  if (sheet.columns() <= widest && sheet.rows() <= widest) {
    HeadingScan down(whole.turned_over());
    std::vector<std::size_t> columns = heading_rows(down);
    if (!columns.empty()) {
      columns.resize(1); // one list of names serves all visits to its right
      return blocks_of(down, columns);
    }
  }
  const auto shape = headings_by_shape(whole);
  return shape ? blocks_of(across, {*shape}) : std::vector<Block>{};
}

} // namespace wetspell
