#include "bench/big_season.hpp"

#include "demo/rounds.hpp"
#include "measure/class_table.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <span>
#include <string>
#include <string_view>
#include <utility>

namespace wetspell::bench {

namespace {

using demo::Chance;
using demo::Hand;
using demo::SheetRow;
using demo::TruePool;

constexpr std::size_t pools_a_person = 5;
constexpr std::size_t one_mistake_in = 100;
constexpr std::size_t visits_a_count = 25;

constexpr std::array visit_columns{
    Field::visit_pool,          Field::visit_date,          Field::visit_start,
    Field::visit_end,           Field::visit_person,        Field::visit_second_person,
    Field::visit_water,         Field::visit_rain,          Field::visit_temperature_1,
    Field::visit_temperature_2, Field::visit_temperature_3, Field::visit_temperature_mean,
    Field::visit_probe_depth,   Field::visit_depth,         Field::visit_depth_class,
    Field::visit_depth_tool,    Field::visit_fill,          Field::visit_fill_class,
    Field::visit_length,        Field::visit_width,         Field::visit_size_tool,
    Field::visit_paced_by,      Field::visit_isolated,      Field::visit_inlet,
    Field::visit_outlet,        Field::visit_joined,        Field::visit_edge_seen};
constexpr std::array pool_columns{Field::pool_code,   Field::pool_name,    Field::pool_longest,
                                  Field::pool_widest, Field::pool_deepest, Field::pool_isolated};
constexpr std::array people_columns{Field::person_code,   Field::person_name,  Field::person_counts,
                                    Field::person_course, Field::person_run_1, Field::person_run_2};
constexpr std::array life_columns{Field::life_pool,    Field::life_date,    Field::life_person,
                                  Field::life_species, Field::life_seen_as, Field::life_by_first};

/// One table that grows row by row without a copy of it beside.
class Sheet {
public:
  Sheet(TableKind kind, std::span<const Field> columns, std::size_t rows)
      : table_(Place{std::string(spec(kind).sheet), 1, 0}, rows + 1, columns.size()), columns_(columns) {
    for (std::size_t c = 0; c < columns.size(); ++c)
      table_.at(0, c) = Cell::of_text(std::string(spec(columns[c]).heading));
  }

  void add(SheetRow row) {
    ++filled_;
    for (std::size_t c = 0; c < columns_.size(); ++c)
      if (const auto cell = row.find(columns_[c]); cell != row.end()) {
        cells_ += !cell->second.empty();
        table_.at(filled_, c) = std::move(cell->second);
      }
  }

