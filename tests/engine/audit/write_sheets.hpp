// Writes the invented visits in a given fashion.
#pragma once

#include "engine/audit/old_sheets.hpp"

#include "quantity/calendar.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <set>

namespace wetspell::testing {

using Rows = std::vector<std::vector<Cell>>;

inline Table table_of(const std::string& sheet, const Rows& rows, std::size_t shift) {
  std::size_t columns = 0;
  for (const auto& row : rows)
    columns = std::max(columns, row.size());
  Table table(Place{sheet, 1, 0}, rows.size(), columns + shift);
  for (std::size_t r = 0; r < rows.size(); ++r)
    for (std::size_t c = 0; c < rows[r].size(); ++c)
      table.at(r, c + shift) = rows[r][c];
  return table;
}

inline Cell date_cell(double serial, Dates dates) {
  constexpr std::array months{"Jan", "Feb", "Mar", "Apr", "May", "Jun"};
  const auto date = date_of(serial);
  const int y = date->year;
  const unsigned m = date->month;
  const unsigned d = date->day;
  switch (dates) {
  case Dates::cells:
  case Dates::parts:
    return Cell::of_date(serial);
  case Dates::iso:
    return Cell::of_text(fmt::format("{}-{:02}-{:02}", y, m, d));
  case Dates::day_first:
    return Cell::of_text(fmt::format("{}/{}/{}", d, m, y));
  case Dates::month_first:
    return Cell::of_text(fmt::format("{}/{}/{}", m, d, y));
  case Dates::two_digit_years:
    return Cell::of_text(fmt::format("{:02}/{:02}/{:02}", m, d, y % 100));
  case Dates::month_words:
    return Cell::of_text(fmt::format("{} {} {}", d, months[m - 1], y));
  case Dates::dots:
    return Cell::of_text(fmt::format("{}.{}.{}", d, m, y));
  case Dates::serials:
    return Cell::of_number(serial);
  case Dates::serials_1904:
    return Cell::of_number(serial - 1462);
  case Dates::joined:
    return Cell::of_number(y * 10000 + static_cast<int>(m) * 100 + static_cast<int>(d));
  case Dates::without_year:
    return Cell::of_text(fmt::format("{} {}", months[m - 1], d));
  }
  return {};
}

inline std::string heading_text(const Style& style, Field field, const std::string& words) {
  const Unit unit = unit_of(field, style.metric);
  if (unit == Unit::none)
    return words;
  switch (style.units) {
  case UnitsAt::brackets:
    return fmt::format("{} ({})", words, symbol(unit));
  case UnitsAt::comma:
    return fmt::format("{}, {}", words, symbol(unit));
  case UnitsAt::behind:
    return fmt::format("{}_{}", words, spec(unit).name);
  default:
    return words;
  }
}

class Writer {
public:
  explicit Writer(const Style& style) : style_(style), visits_(true_visits(style.metric)) {
    if (style.days_as_sections)
      std::stable_sort(visits_.begin(), visits_.end(),
                       [](const TrueVisit& a, const TrueVisit& b) { return a.date < b.date; });
  }

