#include "estimate/pool_groups.hpp"

#include "season/heading.hpp"
#include "season/locate.hpp"
#include "season/words.hpp"

#include <algorithm>
#include <map>
#include <optional>

namespace wetspell {

namespace {

/// The pools' field that a heading means, if it means one.
std::optional<Field> pool_field(std::string_view heading) {
  for (const HeadingMatch& match : read_heading(heading).matches)
    if (match.table == TableKind::pools)
      return match.field;
  return std::nullopt;
}

std::optional<std::size_t> column_headed(const Located& at, std::string_view heading) {
  std::string one;
  std::string other;
  const auto wanted = plain_word(heading, one);
  for (std::size_t c = 0; c < at.table->columns(); ++c)
    if (plain_word(to_text(at.table->at(at.heading_row, c)), other) == wanted)
      return c;
  const auto field = pool_field(heading);
  const std::int32_t column = field ? at.columns[position(*field)] : -1;
  return column >= 0 ? std::optional(static_cast<std::size_t>(column)) : std::nullopt;
}

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && text.front() == ' ')
    text.remove_prefix(1);
  while (!text.empty() && text.back() == ' ')
    text.remove_suffix(1);
  return text;
}

void add_groups(const Season& season, const Located& at, std::size_t column, PoolGroups& all) {
  std::map<std::string, PoolGroup> by_content; // by the plain form: "Town forest" and "town forest" are one
  std::string buffer;
  for (std::uint32_t i = 0; i < season.pools.size(); ++i) {
    const Cell& cell = at.table->at(season.pools[i].row, column);
    const std::string content = holds_something(cell) ? to_text(cell) : "(blank)";
    PoolGroup& group = by_content[std::string(plain_code(content, buffer))];
    if (group.pools.empty()) {
      group.column = to_text(at.table->at(at.heading_row, column));
      group.group = content;
    }
    group.pools.push_back(i);
  }
  for (auto& [content, group] : by_content)
    all.groups.push_back(std::move(group));
}

} // namespace

PoolGroups pool_groups(const Season& season, std::string_view headings) {
  PoolGroups all;
  const Located& at = season.where(TableKind::pools);
  if (!at.found())
    return all;
  while (!headings.empty()) {
    const std::size_t comma = headings.find(',');
    const std::string_view heading = trimmed(headings.substr(0, comma));
    headings.remove_prefix(comma == std::string_view::npos ? headings.size() : comma + 1);
    if (heading.empty())
      continue;
    if (const auto column = column_headed(at, heading))
      add_groups(season, at, *column, all);
    else
      all.not_found.emplace_back(heading);
  }
  return all;
}

} // namespace wetspell
