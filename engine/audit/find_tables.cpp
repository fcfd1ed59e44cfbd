#include "audit/find_tables.hpp"

#include "audit/beginnings.hpp"
#include "audit/block_headings.hpp"
#include "audit/day_table.hpp"
#include "audit/map_headings.hpp"
#include "audit/name_of_reading.hpp"
#include "audit/row_uses.hpp"
#include "base/in_parts.hpp"
#include "season/locate.hpp"

#include <algorithm>

namespace wetspell {

namespace {

bool is_blank(const Grid& grid, std::size_t row) {
  for (std::size_t column = 0; column < grid.columns(); ++column)
    if (holds_something(grid.at(row, column)))
      return false;
  return true;
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

/// Whether a pool is named right above the headings: "Pool: B07".
bool pool_above(const Grid& grid, std::size_t row, Span columns) {
  for (std::size_t column = columns.first; row > 0 && column < columns.end; ++column)
    if (!pool_named_in(text_in(grid.at(row - 1, column))).empty())
      return true;
  return false;
}

/// Whether headings could be a table alone: a pool, or a day under the pool's name, or a person by name or
/// runs, and something else.
bool stands_alone(HeadingScan& scan, std::size_t row, Span columns) {
  const bool under_pool = pool_above(scan.grid(), row, columns);
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
    pool = pool || names_pool(guess) || (under_pool && names_date(guess));
    for (const WordMatch& match : guess.matches)
      if (match.score >= known_heading) {
        person = person || match.field == Field::person_code;
        of_person = of_person || match.field == Field::person_name || match.field == Field::person_course ||
                    match.field == Field::person_run_1;
      }
  }
  return known >= 2 && (pool || (person && of_person));
}

/// The runs of columns that are tables of their own; a run that is none belongs to the one before.
template <class Alone> std::vector<Span> parted(const std::vector<Span>& runs, Alone alone) {
  std::vector<Span> tables;
  for (const Span& run : runs) {
    if (!tables.empty() && !(alone(run) && alone(tables.back())))
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

  /// The tables that begin in the row, parted at blank columns where both sides stand alone.
  std::vector<Block> blocks(Begins with) {
    const Grid& grid = scan_.grid();
    const auto runs = filled_columns(grid, row_, end_);
    std::vector<Block> all;
    if (with == Begins::headings) {
      for (const Span& columns : parted(runs, [&](Span run) { return stands_alone(scan_, row_, run); }))
        all.push_back(block(columns));
      return all;
    }
    const bool down = with == Begins::days_down;
    const auto alone = [&](Span run) { return day_block(run, down).days.has_value(); };
    for (const Span& columns : parted(runs, alone)) {
      Block days = day_block(columns, down);
      all.push_back(days.days ? std::move(days) : block(columns));
    }
    return all;
  }
  /// One behind the last row of the sheet that the blocks reach.
  [[nodiscard]] std::size_t lowest() const { return lowest_; }

private:
  Block block(Span columns) {
    const HeadingLines rows = headings_of(scan_, row_, end_, above_, columns);
    Block block;
    block.grid = scan_.grid().part({rows.first, end_}, columns);
    block.headings = rows.headings;
    block.first_data = rows.first_data - rows.first;
    block.end_data = without_next_title(block.grid, block.first_data);
    block.titles = titles(rows.first, columns);
    pass(block, key_columns(block.headings, scan_));
    lowest_ = std::max(lowest_, rows.first + block.end_data);
    return block;
  }

  /// Pools down and days across, turned over where they stand the other way round; without days where it is
  /// no such table.
  Block day_block(Span columns, bool down) {
    const Grid below = scan_.grid().part({row_, end_}, columns);
    std::size_t rows = without_next_title(below, 1);
    while (rows > 1 && is_blank(below, rows - 1))
      --rows;
    const Grid part = below.part({0, rows}, {0, below.columns()});
    const Grid grid = down ? part.turned_over() : part;
    Block block;
    block.grid = grid;
    for (std::size_t column = 0; column < grid.columns(); ++column) {
      const std::string line = line_of(grid.at(0, column));
      block.headings.push_back({line, line});
    }
    block.first_data = 1;
    block.end_data = grid.rows();
    block.titles = titles(row_, columns);
    std::vector<std::string> about = block.titles;
    about.push_back(grid.table().sheet());
    block.days = day_table(scan_, grid, about);
    if (block.days) {
      pass(block, {block.days->names, grid.columns()});
      lowest_ = std::max(lowest_, row_ + rows);
    }
    return block;
  }

  [[nodiscard]] std::vector<std::string> titles(std::size_t first, Span columns) const {
    std::vector<std::string> found;
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
          found.push_back(std::move(text));
        }
    return found;
  }

  /// The end of the rows: a line of words alone right above the next table is its title, whatever column it
  /// stands in.
  [[nodiscard]] std::size_t without_next_title(const Grid& grid, std::size_t first) const {
    std::size_t end = grid.rows();
    if (end_ == scan_.grid().rows())
      return end;
    const auto lone_words = [&](std::size_t row) {
      std::size_t filled = 0;
      bool words = true;
      for (std::size_t column = 0; column < grid.columns(); ++column)
        if (const Cell& cell = grid.at(row, column); holds_something(cell)) {
          ++filled;
          words = words && cell.kind() == CellKind::text;
        }
      return filled <= 1 && words;
    };
    while (end > first && lone_words(end - 1))
      --end;
    return end;
  }

  /// Beside pools may stand what else was noted of each day: who came, notes. Per row.
  std::vector<bool> no_pools(const Block& block) {
    std::vector<bool> all(block.grid.rows());
    for (std::size_t row = block.first_data; row < block.end_data; ++row) {
      const std::string_view name = text_in(block.grid.at(row, block.days->names));
      all[row] = !name.empty() && says_something(scan_.guess(name)) && !mentions_pool(name);
    }
    return all;
  }

  static void look_at(std::size_t row, const Grid& grid, const RowUses& uses,
                      const std::vector<bool>& no_pool, Block& said) {
    auto use = uses.use(row);
    if (!use && !no_pool.empty() && no_pool[row])
      use = RowUse::no_pool;
    if (use) {
      said.passed.push_back({row, *use, *use == RowUse::blank ? std::string() : uses.words(row)});
      return;
    }
    for (std::size_t column = 0; column < said.filled.size(); ++column)
      said.filled[column] += holds_something(grid.at(row, column));
  }

  void pass(Block& block, KeyColumns keys) {
    const RowUses uses(block.grid, block.headings, keys);
    const std::vector<bool> no_pool = block.days ? no_pools(block) : std::vector<bool>();
    block.filled.resize(block.grid.columns());
    constexpr std::size_t least = 50'000;
    const std::size_t rows = block.end_data - block.first_data;
    std::vector<Block> parts(parts_of(rows, least));
    in_parts(parts.size(), [&](std::size_t part) {
      Block looked; // what these rows say
      looked.filled.resize(block.grid.columns());
      const auto [first, end] = range_of(part, parts.size(), rows);
      for (std::size_t row = first; row < end; ++row)
        look_at(block.first_data + row, block.grid, uses, no_pool, looked);
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
  std::size_t lowest_ = 0;
};

std::vector<Block> blocks_of(HeadingScan& scan, const std::vector<Beginning>& begun) {
  std::vector<Block> blocks;
  std::size_t above = 0;
  for (std::size_t i = 0; i < begun.size(); ++i) {
    const std::size_t end = i + 1 < begun.size() ? begun[i + 1].row : scan.grid().rows();
    BlockMaker maker(scan, begun[i].row, end, above);
    for (Block& block : maker.blocks(begun[i].with))
      blocks.push_back(std::move(block));
    above = std::max(above, maker.lowest());
  }
  return blocks;
}

/// Where one cell alone holds words, they.
std::string_view lone_words(const Grid& grid, std::size_t row) {
  std::string_view words;
  std::size_t filled = 0;
  for (std::size_t column = 0; column < grid.columns(); ++column)
    if (const Cell& cell = grid.at(row, column); holds_something(cell)) {
      ++filled;
      words = text_in(cell);
    }
  return filled == 1 ? words : std::string_view();
}

/// Lines of a pool's name alone ("Pool: B07"), each right above what belongs to it; none where something else
/// stands above the first of them.
std::vector<std::size_t> pool_lines(const Grid& grid) {
  std::vector<std::size_t> lines;
  bool something_below = true;
  for (std::size_t row = 0; row < grid.rows(); ++row) {
    const std::string_view words = lone_words(grid, row);
    if (!pool_named_in(words).empty()) {
      if (!something_below)
        lines.pop_back();
      lines.push_back(row);
      something_below = false;
    } else if (words.empty() && !is_blank(grid, row)) {
      if (lines.empty())
        return {};
      something_below = true;
    }
  }
  return lines;
}

/// A list of names with the visits to its right.
std::vector<Block> visits_beside_names(const Grid& grid) {
  HeadingScan down(grid.turned_over());
  const std::vector<Beginning> columns = beginnings(down);
  if (columns.empty() || columns.front().with != Begins::headings)
    return {};
  return blocks_of(down, {columns.front()}); // one list of names serves all visits to its right
}

/// A column a visit: the visits of one pool under its name, of the next below, or all in one.
std::vector<Block> columns_a_visit(const Grid& grid) {
  std::vector<Block> all;
  const std::vector<std::size_t> lines = pool_lines(grid);
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const std::size_t end = i + 1 < lines.size() ? lines[i + 1] : grid.rows();
    std::vector<Block> blocks = visits_beside_names(grid.part({lines[i] + 1, end}, {0, grid.columns()}));
    if (blocks.empty())
      return visits_beside_names(grid);
    std::vector<std::string> above{std::string(lone_words(grid, lines[i]))};
    for (std::size_t row = lines.front() > titles_above ? lines.front() - titles_above : 0;
         row < lines.front(); ++row)
      if (const std::string_view words = lone_words(grid, row); !words.empty())
        above.emplace_back(words);
    for (Block& block : blocks) {
      block.titles.insert(block.titles.begin(), above.begin(), above.end());
      all.push_back(std::move(block));
    }
  }
  return lines.empty() ? visits_beside_names(grid) : all;
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
  case RowUse::no_pool:
    return "no pool";
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
  const std::vector<Beginning> begun = beginnings(across);
  if (!begun.empty())
    return blocks_of(across, begun);
  constexpr std::size_t widest = 4096; // more columns than this are no visits side by side
  if (sheet.columns() <= widest && sheet.rows() <= widest)
    if (std::vector<Block> blocks = columns_a_visit(whole); !blocks.empty())
      return blocks;
  const auto shape = headings_by_shape(whole);
  return shape ? blocks_of(across, {{*shape, Begins::headings}}) : std::vector<Block>{};
}

} // namespace wetspell
