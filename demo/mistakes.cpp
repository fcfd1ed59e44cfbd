#include "demo/mistakes.hpp"

#include "demo/rounds.hpp"
#include "quantity/unit.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <map>
#include <optional>
#include <stdexcept>
#include <string_view>
#include <utility>

namespace wetspell::demo {

namespace {

class Spoiler {
public:
  Spoiler(SeasonRows& season, const Programme& programme, Chance& chance)
      : season_(season), programme_(programme), chance_(chance) {}

  using Test = std::function<bool(const SheetRow&)>;

  /// A row that fits the mistake, far in time from what was spoiled before at its pool. The last pools of
  /// every locality stay as they are. Throws std::logic_error when the season has no such row left.
  std::size_t row_where(TableKind table, const char* how, const Test& fits) {
    const auto& rows = season_.tables[table];
    std::vector<std::size_t> fitting;
    for (std::size_t i = 0; i < rows.size(); ++i)
      if (free(table, rows[i]) && fits(rows[i]))
        fitting.push_back(i);
    if (fitting.empty())
      throw std::logic_error(std::string("no row of the season is left for the mistake: ") + how);
    const std::size_t chosen = chance_.pick(fitting);
    touched_[{table, to_text(pool_of(table, rows[chosen]))}].push_back(day_of(table, rows[chosen]));
    return chosen;
  }

  void write(TableKind table, std::size_t row, Field field, Cell content, const char* family,
             const char* how) {
    SheetRow& cells = season_.tables[table][row];
    const std::string pool = to_text(pool_of(table, cells));
    Cell& cell = cells[field];
    season_.spoiled.push_back({table, row, field, pool, family, how, to_text(cell), to_text(content)});
    cell = std::move(content);
  }

  /// The usual case: one cell of one visit.
  void visit(const char* family, const char* how, Field field, const Test& fits,
             const std::function<Cell(const SheetRow&)>& content) {
    const std::size_t row = row_where(TableKind::visits, how, fits);
    write(TableKind::visits, row, field, content(season_.tables[TableKind::visits][row]), family, how);
  }
  void life(const char* family, const char* how, Field field, const Test& fits,
            const std::function<Cell(const SheetRow&)>& content) {
    const std::size_t row = row_where(TableKind::life, how, fits);
    write(TableKind::life, row, field, content(season_.tables[TableKind::life][row]), family, how);
  }

  [[nodiscard]] const TruePool& true_pool(const SheetRow& visit) const {
    const std::string code = to_text(visit.at(Field::visit_pool));
    return *std::find_if(programme_.pools.begin(), programme_.pools.end(),
                         [&](const TruePool& pool) { return pool.code == code; });
  }
  [[nodiscard]] const Programme& programme() const { return programme_; }
  SeasonRows& season() { return season_; }

private:
  static constexpr double days_apart = 40;
  static constexpr std::string_view last_spoiled =
      "07"; // the number of the last pool in a locality that is touched

  static const Cell& cell(const SheetRow& row, Field field) {
    static const Cell none;
    const auto found = row.find(field);
    return found == row.end() ? none : found->second;
  }
  static const Cell& pool_of(TableKind table, const SheetRow& row) {
    return cell(row, table == TableKind::life ? Field::life_pool : Field::visit_pool);
  }
  static double day_of(TableKind table, const SheetRow& row) {
    return cell(row, table == TableKind::life ? Field::life_date : Field::visit_date).number();
  }
  [[nodiscard]] bool free(TableKind table, const SheetRow& row) const {
    const std::string pool = to_text(pool_of(table, row));
    if (pool.size() != 3 || pool.substr(1) > last_spoiled)
      return false;
    const auto found = touched_.find({table, pool});
    return found == touched_.end() ||
           std::all_of(found->second.begin(), found->second.end(),
                       [&](double day) { return std::abs(day - day_of(table, row)) >= days_apart; });
  }

