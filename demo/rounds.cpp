#include "demo/rounds.hpp"

#include "measure/class_table.hpp"
#include "quantity/unit.hpp"
#include "season/settings.hpp"
#include "table/day.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>

namespace wetspell::demo {

namespace {

constexpr std::array<std::pair<int, int>, 5> round_starts{{{3, 24}, {4, 14}, {5, 5}, {5, 26}, {6, 16}}};
constexpr std::array<const char*, 5> rain_words_by_round{"some rain", "some rain", "no rain", "much rain",
                                                         "no rain"};
constexpr double days_in_round = 6;
constexpr double dried = 0.02; // metres that are left when people call a pool dry
constexpr double first_hour = 9;

double rounded(double value, double step) {
  return std::round(value / step) * step;
}

Cell word(const char* text) {
  return Cell::of_text(text);
}

/// What one visit is made of.
struct Outing {
  const TruePool& pool;
  const TruePerson& person;
  std::size_t round;
  int day;
  double depth; ///< metres as a stick read it: the truth and a little
  bool dry;
  bool alone;
  const TruePerson& companion;
};

std::size_t class_of(const ClassTable& table, double value, Unit unit) {
  return classify(table, value, unit).value();
}

void write_water(SheetRow& row, const Outing& outing, Chance& chance) {
  row[Field::visit_water] = word(outing.dry ? "no standing water" : "standing water");
  row[Field::visit_rain] = word(rain_words_by_round[outing.round]);
  if (outing.dry) {
    row[Field::visit_fill] = Cell::of_number(0);
    return;
  }
  const bool covers_the_probe = outing.depth > 0.12;
  const double usual = warmth_on(outing.pool, outing.day);
  for (const Field field :
       {Field::visit_temperature_1, Field::visit_temperature_2, Field::visit_temperature_3})
    if (covers_the_probe)
      row[field] = written_temperature(usual + chance.about(0, 0.35), outing.person.hand);
  if (covers_the_probe)
    row[Field::visit_probe_depth] = Cell::of_number(outing.depth > 0.25 ? 6 : 2);

  const Cell depth = written_depth(outing.depth, outing.person.hand);
  row[Field::visit_depth] = depth;
  row[Field::visit_depth_tool] = word("stick");
  if (chance.one_in(3)) {
    const ClassTable& classes = default_depth_classes();
    row[Field::visit_depth_class] =
        Cell::of_text(classes.rows[class_of(classes, outing.depth, Unit::metre)].label);
  }
  const double share = std::pow(outing.depth / outing.pool.deepest, 1.5);
  const double fill = std::clamp(rounded(100 * share, 5), 5.0, 100.0);
  row[Field::visit_fill] = Cell::of_number(fill);
  if (chance.one_in(4)) {
    const ClassTable& classes = default_fill_classes();
    row[Field::visit_fill_class] = Cell::of_text(classes.rows[class_of(classes, fill, Unit::percent)].label);
  }
}

Cell paced(double metres, const TruePerson& person, Chance& chance) {
  const double paces = metres / person.pace * chance.about(1, 0.012);
  return person.steps ? Cell::of_text(fmt::format("{:.0f} steps", 2 * paces))
                      : Cell::of_text(fmt::format("{} paces", rounded(paces, 0.5)));
}

void write_size(SheetRow& row, const Outing& outing, Chance& chance) {
  if (outing.dry)
    return;
  const double scale = std::sqrt(outing.depth / outing.pool.deepest);
  const double length = outing.pool.longest * scale * chance.about(1, 0.01);
  const double width = outing.pool.widest * scale * chance.about(1, 0.01);
  if (outing.person.paces) {
    row[Field::visit_length] = paced(length, outing.person, chance);
    row[Field::visit_width] = paced(width, outing.person, chance);
    row[Field::visit_size_tool] = word("paces");
    row[Field::visit_paced_by] = Cell::of_text(outing.person.code);
  } else {
    row[Field::visit_length] = written_length(length, outing.person.hand);
    row[Field::visit_width] = written_length(width, outing.person.hand);
    row[Field::visit_size_tool] = word("tape");
  }
}

void write_setting(SheetRow& row, const TruePool& pool) {
  row[Field::visit_isolated] = word(pool.isolated ? "yes" : "no");
  row[Field::visit_inlet] = word(pool.isolated ? (pool.dry_inlet ? "dry channel" : "none") : "flowing");
  row[Field::visit_outlet] = word(pool.isolated ? "none" : "flowing");
  row[Field::visit_joined] = word(pool.isolated ? "nothing" : "a stream");
  row[Field::visit_edge_seen] = word("all of it");
}

SheetRow write_visit(const Outing& outing, double start, Chance& chance) {
  SheetRow row;
  row[Field::visit_pool] = Cell::of_text(outing.pool.code);
  row[Field::visit_date] = Cell::of_date(serial_of(outing.day));
  row[Field::visit_start] = Cell::of_date(start / (24 * 60));
  row[Field::visit_end] = Cell::of_date((start + rounded(chance.between(25, 40), 5)) / (24 * 60));
  row[Field::visit_person] = Cell::of_text(outing.person.code);
  if (!outing.alone)
    row[Field::visit_second_person] = Cell::of_text(outing.companion.code);
  write_water(row, outing, chance);
  write_size(row, outing, chance);
  write_setting(row, outing.pool);
  return row;
}

void write_count(SeasonRows& season, const Outing& outing, const char* species, double truth,
                 Chance& chance) {
  SheetRow row;
  row[Field::life_pool] = Cell::of_text(outing.pool.code);
  row[Field::life_date] = Cell::of_date(serial_of(outing.day));
  row[Field::life_person] = Cell::of_text(outing.person.code);
  row[Field::life_species] = word(species);
  row[Field::life_seen_as] = word("egg masses");
  const double first = std::round(truth * chance.between(0.9, 1));
  row[Field::life_by_first] = Cell::of_number(first);
  if (!outing.alone) {
    const double second = std::round(truth * chance.between(0.9, 1));
    row[Field::life_second_person] = Cell::of_text(outing.companion.code);
    row[Field::life_by_second] = Cell::of_number(second);
    row[Field::life_by_both] = Cell::of_number(std::floor(std::min(first, second) * chance.between(0.9, 1)));
  }
  season.tables[TableKind::life].push_back(std::move(row));
}

void write_life(SeasonRows& season, const Outing& outing, Chance& chance) {
  if (outing.dry)
    return;
  constexpr std::array<double, 5> frog_share{0.8, 1, 0, 0, 0};
  constexpr std::array<double, 5> salamander_share{0, 0.85, 1, 0, 0};
  if (frog_share[outing.round] > 0)
    write_count(season, outing, "wood frog", outing.pool.frog_masses * frog_share[outing.round], chance);
  if (salamander_share[outing.round] > 0)
    write_count(season, outing, "spotted salamander",
                outing.pool.salamander_masses * salamander_share[outing.round], chance);
}

void write_rounds(SeasonRows& season, const Programme& programme, Chance& chance) {
  for (std::size_t round = 0; round < round_starts.size(); ++round) {
    std::map<std::pair<std::string, int>, double> busy_until; // a person's day, minutes since midnight
    for (std::size_t p = 0; p < programme.pools.size(); ++p) {
      const TruePool& pool = programme.pools[p];
      const int day = day_of_year(round_starts[round].first, round_starts[round].second) +
                      static_cast<int>(std::fmod(static_cast<double>(pool.visitor), days_in_round));
      const double truth = depth_on(pool, day);
      const bool dry = truth < dried;
      const TruePerson& person = programme.people[pool.visitor];
      const TruePerson& companion = programme.people[(pool.visitor + 14) % person_count];
      const Outing outing{pool, person,     round,    day, dry ? 0 : truth + chance.about(0, 0.004),
                          dry,  p % 3 != 0, companion};
      double& busy = busy_until.try_emplace({person.code, day}, first_hour * 60).first->second;
      const double start = busy + rounded(chance.between(0, 15), 5);
      season.tables[TableKind::visits].push_back(write_visit(outing, start, chance));
      busy = start + 75;
      write_life(season, outing, chance);
    }
  }
}

void write_pools(SeasonRows& season, const Programme& programme) {
  for (std::size_t i = 0; i < programme.pools.size(); ++i) {
    const TruePool& pool = programme.pools[i];
    SheetRow row;
    row[Field::pool_code] = Cell::of_text(pool.code);
    row[Field::pool_name] = Cell::of_text(pool.name);
    row[Field::pool_locality] = Cell::of_text(pool.locality);
    row[Field::pool_forest] = Cell::of_number(static_cast<double>(60 + 5 * (i % 8)));
    row[Field::pool_permission] = word("yes");
    row[Field::pool_longest] = written_length(pool.longest, Hand::bare);
    row[Field::pool_widest] = written_length(pool.widest, Hand::bare);
    row[Field::pool_deepest] = written_depth(pool.deepest, Hand::bare);
    row[Field::pool_isolated] = word(pool.isolated ? "yes" : "no");
    season.tables[TableKind::pools].push_back(std::move(row));
  }
}

void write_people(SeasonRows& season, const Programme& programme, Chance& chance) {
  for (const TruePerson& person : programme.people) {
    SheetRow row;
    row[Field::person_code] = Cell::of_text(person.code);
    row[Field::person_name] = Cell::of_text(person.name);
    if (person.paces) {
      row[Field::person_counts] = word(person.steps ? "steps" : "paces");
      row[Field::person_course] = person.course == 30 ? Cell::of_text("30 m") : Cell::of_number(100);
      const double count = person.course / person.pace * (person.steps ? 2 : 1);
      for (const Field run : {Field::person_run_1, Field::person_run_2, Field::person_run_3})
        row[run] = Cell::of_number(rounded(count * chance.about(1, 0.008), person.steps ? 1 : 0.5));
    }
    season.tables[TableKind::people].push_back(std::move(row));
  }
}

std::vector<std::pair<Setting, Cell>> settings() {
  return {
      {Setting::programme, word("Tallow Ridge pool watch")},
      {Setting::season_year, Cell::of_number(season_year)},
      {Setting::first_day, Cell::of_date(serial_of(day_of_year(3, 15)))},
      {Setting::last_day, Cell::of_date(serial_of(day_of_year(7, 15)))},
      {Setting::today, Cell::of_date(serial_of(day_of_year(7, 20)))},
  };
}

} // namespace

SheetRow write_visit_between(const Programme& programme, const TruePool& pool, int day, Chance& chance) {
  const double truth = depth_on(pool, day);
  const bool dry = truth < dried;
  const TruePerson& person = programme.people[pool.visitor];
  constexpr std::size_t round = 2; // when it did not rain
  const Outing outing{pool, person, round, day, dry ? 0 : truth, dry, true, person};
  return write_visit(outing, first_hour * 60 + rounded(chance.between(0, 15), 5), chance);
}

double serial_of(int day_of_year) {
  using namespace std::chrono;
  return wetspell::serial_of(sys_days{year{season_year} / January / 1} + days{day_of_year - 1});
}

Cell written_depth(double metres, Hand hand) {
  const double inches = rounded(from_si(metres, Unit::inch), 0.5);
  if (hand == Hand::metric)
    return Cell::of_text(fmt::format("{:.0f} cm", from_si(metres, Unit::centimetre)));
  if (hand == Hand::with_marks && inches >= 12) {
    const double feet = std::floor(inches / 12);
    const double whole = std::floor(inches - 12 * feet);
    const bool half = inches - 12 * feet - whole > 0.25;
    return Cell::of_text(fmt::format("{}' {}{}\"", feet, whole, half ? "½" : ""));
  }
  return hand == Hand::with_marks ? Cell::of_text(fmt::format("{}\"", inches)) : Cell::of_number(inches);
}

Cell written_length(double metres, Hand hand) {
  if (hand == Hand::metric)
    return Cell::of_text(fmt::format("{:.1f} m", metres));
  const double feet = rounded(from_si(metres, Unit::foot), 0.5);
  return hand == Hand::with_marks ? Cell::of_text(fmt::format("{} ft", feet)) : Cell::of_number(feet);
}

Cell written_temperature(double celsius, Hand hand) {
  if (hand == Hand::metric)
    return Cell::of_text(fmt::format("{:.1f} °C", celsius));
  return Cell::of_number(rounded(from_si(celsius, Unit::fahrenheit), 0.5));
}

SeasonRows write_season(const Programme& programme, Chance& chance) {
  SeasonRows season;
  season.settings = settings();
  write_pools(season, programme);
  write_people(season, programme, chance);
  write_rounds(season, programme, chance);
  return season;
}

} // namespace wetspell::demo
