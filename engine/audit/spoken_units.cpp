#include "audit/spoken_units.hpp"

#include "audit/column_units.hpp"
#include "base/in_parts.hpp"

#include <algorithm>
#include <array>
#include <functional>
#include <span>
#include <vector>

namespace wetspell {

namespace {

constexpr std::size_t units_known = static_cast<std::size_t>(Unit::step) + 1;
constexpr std::size_t systems = 2;

/// How many readings of each kind are written in which unit.
class Votes {
public:
  template <class Record> void count(TableKind table, std::span<const Record> records) {
    struct Column {
      Quantity Record::*member;
      std::array<std::size_t, units_known>* votes;
    };
    std::vector<Column> columns;
    for (const FieldSpec& field : fields(table))
      if (const auto* member = std::get_if<Quantity Record::*>(&field.member))
        columns.push_back({*member, &of(field.kind)});
    for (const Record& record : records)
      for (const Column& column : columns)
        if (const Quantity& reading = record.*column.member; reading.has_value())
          ++(*column.votes)[index(reading.unit)];
  }

  void add(const Votes& other) {
    for (std::size_t kind = 0; kind < kinds_.size(); ++kind)
      std::ranges::transform(kinds_[kind], other.kinds_[kind], kinds_[kind].begin(), std::plus<>());
  }

  /// The unit of most readings; none where none says one. Paces are no unit until somebody's are known.
  [[nodiscard]] Unit most(Kind kind) const {
    const auto& votes = kinds_[static_cast<std::size_t>(kind)];
    Unit most = Unit::none;
    for (const UnitSpec& unit : units())
      if (system_of(unit.unit) && votes[index(unit.unit)] > (most == Unit::none ? 0 : votes[index(most)]))
        most = unit.unit;
    return most;
  }

  /// The system of most readings of all kinds.
  [[nodiscard]] std::optional<UnitSystem> system() const {
    std::array<std::size_t, systems> votes{};
    for (const auto& kind : kinds_)
      for (const UnitSpec& unit : units())
        if (const auto system = system_of(unit.unit))
          votes[static_cast<std::size_t>(*system)] += kind[index(unit.unit)];
    if (votes[0] == votes[1])
      return std::nullopt;
    return static_cast<UnitSystem>(votes[1] > votes[0]);
  }

private:
  static std::size_t index(Unit unit) { return static_cast<std::size_t>(unit); }
  std::array<std::size_t, units_known>& of(Kind kind) { return kinds_[static_cast<std::size_t>(kind)]; }

  std::array<std::array<std::size_t, units_known>, kinds_of_quantity> kinds_{};
};

} // namespace

void speak_as_written(Season& season) {
  Votes votes;
  constexpr std::size_t least = 20'000;
  std::vector<Votes> parts(parts_of(season.visits.size(), least));
  in_parts(parts.size(), [&](std::size_t part) {
    Votes own; // not among its neighbours: processors would wait for each other
    const auto [first, end] = range_of(part, parts.size(), season.visits.size());
    own.count(TableKind::visits, std::span<const Visit>(season.visits).subspan(first, end - first));
    parts[part] = own;
  });
  for (const Votes& part : parts)
    votes.add(part);
  votes.count<Pool>(TableKind::pools, season.pools);
  votes.count<Person>(TableKind::people, season.people);
  Settings& spoken = season.settings;
  if (const auto system = votes.system())
    spoken.use(*system);
  const auto take = [&](Unit& unit, Kind kind) {
    if (const Unit most = votes.most(kind); most != Unit::none)
      unit = most;
  };
  take(spoken.temperature, Kind::temperature);
  take(spoken.depth, Kind::depth);
  take(spoken.length, Kind::length);
  spoken.area = system_of(spoken.length) == UnitSystem::metric ? Unit::square_metre : Unit::square_foot;
}

} // namespace wetspell