  SeasonRows& season_;
  const Programme& programme_;
  Chance& chance_;
  std::map<std::pair<TableKind, std::string>, std::vector<double>>
      touched_; ///< days on which a pool was spoiled
};

bool has(const SheetRow& row, Field field) {
  const auto found = row.find(field);
  return found != row.end() && !found->second.empty();
}

std::optional<double> number(const SheetRow& row, Field field) {
  const auto found = row.find(field);
  if (found == row.end() || found->second.kind() != CellKind::number)
    return std::nullopt;
  return found->second.number();
}

bool says(const SheetRow& row, Field field, std::string_view word) {
  const auto found = row.find(field);
  return found != row.end() && found->second.text() == word;
}

bool wet(const SheetRow& row) {
  return says(row, Field::visit_water, "standing water");
}
bool dry(const SheetRow& row) {
  return says(row, Field::visit_water, "no standing water");
}

/// A bare number of at least `least` in the field.
Spoiler::Test bare(Field field, double least) {
  return [=](const SheetRow& row) { return number(row, field).value_or(-1) >= least; };
}

double day(const SheetRow& row) {
  return row.at(Field::visit_date).number();
}
bool in_round(const SheetRow& row, int first_month, int first_day) {
  const double start = serial_of(day_of_year(first_month, first_day));
  return day(row) >= start && day(row) < start + 7;
}

std::function<Cell(const SheetRow&)> text(const char* content) {
  return [=](const SheetRow&) { return Cell::of_text(content); };
}
std::function<Cell(const SheetRow&)> value(double content) {
  return [=](const SheetRow&) { return Cell::of_number(content); };
}
std::function<Cell(const SheetRow&)> changed(Field field, const std::function<double(double)>& change) {
  return [=](const SheetRow& row) { return Cell::of_number(change(row.at(field).number())); };
}

constexpr const char* identity = "identity and time";
void spoil_identity(Spoiler& s) {
  s.visit(
      identity, "pool code mistyped", Field::visit_pool,
      [](const SheetRow& r) { return has(r, Field::visit_pool); },
      [](const SheetRow& r) { return Cell::of_text(to_text(r.at(Field::visit_pool)) + "q"); });
  s.visit(
      identity, "person's code mistyped", Field::visit_person,
      [](const SheetRow& r) { return !has(r, Field::visit_paced_by) && !has(r, Field::visit_second_person); },
      [](const SheetRow& r) { return Cell::of_text(to_text(r.at(Field::visit_person)) + "X"); });
  s.visit(identity, "date left out", Field::visit_date, wet, [](const SheetRow&) { return Cell{}; });
  s.visit(
      identity, "no such date", Field::visit_date, [](const SheetRow& r) { return in_round(r, 4, 14); },
      text("31 Apr 2026"));
  s.visit(
      identity, "date that can be read both ways", Field::visit_date,
      [](const SheetRow& r) { return in_round(r, 5, 5); }, text("5/6/2026"));
  s.visit(identity, "last year written", Field::visit_date, wet,
          [](const SheetRow& r) { return Cell::of_date(day(r) - 365); });
  s.visit(
      identity, "a date still to come", Field::visit_date,
      [](const SheetRow& r) { return in_round(r, 6, 16); },
      [](const SheetRow& r) { return Cell::of_date(day(r) + 60); });
  s.visit(identity, "end and start exchanged", Field::visit_end, wet, [](const SheetRow& r) {
    return Cell::of_date(r.at(Field::visit_start).number() - 25.0 / (24 * 60));
  });
  s.visit(identity, "a visit of a whole working day", Field::visit_end, wet,
          [](const SheetRow& r) { return Cell::of_date(r.at(Field::visit_start).number() + 8.0 / 24); });
  { // the same visit typed twice
    const std::size_t row = s.row_where(TableKind::visits, "the same visit typed twice", wet);
    auto& visits = s.season().tables[TableKind::visits];
    SheetRow twin = visits[row];
    visits.push_back(std::move(twin));
    s.season().spoiled.push_back(
        {TableKind::visits, visits.size() - 1, Field::visit_pool, to_text(visits.back()[Field::visit_pool]),
         identity, "the same visit typed twice", "", to_text(visits.back()[Field::visit_pool])});
  }
}

constexpr const char* temperature = "temperature";
void spoil_temperature(Spoiler& s) {
  const auto bare_reading = bare(Field::visit_temperature_2, 33);
  s.visit(temperature, "a reading left out", Field::visit_temperature_3, bare_reading,
          [](const SheetRow&) { return Cell{}; });
  s.visit(temperature, "decimal point left out", Field::visit_temperature_2, bare_reading,
          changed(Field::visit_temperature_2, [](double f) { return f * 10; }));
  s.visit(temperature, "Celsius typed where Fahrenheit is expected", Field::visit_temperature_1, bare_reading,
          changed(Field::visit_temperature_1, [](double f) { return std::round((f - 32) / 0.18) / 10; }));
  s.visit(temperature, "Fahrenheit written as Celsius", Field::visit_temperature_1, bare_reading,
          [](const SheetRow& r) {
            return Cell::of_text(fmt::format("{} °C", r.at(Field::visit_temperature_1).number()));
          });
  s.visit(temperature, "one reading far from the others", Field::visit_temperature_3, bare_reading,
          changed(Field::visit_temperature_3, [](double f) { return f + 9; }));
  s.visit(temperature, "a mean that is not the mean", Field::visit_temperature_mean, bare_reading,
          changed(Field::visit_temperature_1, [](double f) { return f + 4; }));
  s.visit(temperature, "letter O for a zero", Field::visit_temperature_1, bare_reading, text("5O.5"));
  s.visit(temperature, "temperature in a dry pool", Field::visit_temperature_1, dry, value(64));
  s.visit(
      temperature, "probe deeper than the water", Field::visit_probe_depth,
      [](const SheetRow& r) { return number(r, Field::visit_depth).value_or(99) < 20; }, value(22));
}

constexpr const char* depth = "depth";
void spoil_depth(Spoiler& s) {
  s.visit(depth, "decimal point left out", Field::visit_depth, bare(Field::visit_depth, 14),
          changed(Field::visit_depth, [](double in) { return in * 10; }));
  s.visit(
      depth, "centimetres typed where inches are expected", Field::visit_depth,
      [](const SheetRow& r) { return bare(Field::visit_depth, 14)(r) && !has(r, Field::visit_depth_class); },
      changed(Field::visit_depth, [](double in) { return std::round(in * 2.54); }));
  s.visit(depth, "depth in a dry pool", Field::visit_depth, dry, value(7));
  s.visit(
      depth, "class that is not the depth's", Field::visit_depth_class,
      [](const SheetRow& r) {
        return number(r, Field::visit_depth).value_or(0) > 14 && has(r, Field::visit_depth_class);
      },
      text("over 0 to 6 in"));
  s.visit(depth, "two depths in one cell", Field::visit_depth, bare(Field::visit_depth, 5), text("12 14"));
  s.visit(depth, "a temperature in the depth's cell", Field::visit_depth, bare(Field::visit_depth, 5),
          text("52 °F"));
  s.visit(
      depth, "depth left out", Field::visit_depth,
      [](const SheetRow& r) { return bare(Field::visit_depth, 8)(r) && !has(r, Field::visit_depth_class); },
      [](const SheetRow&) { return Cell{}; });
}

constexpr const char* fill = "fill";
void spoil_fill(Spoiler& s) {
  s.visit(fill, "more than full", Field::visit_fill, bare(Field::visit_fill, 50),
          changed(Field::visit_fill, [](double percent) { return percent + 100; }));
  s.visit(fill, "empty, yet with deep water", Field::visit_fill, bare(Field::visit_fill, 60), value(0));
  s.visit(fill, "part full, yet dry", Field::visit_fill, dry, value(40));
  s.visit(
      fill, "class that is not the per cent's", Field::visit_fill_class,
      [](const SheetRow& r) {
        return number(r, Field::visit_fill).value_or(0) > 55 && has(r, Field::visit_fill_class);
      },
      text("0 to 24 %"));
}

constexpr const char* size = "size";
void spoil_size(Spoiler& s) {
  const auto taped = bare(Field::visit_length, 25);
  { // both cells of the pair are wrong
    const std::size_t row =
        s.row_where(TableKind::visits, "length and width exchanged", [&](const SheetRow& r) {
          return taped(r) &&
                 number(r, Field::visit_width).value_or(999) < 0.8 * *number(r, Field::visit_length);
        });
    SheetRow& visit = s.season().tables[TableKind::visits][row];
    const Cell length = visit[Field::visit_length];
    const Cell width = visit[Field::visit_width];
    s.write(TableKind::visits, row, Field::visit_length, width, size, "length and width exchanged");
    s.write(TableKind::visits, row, Field::visit_width, length, size, "length and width exchanged");
  }
  s.visit(size, "metres typed where feet are expected", Field::visit_length, bare(Field::visit_length, 40),
          changed(Field::visit_length, [](double ft) { return std::round(ft * 3.048) / 10; }));
  s.visit(
      size, "longer than the pool ever was", Field::visit_length,
      [&](const SheetRow& r) {
        return taped(r) &&
               *number(r, Field::visit_length) > from_si(0.85 * s.true_pool(r).longest, Unit::foot);
      },
      changed(Field::visit_length, [](double ft) { return std::round(ft * 1.6); }));
  const auto has_word = [](Field field, std::string_view word) {
    return [=](const SheetRow& r) {
      return has(r, field) && r.at(field).text().find(word) != std::string::npos;
    };
  };
  s.visit(size, "steps counted, paces written", Field::visit_length, has_word(Field::visit_length, "paces"),
          [](const SheetRow& r) {
            return Cell::of_text(
                fmt::format("{} paces", 2 * std::stod(std::string(r.at(Field::visit_length).text()))));
          });
  s.visit(size, "paces of somebody without a calibration", Field::visit_paced_by,
          has_word(Field::visit_length, "paces"),
          [&](const SheetRow&) { return Cell::of_text(s.programme().people[1].code); });
  s.visit(size, "width left out", Field::visit_width, taped, [](const SheetRow&) { return Cell{}; });
}

constexpr const char* setting = "setting";
void spoil_setting(Spoiler& s) {
  const auto alone = [](const SheetRow& r) { return says(r, Field::visit_isolated, "yes") && wet(r); };
  s.visit(setting, "isolated, yet water flows in", Field::visit_inlet, alone, text("flowing"));
  s.visit(setting, "isolated, yet joined to other water", Field::visit_joined, alone, text("a pond or lake"));
  s.visit(setting, "isolated said from half of the edge", Field::visit_edge_seen, alone, text("about half"));
}

constexpr const char* life = "life";
void spoil_life(Spoiler& s) {
  s.life(
      life, "more seen by both than by either", Field::life_by_both,
      [](const SheetRow& r) { return has(r, Field::life_by_both) && has(r, Field::life_by_second); },
      [](const SheetRow& r) {
        return Cell::of_number(
            std::max(r.at(Field::life_by_first).number(), r.at(Field::life_by_second).number()) + 8);
      });
  s.life(
      life, "a count with a nought too many", Field::life_by_first,
      [](const SheetRow& r) {
        return !has(r, Field::life_by_second) && r.at(Field::life_by_first).number() > 20;
      },
      [](const SheetRow& r) { return Cell::of_number(10 * r.at(Field::life_by_first).number()); });
  s.life(
      life, "species mistyped", Field::life_species,
      [](const SheetRow& r) { return says(r, Field::life_species, "wood frog"); }, text("wood frg"));
  s.life(
      life, "half an egg mass", Field::life_by_first,
      [](const SheetRow& r) { return !has(r, Field::life_by_second); },
      [](const SheetRow& r) { return Cell::of_number(r.at(Field::life_by_first).number() + 0.5); });
}

constexpr const char* among = "among pools";
void spoil_among(Spoiler& s) {
  // Each number could be right by itself; the other pools of those days tell.
  s.visit(
      among, "a depth unlike the other pools' change", Field::visit_depth,
      [&](const SheetRow& r) {
        const auto in = number(r, Field::visit_depth);
        return in && in_round(r, 5, 5) && *in > 12 && *in + 7 < from_si(s.true_pool(r).deepest, Unit::inch) &&
               !has(r, Field::visit_depth_class);
      },
      changed(Field::visit_depth, [](double in) { return in + 7; }));
  // a thermometer that reads too high: all three readings
  const std::size_t row =
      s.row_where(TableKind::visits, "a thermometer that reads too high", [](const SheetRow& r) {
        return bare(Field::visit_temperature_1, 33)(r) && in_round(r, 5, 26);
      });
  for (const Field field :
       {Field::visit_temperature_1, Field::visit_temperature_2, Field::visit_temperature_3}) {
    const double reading = s.season().tables[TableKind::visits][row][field].number();
    s.write(TableKind::visits, row, field, Cell::of_number(reading + 14), among,
            "a thermometer that reads 14 °F too high");
  }
}

} // namespace

void spoil(SeasonRows& season, const Programme& programme, Chance& chance) {
  Spoiler spoiler(season, programme, chance);
  spoil_among(spoiler); // the choosiest first
  spoil_fill(spoiler);
  spoil_depth(spoiler);
  spoil_size(spoiler);
  spoil_setting(spoiler);
  spoil_temperature(spoiler);
  spoil_identity(spoiler);
  spoil_life(spoiler);
}

} // namespace wetspell::demo
