#include "check/marks.hpp"

#include <algorithm>

namespace wetspell {

namespace {

std::uint64_t cell_key(RecordAt at, Field field) {
  return std::uint64_t{at.record} << 8 | static_cast<std::uint64_t>(field); // a field belongs to one table
}

} // namespace

bool Marks::marked(RecordAt at, Field field, std::size_t rule, bool own_too) const {
  const auto where = holder(season_, at, field);
  if (!where)
    return false;
  const auto found = by_cell_.find(cell_key(*where, field));
  return found != by_cell_.end() && (own_too || found->second != rule);
}

bool Marks::cover(RecordAt at, const Doubt& doubt, std::size_t rule, bool own_too) const {
  if (by_cell_.empty())
    return false;
  const auto any = [&](RecordAt row, bool own) {
    return marked(row, doubt.field, rule, own) ||
           std::any_of(doubt.behind.begin(), doubt.behind.end(),
                       [&](Field field) { return marked(row, field, rule, own); });
  };
  return any(at, false) || (doubt.other_row && any({at.table, *doubt.other_row}, own_too));
}

void Marks::add(RecordAt at, const Doubt& doubt, std::size_t rule, Level level) {
  if (level == Level::note)
    return;
  const auto where = holder(season_, at, doubt.field);
  if (where)
    by_cell_.try_emplace(cell_key(*where, doubt.field), rule);
}

} // namespace wetspell
