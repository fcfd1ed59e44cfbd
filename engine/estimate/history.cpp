#include "estimate/history.hpp"

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>
#include <utility>

namespace wetspell {

namespace {

constexpr double fill_by_eye = 0.1; // standard uncertainty of a judged fill: common practice, no source

/// The cells with an open `fix` finding, by table, record and field.
class Doubted {
public:
  explicit Doubted(const CheckReport& report) {
    for (const Finding& finding : report.findings)
      if (finding.open() && finding.rule->level == Level::fix)
        cells_.emplace(finding.table, finding.record, finding.field);
  }

  [[nodiscard]] bool has(TableKind table, std::uint32_t record, Field field) const {
    return cells_.contains({table, record, field});
  }
  [[nodiscard]] bool has_any(TableKind table, std::uint32_t record, std::span<const Field> which) const {
    return std::any_of(which.begin(), which.end(), [&](Field field) { return has(table, record, field); });
  }
  /// The doubted fields of one record.
  [[nodiscard]] std::vector<Field> of(TableKind table, std::uint32_t record) const {
    std::vector<Field> found;
    for (auto each = cells_.lower_bound({table, record, Field{}});
         each != cells_.end() && std::get<0>(*each) == table && std::get<1>(*each) == record; ++each)
      found.push_back(std::get<2>(*each));
    return found;
  }

private:
  std::set<std::tuple<TableKind, std::uint32_t, Field>> cells_;
};

constexpr std::array calibration_fields{Field::person_counts, Field::person_course, Field::person_run_1,
                                        Field::person_run_2,  Field::person_run_3,  Field::person_run_4};

/// Makes a field of a record as if nothing had been typed.
template <class Record> void blank(Record& record, Field field) {
  std::visit(
      [&](auto member) {
        if constexpr (requires { record.*member = {}; })
          record.*member = {};
      },
      spec(field).member);
}

std::optional<Measured> from_class(const ClassTable& table, const Choice& judged) {
  if (!judged.chosen())
    return std::nullopt;
  const auto found = middle(table, static_cast<std::size_t>(judged.index));
  if (!found)
    return std::nullopt;
  return Measured{found.value().si, found.value().uncertainty};
}

std::optional<bool> water_stood(const Visit& visit, const CountedVisit& counted) {
  if (visit.water.chosen())
    return !visit.water.is(Water::none);
  for (const auto* reading : {&counted.depth, &counted.fill, &counted.length})
    if (*reading)
      return (*reading)->value > 0;
  return std::nullopt;
}

class Counting {
public:
  Counting(const Season& season, const CheckReport& report) : season_(season), doubted_(report) {}

  [[nodiscard]] std::optional<CountedVisit> visit(std::uint32_t index) const {
    Visit visit = season_.visits[index];
    constexpr std::array whole{Field::visit_pool, Field::visit_date};
    if (!visit.pool.known() || !visit.date.has_value() || doubted_.has_any(TableKind::visits, index, whole))
      return std::nullopt;
    for (const Field field : doubted_.of(TableKind::visits, index))
      blank(visit, field);
    without_doubted_paces(visit);

    CountedVisit counted;
    counted.visit = index;
    counted.day = std::floor(visit.date.si);
    const DerivedVisit derived = derive(season_, visit);
    if (derived.temperature)
      counted.temperature = Measured{derived.temperature->mean, derived.temperature->uncertainty};
    counted.depth = derived.depth ? derived.depth : from_class(season_.depth_classes, visit.depth_class);
    counted.fill = visit.fill.has_value() ? std::optional(Measured{visit.fill.si, fill_by_eye})
                                          : from_class(season_.fill_classes, visit.fill_class);
    counted.length = derived.length;
    counted.width = derived.width;
    counted.area = derived.area;
    counted.edge = edge_of(derived);
    counted.correlation = derived.correlation;
    counted.wet = water_stood(visit, counted);
    if (counted.wet && !*counted.wet) {
      if (!counted.depth)
        counted.depth = Measured{};
      if (!counted.fill)
        counted.fill = Measured{};
    }
    return counted;
  }

  [[nodiscard]] std::optional<CountedLife> life(std::uint32_t index) const {
    LifeCount count = season_.life[index];
    constexpr std::array whole{Field::life_pool, Field::life_date, Field::life_species};
    if (!count.pool.known() || !count.species.known() || !count.date.has_value() ||
        doubted_.has_any(TableKind::life, index, whole))
      return std::nullopt;
    for (const Field field : doubted_.of(TableKind::life, index))
      blank(count, field);
    const auto number = [](const Quantity& typed) {
      return typed.has_value() ? std::optional(typed.si) : std::nullopt;
    };
    return CountedLife{index,
                       std::floor(count.date.si),
                       count.species.index,
                       count.seen_as,
                       number(count.by_first),
                       number(count.by_second),
                       number(count.by_both)};
  }

private:
  /// A pace that rests on a doubted calibration gives no length.
  void without_doubted_paces(Visit& visit) const {
    const Ref who = pacer(visit);
    if (!who.known() ||
        !doubted_.has_any(TableKind::people, static_cast<std::uint32_t>(who.index), calibration_fields))
      return;
    for (Quantity* line : {&visit.length, &visit.width})
      if (line_count(season_, visit, *line))
        *line = {};
  }

  const Season& season_;
  Doubted doubted_;
};

std::vector<LeftOut> left_out(const Season& season, const CheckReport& report) {
  std::vector<LeftOut> all;
  for (const Finding& finding : report.findings) {
    if (!finding.open() || finding.rule->level != Level::fix)
      continue;
    Ref pool;
    if (finding.table == TableKind::visits)
      pool = season.visits[finding.record].pool;
    else if (finding.table == TableKind::life)
      pool = season.life[finding.record].pool;
    else if (finding.table == TableKind::pools)
      pool.index = static_cast<std::int32_t>(finding.record);
    all.push_back({finding.table, finding.record, finding.field, finding.place,
                   pool.known() ? season.pools[static_cast<std::size_t>(pool.index)].code : std::string(),
                   finding.value, finding.message});
  }
  return all;
}

template <class Counted> void by_day(std::vector<Counted>& all) {
  std::stable_sort(all.begin(), all.end(),
                   [](const Counted& one, const Counted& other) { return one.day < other.day; });
}

} // namespace

SeasonHistory counted_history(const Season& season, const CheckReport& report) {
  SeasonHistory history{season, {}, left_out(season, report)};
  history.pools.resize(season.pools.size());
  for (std::size_t i = 0; i < history.pools.size(); ++i)
    history.pools[i].pool = static_cast<std::uint32_t>(i);
  const Counting counting(season, report);
  for (std::uint32_t i = 0; i < season.visits.size(); ++i)
    if (auto visit = counting.visit(i))
      history.pools[static_cast<std::size_t>(season.visits[i].pool.index)].visits.push_back(*visit);
  for (std::uint32_t i = 0; i < season.life.size(); ++i)
    if (auto count = counting.life(i))
      history.pools[static_cast<std::size_t>(season.life[i].pool.index)].life.push_back(*count);
  for (PoolHistory& pool : history.pools) {
    by_day(pool.visits);
    by_day(pool.life);
  }
  return history;
}

} // namespace wetspell
