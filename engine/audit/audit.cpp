#include "audit/audit.hpp"

#include "audit/checked_back.hpp"
#include "audit/told.hpp"
#include "quantity/calendar.hpp"
#include "season/locate.hpp"
#include "season/words.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace wetspell {

namespace {

/// Sheets of a season workbook that are no records: settings, classes, species, limits, answers.
struct Own {
  std::vector<Table> sheets;
  std::optional<Settings> settings;
};

/// How many labels of settings stand on the sheet with something to their right.
std::size_t labels_of_settings(const Table& sheet) {
  constexpr std::size_t rows_searched = 200;
  std::string one;
  std::string other;
  std::size_t labels = 0;
  for (std::size_t row = 0; row < std::min(sheet.rows(), rows_searched); ++row)
    for (std::size_t column = 0; column + 1 < sheet.columns(); ++column) {
      const Cell& cell = sheet.at(row, column);
      if (cell.kind() != CellKind::text || cell.text().size() > 60 ||
          !holds_something(sheet.at(row, column + 1)))
        continue;
      const auto word = plain_word(cell.text(), one);
      for (const SettingSpec& setting : settings_catalogue())
        labels += word == plain_word(setting.label, other);
    }
  return labels;
}

bool holds_own_lists(const Table& sheet, bool& settings) {
  Season season; // only to see what stands on the sheet
  season.sheets.push_back(std::make_unique<Table>(sheet));
  locate_tables(season);
  for (const TableKind kind : {TableKind::visits, TableKind::pools, TableKind::people, TableKind::life})
    if (season.where(kind).found())
      return false;
  settings = season.where(TableKind::settings).found() || labels_of_settings(sheet) >= 2;
  bool any = settings;
  for (const TableKind kind : {TableKind::findings, TableKind::depth_classes, TableKind::fill_classes,
                               TableKind::species, TableKind::limits})
    any = any || season.where(kind).found();
  return any;
}

/// Takes the season workbook's own lists out of the sheets.
Own take_own(std::vector<Table>& sheets, double today) {
  constexpr std::size_t longest_list = 20'000;
  Own own;
  bool any_settings = false;
  std::erase_if(sheets, [&](Table& sheet) {
    bool settings = false;
    if (sheet.rows() > longest_list || !holds_own_lists(sheet, settings))
      return false;
    any_settings = any_settings || settings;
    own.sheets.push_back(std::move(sheet));
    return true;
  });
  if (any_settings) {
    std::vector<Table> lists = own.sheets;
    lists.push_back(empty_visits());
    if (auto season = read_season(std::move(lists), today))
      own.settings = season.value().settings;
  }
  return own;
}

/// The year that a table's title, its sheet or its file names.
std::optional<int> year_of(const Block& block, const std::string& file, const Own& own) {
  for (const std::string& title : block.titles)
    if (const auto year = year_in(title))
      return year;
  if (const auto year = year_in(block.grid.table().sheet()))
    return year;
  const std::size_t folder = file.find_last_of("/\\");
  if (const auto year = year_in(std::string_view(file).substr(folder == std::string::npos ? 0 : folder + 1)))
    return year;
  return own.settings ? own.settings->season_year : std::nullopt;
}

/// The days that lines beside the rows name.
void add_lines(const Mapped& table, DateColumn& dates) {
  dates.add(Cell::of_text(table.map.date));
  for (const PassedRow& passed : table.block.passed)
    if (passed.use == RowUse::section)
      dates.add(Cell::of_text(date_of_line(passed.text)));
}

/// Decides how the dates of all tables are read; a column that cannot tell follows those that can.
void decide_dates(std::vector<Mapped>& tables, const std::string& file, const Own& own, double today) {
  const int this_year = date_of(today) ? date_of(today)->year : 2026;
  DateOrder elsewhere = own.settings ? own.settings->date_order : DateOrder::unknown;
  for (const bool again : {false, true})
    for (Mapped& table : tables) {
      if (!table.map.kind || (again && table.dates.order != DateOrder::unknown))
        continue;
      const Mapping* column =
          table.map.of(table.map.kind == TableKind::life ? Field::life_date : Field::visit_date);
      DateColumn dates({elsewhere, year_of(table.block, file, own), this_year, false});
      if (table.block.days)
        for (const std::size_t day : table.block.days->days)
          dates.add(table.block.grid.at(0, day));
      else if (table.map.date_in_lines || !table.map.date.empty())
        add_lines(table, dates);
      else if (column != nullptr)
        for (std::size_t row = table.block.first_data; row < table.block.end_data; ++row)
          if (table.block.is_record(row))
            dates.add(table.block.grid.at(row, column->column));
      std::string reason;
      table.dates = dates.decide(reason);
      table.date_reason = std::move(reason);
      if (!again && elsewhere == DateOrder::unknown)
        elsewhere = table.dates.order;
    }
}

/// Sheets of the same headings without a pool column are one sheet a pool, and its name is the pool's.
std::string pool_of_sheet(const Block& block, const std::vector<Block>& all) {
  std::size_t alike = 0;
  for (const Block& other : all) {
    bool same = other.headings.size() == block.headings.size() && &other.grid.table() != &block.grid.table();
    for (std::size_t i = 0; same && i < block.headings.size(); ++i)
      same = other.headings[i].text == block.headings[i].text;
    alike += same;
  }
  return alike > 0 ? block.grid.table().sheet() : std::string();
}

} // namespace

Place Audit::place(const Spot& spot) const {
  const Frame& frame = frames[spot.table];
  Place place = frame.first;
  place.row += frame.turned ? spot.column : spot.row;
  place.column += frame.turned ? spot.row : spot.column;
  return place;
}

Audit audit(std::string file, std::vector<Table> sheets, const AuditOptions& options) {
  Audit audit;
  audit.file = std::move(file);
  Own own = take_own(sheets, options.today);
  if (!own.settings && options.settings != nullptr)
    own.settings = *options.settings;
  std::vector<Block> blocks;
  for (const Table& sheet : sheets)
    for (Block& block : find_tables(sheet))
      blocks.push_back(std::move(block));
  std::vector<Mapped> tables;
  for (Block& block : blocks) {
    MapHints hints;
    hints.given = options.given;
    hints.own_headings = options.own_headings;
    hints.settings = own.settings ? &*own.settings : nullptr;
    hints.pool = pool_of_sheet(block, blocks);
    BlockMap map = map_headings(block, hints);
    tables.push_back({block, std::move(map), {}, {}});
  }
  decide_dates(tables, audit.file, own, options.today);
  Tidy tidy = read_rows(tables);
  for (const Mapped& table : tables)
    audit.tables.push_back(told(table));
  for (const Mapped& table : tables)
    audit.frames.push_back({table.block.grid.place(0, 0), table.block.grid.turned()});
  audit.unread = std::move(tidy.unread);
  audit.unread_count = tidy.unread_count;
  audit.remarks = std::move(tidy.remarks);
  for (const AuditedTable& table : audit.tables)
    if (table.times > 0)
      audit.remarks.push_back(times_left_alone(table));
  for (std::string& supposed : supposed_units(tables))
    audit.remarks.push_back(std::move(supposed));
  audit.tidy = std::move(tidy.tables);
  // The source's cells are needed no more; a full sheet would not fit beside its season.
  tables.clear();
  blocks.clear();
  sheets.clear();
  CheckedBack(audit).check(std::move(own.sheets), options);
  return audit;
}

} // namespace wetspell