  void hand_over(BigSeason& season) {
    season.typed_cells += cells_;
    season.tables.push_back(std::move(table_));
  }

private:
  Table table_;
  std::span<const Field> columns_;
  std::size_t filled_ = 0;
  std::size_t cells_ = 0;
};

Cell word(std::string_view text) {
  return Cell::of_text(std::string(text));
}
std::string pool_code(std::size_t pool) {
  return fmt::format("P{}", pool + 1);
}
std::string person_code(std::size_t pool) {
  return fmt::format("V{}", pool / pools_a_person + 1);
}

TruePool invent_pool(std::size_t index, Chance& chance) {
  TruePool pool;
  pool.code = pool_code(index);
  pool.longest = chance.between(11, 34);
  pool.widest = pool.longest * chance.between(0.45, 0.85);
  pool.deepest = chance.between(0.6, 0.95);
  pool.peak = chance.between(0.86, 0.97);
  pool.fall = chance.between(0.003, 0.005);
  pool.warmth = chance.about(0, 0.5);
  return pool;
}

Hand hand_of(std::size_t pool, Writing writing) {
  const std::size_t person = pool / pools_a_person;
  switch (writing) {
  case Writing::bare:
    break;
  case Writing::mixed:
    return person % 7 == 3 ? Hand::metric : person % 7 == 5 ? Hand::with_marks : Hand::bare;
  case Writing::units:
    return person % 2 == 0 ? Hand::metric : Hand::with_marks;
  }
  return Hand::bare;
}

/// The demo's people write Fahrenheit without a unit.
Cell temperature(double celsius, Hand hand) {
  Cell cell = demo::written_temperature(celsius, hand);
  return hand == Hand::with_marks ? Cell::of_text(fmt::format("{} F", cell.number())) : cell;
}

/// A mistake of the kind that falls to this visit.
void spoil(SheetRow& row, std::size_t kind) {
  switch (kind % 5) {
  case 0:
    row[Field::visit_fill] = Cell::of_number(130);
    break;
  case 1:
    std::swap(row[Field::visit_length], row[Field::visit_width]);
    break;
  case 2:
    row[Field::visit_person] = word("nobody");
    break;
  case 3:
    row[Field::visit_water] = word("no standing water");
    break;
  default:
    std::swap(row[Field::visit_start], row[Field::visit_end]);
    break;
  }
}

SheetRow visit(const TruePool& pool, std::size_t index, std::size_t day, Hand hand, Chance& chance) {
  const double date = static_cast<double>(demo::day_of_year(3, 24) + static_cast<int>(day));
  const double depth = std::max(0.05, demo::depth_on(pool, date) + chance.about(0, 0.004));
  const double scale = std::sqrt(depth / pool.deepest);
  const double fill = std::clamp(std::round(20 * std::pow(depth / pool.deepest, 1.5)) * 5, 5.0, 100.0);
  const double start = static_cast<double>(9 * 60 + index % pools_a_person * 75);
  const ClassTable& depths = default_depth_classes();
  const ClassTable& fills = default_fill_classes();
  SheetRow row;
  row[Field::visit_pool] = Cell::of_text(pool.code);
  row[Field::visit_date] = Cell::of_date(demo::serial_of(static_cast<int>(date)));
  row[Field::visit_start] = Cell::of_date(start / (24 * 60));
  row[Field::visit_end] = Cell::of_date((start + 30) / (24 * 60));
  row[Field::visit_person] = Cell::of_text(person_code(index));
  row[Field::visit_water] = word("standing water");
  row[Field::visit_rain] = word(day % 3 == 0 ? "some rain" : "no rain");
  for (const Field field :
       {Field::visit_temperature_1, Field::visit_temperature_2, Field::visit_temperature_3})
    row[field] = temperature(demo::warmth_on(pool, date) + chance.about(0, 0.35), hand);
  row[Field::visit_probe_depth] = Cell::of_number(depth > 0.25 ? 6 : 2);
  row[Field::visit_depth] = demo::written_depth(depth, hand);
  row[Field::visit_depth_tool] = word("stick");
  if (day % 3 == 0)
    row[Field::visit_depth_class] = word(depths.rows[classify(depths, depth, Unit::metre).value()].label);
  row[Field::visit_fill] = Cell::of_number(fill);
  if (day % 4 == 0)
    row[Field::visit_fill_class] = word(fills.rows[classify(fills, fill, Unit::percent).value()].label);
  row[Field::visit_length] = demo::written_length(pool.longest * scale * chance.about(1, 0.01), hand);
  row[Field::visit_width] = demo::written_length(pool.widest * scale * chance.about(1, 0.01), hand);
  row[Field::visit_size_tool] = word("tape");
  row[Field::visit_isolated] = word("yes");
  row[Field::visit_inlet] = word("none");
  row[Field::visit_outlet] = word("none");
  row[Field::visit_joined] = word("nothing");
  row[Field::visit_edge_seen] = word("all of it");
  return row;
}

SheetRow count(const TruePool& pool, std::size_t index, std::size_t nth) {
  const bool frog = nth % 2 == 0;
  SheetRow row;
  row[Field::life_pool] = Cell::of_text(pool.code);
  row[Field::life_date] =
      Cell::of_date(demo::serial_of(demo::day_of_year(4, 5) + static_cast<int>(nth / 2 * 7)));
  row[Field::life_person] = Cell::of_text(person_code(index));
  row[Field::life_species] = word(frog ? "wood frog" : "spotted salamander");
  row[Field::life_seen_as] = word("egg masses");
  row[Field::life_by_first] = Cell::of_number(static_cast<double>(20 + index % 30 + nth));
  return row;
}

Table settings() {
  const auto day = [](int month, int number) {
    return Cell::of_date(demo::serial_of(demo::day_of_year(month, number)));
  };
  const std::array<std::pair<std::string_view, Cell>, 4> lines{
      {{"season_year", Cell::of_number(demo::season_year)},
       {"first_day", day(3, 15)},
       {"last_day", day(7, 15)},
       {"today", day(7, 20)}}};
  Table table(Place{std::string(spec(TableKind::settings).sheet), 1, 0}, lines.size() + 1, 2);
  table.at(0, 0) = word(spec(Field::setting_label).heading);
  table.at(0, 1) = word(spec(Field::setting_value).heading);
  for (std::size_t i = 0; i < lines.size(); ++i) {
    table.at(i + 1, 0) = word(lines[i].first);
    table.at(i + 1, 1) = lines[i].second;
  }
  return table;
}

} // namespace

BigSeason big_season(std::size_t visits, Writing writing, std::size_t to_each_pool) {
  const std::size_t pools = (visits + to_each_pool - 1) / to_each_pool;
  Chance chance(2026);
  BigSeason season;
  season.visits = visits;
  std::vector<TruePool> true_pools;
  for (std::size_t i = 0; i < pools; ++i)
    true_pools.push_back(invent_pool(i, chance));

  // Round by round, as a season comes in: all pools of one day, then the next day.
  Sheet visit_sheet(TableKind::visits, visit_columns, visits);
  for (std::size_t i = 0; i < visits; ++i) {
    const std::size_t pool = i % pools;
    SheetRow row = visit(true_pools[pool], pool, i / pools, hand_of(pool, writing), chance);
    if (i % one_mistake_in == one_mistake_in / 2 + i / pools % 7) // not always the same pools
      spoil(row, i / one_mistake_in);
    visit_sheet.add(std::move(row));
  }
  visit_sheet.hand_over(season);

  Sheet pool_sheet(TableKind::pools, pool_columns, pools);
  for (const TruePool& pool : true_pools)
    pool_sheet.add({{Field::pool_code, Cell::of_text(pool.code)},
                    {Field::pool_name, Cell::of_text("Pool " + pool.code)},
                    {Field::pool_longest, demo::written_length(pool.longest, Hand::bare)},
                    {Field::pool_widest, demo::written_length(pool.widest, Hand::bare)},
                    {Field::pool_deepest, demo::written_depth(pool.deepest, Hand::bare)},
                    {Field::pool_isolated, word("yes")}});
  pool_sheet.hand_over(season);

  const std::size_t people = (pools + pools_a_person - 1) / pools_a_person;
  Sheet people_sheet(TableKind::people, people_columns, people);
  for (std::size_t i = 0; i < people; ++i)
    people_sheet.add({{Field::person_code, Cell::of_text(person_code(i * pools_a_person))},
                      {Field::person_name, Cell::of_text(fmt::format("Person {}", i + 1))},
                      {Field::person_counts, word("paces")},
                      {Field::person_course, Cell::of_number(100)},
                      {Field::person_run_1, Cell::of_number(19.5)},
                      {Field::person_run_2, Cell::of_number(20)}});
  people_sheet.hand_over(season);

  const std::size_t counts = visits / visits_a_count;
  Sheet life_sheet(TableKind::life, life_columns, counts);
  for (std::size_t i = 0; i < counts; ++i)
    life_sheet.add(count(true_pools[i % pools], i % pools, i / pools));
  life_sheet.hand_over(season);

  season.tables.push_back(settings());
  return season;
}

} // namespace wetspell::bench
