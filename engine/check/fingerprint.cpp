#include "check/fingerprint.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace wetspell {

namespace {

/// FNV-1a with the 64-bit offset basis and prime (Fowler, Noll and Vo; IETF draft-eastlake-fnv).
class Hash {
public:
  void add(std::string_view text) {
    for (const char c : text)
      step(static_cast<unsigned char>(c));
    step(0xFF); // never part of UTF-8, so "ab" + "c" is not "a" + "bc"
  }
  [[nodiscard]] std::uint64_t value() const { return value_; }

private:
  void step(unsigned char byte) { value_ = (value_ ^ byte) * 0x100000001B3ULL; }
  std::uint64_t value_ = 0xCBF29CE484222325ULL;
};

std::span<const Field> identity(TableKind table) {
  static constexpr std::array pools{Field::pool_code};
  static constexpr std::array people{Field::person_code};
  static constexpr std::array visits{Field::visit_pool, Field::visit_date, Field::visit_person};
  static constexpr std::array life{Field::life_pool, Field::life_date, Field::life_person,
                                   Field::life_species, Field::life_seen_as};
  switch (table) {
  case TableKind::pools:
    return pools;
  case TableKind::people:
    return people;
  case TableKind::visits:
    return visits;
  case TableKind::life:
    return life;
  default:
    return {};
  }
}

void add_record(Hash& hash, const Season& season, RecordAt at, std::span<const Field> behind) {
  for (const Field field : identity(at.table))
    hash.add(to_text(cell_of(season, at, field)));
  for (const Field field : behind) {
    const auto where = holder(season, at, field);
    if (!where)
      continue;
    const Cell& cell = cell_of(season, *where, field);
    hash.add(spec(field).name);
    hash.add(to_text(cell));
  }
}

} // namespace

std::optional<RecordAt> holder(const Season& season, RecordAt at, Field field) {
  const TableKind table = spec(field).table;
  if (table == at.table)
    return at;
  Ref ref;
  if (at.table == TableKind::visits) {
    const Visit& visit = season.visits[at.record];
    if (table == TableKind::pools)
      ref = visit.pool;
    else if (table == TableKind::people)
      ref = visit.paced_by.typed() ? visit.paced_by : visit.person;
  } else if (at.table == TableKind::life) {
    const LifeCount& life = season.life[at.record];
    if (table == TableKind::pools)
      ref = life.pool;
    else if (table == TableKind::people)
      ref = life.person;
  }
  if (!ref.known())
    return std::nullopt;
  return RecordAt{table, static_cast<std::uint32_t>(ref.index)};
}

std::uint32_t row_of(const Season& season, RecordAt at) {
  switch (at.table) {
  case TableKind::pools:
    return season.pools[at.record].row;
  case TableKind::people:
    return season.people[at.record].row;
  case TableKind::life:
    return season.life[at.record].row;
  default:
    return season.visits[at.record].row;
  }
}

const Cell& cell_of(const Season& season, RecordAt at, Field field) {
  return season.cell(field, row_of(season, at));
}

std::string fingerprint(const Season& season, const RuleSpec& rule, RecordAt at, const Doubt& doubt) {
  std::vector<Field> behind = rule.needs;
  behind.push_back(doubt.field);
  behind.insert(behind.end(), doubt.behind.begin(), doubt.behind.end());
  std::sort(behind.begin(), behind.end());
  behind.erase(std::unique(behind.begin(), behind.end()), behind.end());
  Hash hash;
  hash.add(rule.name);
  hash.add(spec(doubt.field).name); // a rule can doubt two cells of one row
  add_record(hash, season, at, behind);
  if (doubt.other_row)
    add_record(hash, season, {at.table, *doubt.other_row}, behind);
  return fmt::format("{:016x}", hash.value());
}

} // namespace wetspell
