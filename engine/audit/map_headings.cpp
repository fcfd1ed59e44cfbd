#include "audit/map_headings.hpp"

#include "audit/dates.hpp"
#include "audit/map_days.hpp"
#include "audit/map_reading.hpp"
#include "audit/mapper.hpp"
#include "audit/named_beside.hpp"
#include "audit/place_temperatures.hpp"
#include "audit/rests.hpp"
#include "season/heading.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace wetspell {

namespace {

constexpr std::array readings_in_order{Field::visit_temperature_1, Field::visit_temperature_2,
                                       Field::visit_temperature_3};
constexpr std::string_view may_be_pools = "names places; where they are the pools, say so under Field";
constexpr double worth_a_word = 0.3; // less sure is no reason to speak of it
constexpr std::array record_tables{TableKind::visits, TableKind::life, TableKind::pools, TableKind::people};

class Mapper {
public:
  Mapper(const Block& block, const MapHints& hints) : block_(block), hints_(hints) {
    for (std::size_t column = 0; column < block.headings.size(); ++column) {
      columns_.emplace_back(block, column);
      candidates_.push_back(columns_.back().candidates());
      given_.push_back(hints.given == nullptr ? nullptr : hints.given->find(block.headings[column].text));
    }
    named_ = named_beside(block, hints.pool);
  }

  BlockMap map() {
    BlockMap map;
    map.layout = block_.grid.turned() ? Layout::column_a_visit : Layout::row_a_visit;
    const bool readings = a_row_a_reading();
    AsTable best;
    for (const TableKind kind : record_tables)
      if (AsTable table = as_table(kind, readings); table.possible && table.score > best.score)
        best = std::move(table);
    for (const Column& column : columns_)
      map.columns.push_back(blank_mapping(column));
    if (!best.possible) {
      map.reason = why_none();
      for (std::size_t i = 0; i < columns_.size(); ++i)
        leave_open(map.columns[i], i, "the table is none of ours: " + map.reason);
      if (const auto nearest = nearest_key()) {
        Mapping& mapping = map.columns[nearest->column];
        mapping.confidence = nearest->candidate.score;
        mapping.reason = "left alone: " + nearest->candidate.reason;
        map.reason += fmt::format("; \"{}\" is nearest, {}", mapping.heading, nearest->candidate.reason);
      } else if (const Column* place = place_for_pool(as_table(TableKind::visits, false))) {
        map.reason += fmt::format("; \"{}\" {}", place->heading(), may_be_pools);
      }
      return map;
    }
    map.kind = best.kind;
    if (readings && best.kind == TableKind::visits)
      map.layout = Layout::row_a_reading;
    map.reason = fmt::format("{} columns are those of {}", best.taken.size(), in_words(best.kind));
    if (!best.has(pool_field(best.kind)) && best.kind != TableKind::people)
      named_.give_pools(map);
    if (date_elsewhere(best))
      named_.give_dates(map);
    for (const Taken& taken : best.taken)
      settle(map.columns[taken.column], taken.candidate);
    settle_parts(map);
    settle_counts(map);
    take_given(map);
    for (std::size_t i = 0; i < columns_.size(); ++i)
      if (map.columns[i].open() && map.columns[i].reason.empty())
        leave_open(map.columns[i], i, why_open(best, i));
    settle_units(map, columns_, {TitleUnits(block_.titles), hints_.settings});
    find_rests(map, columns_, [&](std::size_t column) { return given_[column] != nullptr; });
    if (map.layout == Layout::row_a_reading)
      map.words = map_reading_words(block_, map, hints_);
    return map;
  }

private:
  [[nodiscard]] const Column* with_part(Part part) const {
    for (const Column& column : columns_)
      if ((column.part_score(part) >= sure_enough && given_[column.at()] == nullptr) ||
          (given_[column.at()] != nullptr && given_[column.at()]->part == part))
        return &column;
    return nullptr;
  }

  /// Whether the day stands in lines beside the rows alone.
  [[nodiscard]] bool date_elsewhere(const AsTable& table) const {
    const bool dated = table.kind == TableKind::visits || table.kind == TableKind::life;
    return dated && !table.has(date_field(table.kind)) && !date_in_parts() && named_.any_date();
  }
  [[nodiscard]] bool pool_elsewhere() const { return named_.any_pool(); }