  std::vector<Table> tables() {
    if (style_.sheet_a_pool) {
      std::vector<Table> all;
      for (const std::string& pool : pools())
        all.push_back(table_of(pool, rows_of(pool), style_.shift));
      return all;
    }
    if (style_.layout == Layout::column_a_visit && style_.pools_as_sections)
      return {visits_across_pool_after_pool()};
    if (style_.layout == Layout::cell_a_visit)
      return {cells()};
    if (style_.layout == Layout::row_a_reading)
      return {table_of("Sheet1", readings(), style_.shift)};
    Rows rows = head();
    const std::size_t heading = rows.size() - (style_.units == UnitsAt::row ? 2 : 1);
    std::string last;
    for (std::size_t i = 0; i < visits_.size(); ++i) {
      if (style_.dividers && i > 0 && visits_[i].pool != last)
        rows.emplace_back();
      if (style_.pools_as_sections && visits_[i].pool != last)
        rows.push_back({Cell::of_text("Pool: " + visits_[i].pool)});
      if (style_.days_as_sections && (i == 0 || visits_[i].date != visits_[i - 1].date))
        rows.push_back({Cell::of_text("Date: " + to_text(date_cell(visits_[i].date, style_.dates)))});
      if (style_.repeated_headings && i == visits_.size() / 2) {
        rows.emplace_back();
        rows.push_back(rows[heading]);
      }
      rows.push_back(row_of(visits_[i], visits_[i].pool == last));
      last = visits_[i].pool;
    }
    if (style_.sums)
      rows.push_back(sums());
    if (style_.footnote) {
      rows.emplace_back();
      rows.push_back({Cell::of_text("* all readings by the same stick, see the binder")});
    }
    if (style_.layout == Layout::column_a_visit)
      return {turned(table_of("Sheet1", rows, 0))};
    return {table_of("Sheet1", rows, style_.shift)};
  }

private:
  [[nodiscard]] std::set<std::string> pools() const {
    std::set<std::string> all;
    for (const TrueVisit& visit : visits_)
      all.insert(visit.pool);
    return all;
  }
  /// Headings and the visits of one pool.
  Rows rows_of(const std::string& pool) {
    Rows rows = head();
    for (const TrueVisit& visit : visits_)
      if (visit.pool == pool)
        rows.push_back(row_of(visit));
    return rows;
  }
  /// A column a visit, each pool's under its name.
  Table visits_across_pool_after_pool() {
    Rows all;
    for (const std::string& pool : pools()) {
      if (style_.dividers && !all.empty())
        all.emplace_back();
      all.push_back({Cell::of_text("Pool: " + pool)});
      const Table part = turned(table_of("Sheet1", rows_of(pool), 0));
      for (std::size_t row = 0; row < part.rows(); ++row) {
        std::vector<Cell>& cells = all.emplace_back();
        for (std::size_t column = 0; column < part.columns(); ++column)
          cells.push_back(part.at(row, column));
      }
    }
    return table_of("Sheet1", all, 0);
  }
  Rows head() const {
    Rows rows;
    for (const std::string& title : style_.titles)
      title.empty() ? rows.push_back({}) : rows.push_back({Cell::of_text(title)});
    std::vector<Cell> upper, names, units;
    for (const auto& [field, words] : style_.columns) {
      if (field == Field::visit_date && style_.dates == Dates::parts) {
        for (const char* part : {"Year", "Month", "Day"}) {
          upper.emplace_back();
          names.push_back(Cell::of_text(part));
          units.emplace_back();
        }
        continue;
      }
      const auto group = style_.groups.find(field);
      upper.push_back(group == style_.groups.end() ? Cell{} : Cell::of_text(group->second));
      names.push_back(Cell::of_text(heading_text(style_, field, words)));
      units.push_back(Cell::of_text(std::string(symbol(unit_of(field, style_.metric)))));
    }
    for (const std::string& foreign : style_.foreign)
      names.push_back(Cell::of_text(foreign));
    if (!style_.groups.empty())
      rows.push_back(upper);
    rows.push_back(names);
    if (style_.units == UnitsAt::row)
      rows.push_back(units);
    return rows;
  }

  [[nodiscard]] Cell reading(const TrueVisit& visit, Field field) const {
    const double value = visit.readings.at(field);
    if (style_.units == UnitsAt::cells)
      return Cell::of_text(fmt::format("{} {}", value, symbol(unit_of(field, style_.metric))));
    return style_.numbers_as_text ? Cell::of_text(fmt::format("{}", value)) : Cell::of_number(value);
  }

  [[nodiscard]] std::vector<Cell> row_of(const TrueVisit& visit, bool again = false) const {
    std::vector<Cell> row;
    const bool spoiled = style_.notes_in_numbers && &visit == &visits_[4];
    for (const auto& [field, words] : style_.columns) {
      if (field == Field::visit_pool) {
        row.push_back(again && style_.pool_once ? Cell{}
                      : again && style_.ditto   ? Cell::of_text(style_.ditto_mark)
                                                : Cell::of_text(visit.pool));
      } else if (field == Field::visit_date && style_.dates == Dates::parts) {
        const auto date = date_of(visit.date);
        row.push_back(Cell::of_number(date->year));
        row.push_back(Cell::of_number(date->month));
        row.push_back(Cell::of_number(date->day));
      } else if (field == Field::visit_date) {
        row.push_back(date_cell(visit.date, style_.dates));
      } else if (field == Field::visit_person) {
        row.push_back(Cell::of_text(visit.person));
      } else if (field == Field::visit_water) {
        row.push_back(Cell::of_text(visit.water));
      } else if (visit.readings.count(field) > 0) {
        row.push_back(spoiled && field == Field::visit_depth ? Cell::of_text("stick lost, come back")
                                                             : reading(visit, field));
      } else {
        row.push_back(Cell::of_text(&visit == &visits_[2] ? "path flooded" : ""));
      }
    }
    for (std::size_t i = 0; i < style_.foreign.size(); ++i)
      row.push_back(Cell::of_number(6.1 + 0.1 * static_cast<double>(i)));
    return row;
  }

