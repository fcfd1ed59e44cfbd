#include "audit/said_twice.hpp"

#include "season/words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <unordered_map>

namespace wetspell {

std::string said_twice(const Audit& audit) {
  const auto tidy = std::find_if(audit.tidy.begin(), audit.tidy.end(),
                                 [](const TidyTable& each) { return each.kind() == TableKind::visits; });
  if (tidy == audit.tidy.end() || tidy->column(Field::visit_person) >= 0)
    return {};
  std::unordered_map<std::string, std::size_t> first; // row of the tidy table
  std::size_t again = 0;
  std::string pair;
  std::string buffer;
  for (const Visit& visit : audit.season->visits) {
    const std::size_t row = visit.row - 1;
    const bool reading = audit.tables[tidy->origin(row, 0).table].layout == Layout::cell_a_visit;
    const std::string code = to_text(audit.season->cell(Field::visit_pool, visit.row));
    if (reading || code.empty() || !visit.date.has_value())
      continue;
    const auto [at, fresh] =
        first.try_emplace(fmt::format("{}\n{}", std::floor(visit.date.si), plain_code(code, buffer)), row);
    if (fresh)
      continue;
    if (again++ == 0)
      pair = fmt::format("{} and {}", to_text(audit.source(*tidy, at->second)),
                         to_text(audit.source(*tidy, row)));
  }
  if (again == 0)
    return {};
  return fmt::format(
      "{} the pool and the day of an earlier row (as {}). Where that is one visit, keep one of them.",
      again == 1 ? "1 row says" : fmt::format("{} rows say", again), pair);
}

} // namespace wetspell
