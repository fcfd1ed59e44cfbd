#include "audit/named_beside.hpp"

#include <fmt/format.h>

#include <set>

namespace wetspell {

namespace {

/// Different names in lines between the rows and right above them; one alone may be the title of anything.
bool several_names(const Block& block) {
  std::set<std::string> names;
  for (const PassedRow& passed : block.passed)
    if (passed.use == RowUse::section)
      names.insert(pool_of_line(passed.text));
  names.erase(std::string());
  if (names.empty())
    return false;
  if (!block.titles.empty())
    names.insert(pool_of_line(block.titles.back()));
  names.erase(std::string());
  return names.size() >= 2;
}

void tell(BlockMap& map, std::string_view what, const std::string& named, bool in_lines) {
  if (in_lines)
    map.reason += fmt::format("; the {}s stand in lines above their rows", what);
  else if (!named.empty())
    map.reason += fmt::format("; the {} of all its rows is {}", what, named);
}

} // namespace

NamedBeside named_beside(const Block& block, const std::string& sheet_pool) {
  NamedBeside named;
  named.pools_by_name = several_names(block);
  for (const PassedRow& passed : block.passed)
    if (passed.use == RowUse::section) {
      named.pool_in_lines = named.pool_in_lines || !pool_named_in(passed.text).empty();
      named.date_in_lines = named.date_in_lines || !date_of_line(passed.text).empty();
    }
  named.pool_in_lines = named.pool_in_lines || named.pools_by_name;
  for (const std::string& title : block.titles)
    if (named.pool.empty())
      named.pool = pool_named_in(title);
  // Above the first rows pool and day stand as they do between the others.
  if (named.pool.empty() && named.pools_by_name && !block.titles.empty())
    named.pool = pool_of_line(block.titles.back());
  if (named.pool.empty())
    named.pool = sheet_pool;
  for (auto title = block.titles.rbegin(); title != block.titles.rend() && named.date.empty(); ++title)
    named.date = named.date_in_lines ? date_of_line(*title) : date_named_in(*title);
  return named;
}

void NamedBeside::give_pools(BlockMap& map) const {
  map.pool = pool;
  map.pool_in_lines = pool_in_lines;
  map.pools_by_name = pools_by_name;
  tell(map, "pool", pool, pool_in_lines);
}

void NamedBeside::give_dates(BlockMap& map) const {
  map.date = date;
  map.date_in_lines = date_in_lines;
  tell(map, "day", date, date_in_lines);
}

} // namespace wetspell