  [[nodiscard]] std::vector<Cell> sums() const {
    std::vector<Cell> row;
    for (const auto& [field, words] : style_.columns) {
      double sum = 0;
      for (const TrueVisit& visit : visits_)
        if (const auto at = visit.readings.find(field); at != visit.readings.end())
          sum += at->second;
      row.push_back(row.empty() ? Cell::of_text("Total") : sum > 0 ? Cell::of_number(sum) : Cell{});
    }
    return row;
  }

  /// A row a reading: pool, date, what, value, unit.
  [[nodiscard]] Rows readings() const {
    Rows rows;
    for (const std::string& title : style_.titles)
      rows.push_back({Cell::of_text(title)});
    rows.push_back({Cell::of_text("Site"), Cell::of_text("Date"), Cell::of_text("Parameter"),
                    Cell::of_text("Value"), Cell::of_text("Units")});
    for (const TrueVisit& visit : visits_)
      for (const auto& [field, words] : style_.columns) {
        if (visit.readings.count(field) == 0)
          continue;
        rows.push_back({Cell::of_text(visit.pool), date_cell(visit.date, style_.dates), Cell::of_text(words),
                        Cell::of_number(visit.readings.at(field)),
                        style_.units == UnitsAt::nowhere
                            ? Cell{}
                            : Cell::of_text(std::string(symbol(unit_of(field, style_.metric))))});
      }
    return rows;
  }

  /// Pools down and days across, each cell one reading.
  [[nodiscard]] Table cells() const {
    const auto& [field, words] = style_.columns.back();
    const std::string reading_words = heading_text(style_, field, words);
    Rows above;
    if (style_.named == Named::title)
      above = {{Cell::of_text(reading_words + ", spring 2019")}, {}};
    for (const std::string& title : style_.titles)
      above.push_back({Cell::of_text(title)});
    std::set<double> days;
    for (const TrueVisit& visit : visits_)
      days.insert(visit.date);
    Rows rows{{Cell::of_text(style_.named == Named::corner ? reading_words : style_.columns.front().second)}};
    for (const double day : days)
      rows[0].push_back(date_cell(day, style_.dates));
    for (const std::string& foreign : style_.foreign)
      rows[0].push_back(Cell::of_text(foreign));
    for (const std::string& pool : pools()) {
      if (style_.dividers && rows.size() > 1)
        rows.emplace_back();
      if (style_.repeated_headings && rows.size() == 4) {
        rows.emplace_back();
        rows.push_back(rows[0]);
      }
      std::vector<Cell>& row = rows.emplace_back();
      row.push_back(Cell::of_text(pool));
      for (const double day : days) {
        const auto visit = std::find_if(visits_.begin(), visits_.end(), [&](const TrueVisit& each) {
          return each.pool == pool && each.date == day;
        });
        const bool spoiled = style_.notes_in_numbers && visit == visits_.begin() + 4;
        row.push_back(visit == visits_.end() ? Cell{}
                      : spoiled              ? Cell::of_text("stick lost, come back")
                                             : reading(*visit, field));
      }
      for (std::size_t i = 0; i < style_.foreign.size(); ++i)
        row.push_back(Cell::of_number(40.5));
    }
    if (style_.sums) {
      std::vector<Cell>& row = rows.emplace_back();
      row.push_back(Cell::of_text("Total"));
      for (std::size_t i = 0; i < days.size(); ++i)
        row.push_back(Cell::of_number(40.5));
    }
    if (style_.footnote) {
      rows.emplace_back();
      rows.push_back({Cell::of_text("* all readings by the same stick, see the binder")});
    }
    const std::string sheet = style_.named == Named::sheet ? reading_words : "Sheet1";
    Table body = table_of(sheet, rows, 0);
    if (style_.days_down)
      body = turned(body);
    Table whole(Place{sheet, 1, 0}, above.size() + body.rows(), style_.shift + body.columns());
    for (std::size_t row = 0; row < above.size(); ++row)
      if (!above[row].empty())
        whole.at(row, style_.shift) = above[row][0];
    for (std::size_t row = 0; row < body.rows(); ++row)
      for (std::size_t column = 0; column < body.columns(); ++column)
        whole.at(above.size() + row, style_.shift + column) = body.at(row, column);
    return whole;
  }

  static Table turned(const Table& table) {
    Table over(Place{table.sheet(), 1, 0}, table.columns(), table.rows());
    for (std::size_t row = 0; row < table.rows(); ++row)
      for (std::size_t column = 0; column < table.columns(); ++column)
        over.at(column, row) = table.at(row, column);
    return over;
  }

  const Style& style_;
  std::vector<TrueVisit> visits_;
};

inline std::vector<Table> written(const Style& style) {
  return Writer(style).tables();
}

} // namespace wetspell::testing