  [[nodiscard]] bool has_counts() const {
    return std::any_of(columns_.begin(), columns_.end(),
                       [](const Column& column) { return column.count_score() >= sure_enough; });
  }
  [[nodiscard]] bool a_row_a_reading() const {
    return with_part(Part::parameter) != nullptr && with_part(Part::value) != nullptr;
  }
  [[nodiscard]] bool date_in_parts() const {
    if (with_part(Part::month) == nullptr || with_part(Part::day) == nullptr)
      return false;
    return with_part(Part::year) != nullptr ||
           std::any_of(block_.titles.begin(), block_.titles.end(),
                       [](const std::string& title) { return year_in(title).has_value(); });
  }

  /// What a person said of a column, should the table be one of this kind.
  [[nodiscard]] std::optional<GivenMapping> given_in(TableKind kind, std::size_t column) const {
    return given_[column] == nullptr ? std::nullopt : hints_.given->find(block_.headings[column].text, kind);
  }

  static Mapping blank_mapping(const Column& column) {
    Mapping mapping;
    mapping.column = column.at();
    mapping.heading = column.heading();
    return mapping;
  }

  /// The columns given to fields of one kind, the surest first.
  AsTable as_table(TableKind kind, bool readings) const {
    AsTable table{kind, {}, 0, false};
    std::vector<Taken> wishes;
    for (std::size_t i = 0; i < columns_.size(); ++i) {
      if (const auto given = given_in(kind, i)) {
        if (given->field && spec(*given->field).table == kind)
          wishes.push_back({i, {*given->field, kind, 1.0, "given by a person"}});
        continue;
      }
      for (const Candidate& candidate : candidates_[i])
        if (candidate.table == kind && candidate.score >= sure_enough)
          wishes.push_back({i, candidate});
      if (hints_.own_headings)
        wish_own(kind, i, wishes);
    }
    if (kind == TableKind::visits)
      temperatures_side_by_side(wishes);
    several_temperatures(wishes);
    std::stable_sort(wishes.begin(), wishes.end(),
                     [](const Taken& a, const Taken& b) { return a.candidate.score > b.candidate.score; });
    for (Taken& wish : wishes) {
      const bool free = std::none_of(table.taken.begin(), table.taken.end(), [&](const Taken& t) {
        return t.column == wish.column || t.candidate.field == wish.candidate.field;
      });
      if (free)
        table.taken.push_back(std::move(wish));
    }
    for (const Taken& taken : table.taken)
      table.score += taken.candidate.score;
    table.possible = is_possible(
        table, {pool_elsewhere(), date_in_parts() || date_elsewhere(table), readings, has_counts()});
    return table;
  }

  /// A column under our own heading is what it says, even if somebody wrote a note into its only cell.
  void wish_own(TableKind kind, std::size_t column, std::vector<Taken>& wishes) const {
    constexpr double sure = 0.95;
    for (const HeadingMatch& match : read_heading(columns_[column].heading()).matches)
      if (match.exact && match.table == kind && spec(match.field).role == Role::typed)
        wishes.push_back(
            {column, {match.field, kind, sure, "word for word the heading of our own workbooks"}});
  }

  /// Readings by their place in the pool, in the order of the columns; the words alone would take "middle"
  /// for a second.
  void temperatures_side_by_side(std::vector<Taken>& wishes) const {
    const std::vector<std::size_t> group = temperatures_by_place(columns_);
    if (std::any_of(group.begin(), group.end(),
                    [&](std::size_t column) { return given_[column] != nullptr; }))
      return;
    std::erase_if(wishes, [&](const Taken& wish) {
      return std::find(group.begin(), group.end(), wish.column) != group.end();
    });
    constexpr double sure = 0.85;
    for (std::size_t i = 0; i < group.size(); ++i)
      wishes.push_back(
          {group[i],
           {readings_in_order[i], TableKind::visits, sure,
            fmt::format("one of {} temperatures side by side, by its place in the pool", group.size())}});
  }

