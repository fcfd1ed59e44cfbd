// A workbook before it is written: sheets of cells, names, entry checks. Lengths are in centimetres.
#pragma once

#include "look.hpp"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace wetspell::workbook {

enum class Holds : std::uint8_t { nothing, text, number, date, time, formula };

struct SheetCell {
  Look look = Look::page;
  Holds holds = Holds::nothing;
  double number = 0;      ///< number; date and time as days since 1899-12-30
  std::string text;       ///< text, or formula in OpenFormula without the leading "of:="
  std::size_t across = 1; ///< columns that the cell covers
  std::size_t down = 1;   ///< rows that the cell covers
  std::string entry;      ///< name of its EntryCheck; empty: anything goes, without help
  std::string link;       ///< where a click on the text leads: "#Visits"
  std::string after_link; ///< plain text behind the link
};

struct SheetRow {
  double height = 0; ///< 0: as high as its text needs
  std::vector<SheetCell> cells;
  std::size_t repeated = 1;
};

struct SheetColumn {
  double width = 2.5;
  Look look = Look::page; ///< of the cells that no row mentions
  bool page_break_before = false;
  bool hidden = false;
};

/// Cells that change their look while a formula over them is true; the first true one counts.
struct LookRule {
  std::string condition; ///< OpenFormula, relative to the first cell
  Look look;
};
struct LookRules {
  std::string range; ///< "Visits.A6:Visits.A505"
  std::string first; ///< "Visits.A6"
  std::vector<LookRule> rules;
};

struct Range {
  std::size_t first_column = 0, first_row = 0; ///< from 0
  std::size_t last_column = 0, last_row = 0;
};

struct Sheet {
  std::string name;
  std::string tab_colour;
  PageLook page = PageLook::wide_table;
  std::vector<SheetColumn> columns;
  std::vector<SheetRow> rows;
  std::size_t frozen_columns = 0, frozen_rows = 0;
  std::size_t repeat_columns = 0; ///< [repeat_first, repeat_columns) on every printed page
  std::size_t repeat_first = 0;
  std::size_t repeat_from = 0, repeat_to = 0; ///< rows [from, to) repeated on every printed page
  std::optional<Range> print;
  std::optional<Range> filter; ///< headings with filter buttons and the rows below
  std::vector<LookRules> look_rules;
};

/// What may be typed into a cell, and the help that is shown while it is selected.
struct EntryCheck {
  std::string name;
  std::string condition; ///< ODF condition with its namespace; empty: anything
  std::string base;      ///< cell to which the condition's references are relative: "$Visits.$A$6"
  bool list = false;     ///< shows the condition's list as a drop-down
  bool stop = false;     ///< refuses; otherwise warns and lets the person keep what was typed
  std::string title;
  std::string help;
  std::string
      refusal; ///< what is said when the condition does not hold; empty: other words are let in silently
};

/// A name for cells, or for a formula that gives cells.
struct Name {
  std::string name;
  std::string range;        ///< "$Start.$C$12"; for a formula the cell it is relative to
  std::string expression{}; ///< OpenFormula; empty: the name stands for the range
};

struct Workbook {
  std::string title, subject, description;
  std::string version; ///< kept as a property of the document
  std::vector<Sheet> sheets;
  std::vector<EntryCheck> entries;
  std::vector<Name> names;
};

} // namespace wetspell::workbook