  /// Two or three columns that only say "Temp" are the readings themselves, in their order.
  void several_temperatures(std::vector<Taken>& wishes) const {
    std::vector<Taken*> plain;
    bool numbered = false;
    for (Taken& wish : wishes) {
      numbered = numbered || wish.candidate.field == Field::visit_temperature_1;
      if (wish.candidate.field == Field::visit_temperature_mean && !columns_[wish.column].says_mean() &&
          given_[wish.column] == nullptr)
        plain.push_back(&wish);
    }
    if (numbered || plain.size() < 2 || plain.size() > 3 || visits_side_by_side(*plain[0], *plain[1]))
      return;
    for (std::size_t i = 0; i < plain.size(); ++i) {
      plain[i]->candidate.field = readings_in_order[i];
      plain[i]->candidate.reason += fmt::format("; one of {} such columns", plain.size());
    }
  }

  /// "Depth, Temp, Depth, Temp": what stands between two temperatures is there twice as well, so that each is
  /// of a visit of its own.
  [[nodiscard]] bool visits_side_by_side(const Taken& one, const Taken& next) const {
    const std::size_t first = std::min(one.column, next.column);
    const std::size_t second = std::max(one.column, next.column);
    std::size_t again = 0;
    for (std::size_t between = first + 1; between < second; ++between)
      for (std::size_t other = 0; other < columns_.size(); ++other)
        again += (other < first || other > second) && !columns_[between].heading().empty() &&
                 columns_[other].heading() == columns_[between].heading();
    return again > 0;
  }

  std::string why_none() const {
    std::string missing;
    const auto lacks = [&](bool there, std::string_view what) {
      if (!there)
        missing += fmt::format("{}{}", missing.empty() ? "" : ", no column of ", what);
    };
    const AsTable visits = as_table(TableKind::visits, false);
    lacks(visits.has(Field::visit_pool) || pool_elsewhere(), "pools");
    lacks(visits.has(Field::visit_date) || date_in_parts() || date_elsewhere(visits), "dates");
    lacks(pool_readings(visits) > 0, "readings that are taken at pools");
    return missing.empty() ? "too few of its columns are known" : "it has no column of " + missing;
  }

  /// The column whose words say pools, or dates, while its cells speak against it: to be put right on the
  /// map.
  [[nodiscard]] std::optional<Taken> nearest_key() const {
    const AsTable visits = as_table(TableKind::visits, false);
    for (std::size_t i = 0; i < columns_.size(); ++i)
      for (const Candidate& candidate : candidates_[i])
        if ((candidate.field == Field::visit_pool || candidate.field == Field::visit_date) &&
            !visits.has(candidate.field) && candidate.score > worth_a_word)
          return Taken{i, candidate};
    return std::nullopt;
  }

  /// A column of places where no column names the pools: they may be the pools, or towns.
  [[nodiscard]] const Column* place_for_pool(const AsTable& table) const {
    if (table.kind == TableKind::pools || table.has(pool_field(table.kind)) || pool_elsewhere())
      return nullptr;
    for (const Column& column : columns_)
      for (const Candidate& candidate : candidates_[column.at()])
        if (candidate.field == Field::pool_locality && candidate.score >= sure_enough)
          return &column;
    return nullptr;
  }

  std::string why_open(const AsTable& table, std::size_t column) const {
    if (place_for_pool(table) == &columns_[column])
      return fmt::format("it {}", may_be_pools);
    for (const Candidate& candidate : candidates_[column]) {
      if (candidate.score < sure_enough)
        continue;
      if (candidate.table == table.kind)
        for (const Taken& taken : table.taken)
          if (taken.candidate.field == candidate.field)
            return fmt::format("another column, \"{}\", holds {}", columns_[taken.column].heading(),
                               spec(candidate.field).heading);
    }
    if (columns_[column].heading().empty())
      return "it has no heading";
    if (!candidates_[column].empty() && candidates_[column].front().table != table.kind &&
        candidates_[column].front().score >= sure_enough)
      return fmt::format("it belongs to a table of {}", in_words(candidates_[column].front().table));
    return "its words and its cells name no field surely enough";
  }

  void leave_open(Mapping& mapping, std::size_t column, const std::string& why) const {
    mapping.confidence = candidates_[column].empty() ? 0 : candidates_[column].front().score;
    mapping.reason = "left alone: " + why;
    if (!candidates_[column].empty() && mapping.confidence < sure_enough && mapping.confidence > worth_a_word)
      mapping.reason += fmt::format("; nearest: {} ({})", spec(candidates_[column].front().field).heading,
                                    candidates_[column].front().reason);
  }

  static void settle(Mapping& mapping, const Candidate& candidate) {
    mapping.field = candidate.field;
    mapping.confidence = candidate.score;
    mapping.reason = candidate.reason;
  }

  void settle_parts(BlockMap& map) const {
    const auto put = [&](Part part, std::string_view what) {
      const Column* column = with_part(part);
      if (column == nullptr || !map.columns[column->at()].open())
        return;
      Mapping& mapping = map.columns[column->at()];
      mapping.part = part;
      mapping.confidence = column->part_score(part);
      mapping.reason = fmt::format("by its words and its cells: {}", what);
    };
    if (map.of(date_field(*map.kind)) == nullptr && date_in_parts()) {
      put(Part::year, "the year of the date");
      put(Part::month, "the month of the date");
      put(Part::day, "the day of the date");
    }
    if (map.layout == Layout::row_a_reading) {
      put(Part::parameter, "what was read");
      put(Part::value, "the reading");
      put(Part::unit_name, "the unit of the reading");
    }
  }

  void settle_counts(BlockMap& map) const {
    if (map.kind != TableKind::visits)
      return;
    for (const Column& column : columns_) {
      Mapping& mapping = map.columns[column.at()];
      if (!mapping.open() || given_[column.at()] != nullptr || column.count_score() < sure_enough)
        continue;
      mapping.count = column.guess().count;
      mapping.confidence = column.count_score();
      mapping.reason =
          fmt::format("by its words: counts of {} as {}", mapping.count->species, mapping.count->seen_as);
    }
  }

  void take_given(BlockMap& map) const {
    for (std::size_t i = 0; i < columns_.size(); ++i) {
      const auto given = given_in(*map.kind, i);
      if (!given)
        continue;
      Mapping& mapping = map.columns[i];
      mapping.confidence = 1;
      if (given->leave_alone) {
        mapping.field = std::nullopt;
        mapping.reason = "left alone: a person said so";
        continue;
      }
      mapping.part = given->part;
      mapping.count = given->count;
      mapping.unit = given->unit;
      mapping.reason =
          mapping.open() ? "left alone: a person gave it a field of another table" : "given by a person";
    }
  }

  const Block& block_;
  const MapHints& hints_;
  std::vector<Column> columns_;
  std::vector<std::vector<Candidate>> candidates_; ///< per column
  std::vector<const GivenMapping*> given_;         ///< per column
  NamedBeside named_;
};

} // namespace

std::string_view name(Layout layout) {
  switch (layout) {
  case Layout::row_a_visit:
    return "a row a visit";
  case Layout::row_a_reading:
    return "a row a reading";
  case Layout::column_a_visit:
    return "a column a visit";
  case Layout::cell_a_visit:
    return "a cell a visit";
  }
  return {};
}

std::string_view in_words(Layout layout, std::optional<TableKind> kind) {
  if (layout == Layout::row_a_visit && kind != TableKind::visits)
    return kind == TableKind::life     ? "a row a count"
           : kind == TableKind::pools  ? "a row a pool"
           : kind == TableKind::people ? "a row a person"
                                       : "";
  return name(layout);
}

const Mapping* BlockMap::of(Field field) const {
  const auto found = std::find_if(columns.begin(), columns.end(),
                                  [&](const Mapping& mapping) { return mapping.field == field; });
  return found == columns.end() ? nullptr : &*found;
}

const Mapping* BlockMap::of(Part part) const {
  const auto found = std::find_if(columns.begin(), columns.end(),
                                  [&](const Mapping& mapping) { return mapping.part == part; });
  return found == columns.end() ? nullptr : &*found;
}

BlockMap map_headings(const Block& block, const MapHints& hints) {
  return block.days ? map_days(block, hints) : Mapper(block, hints).map();
}

} // namespace wetspell
