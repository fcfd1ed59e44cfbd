#include "gather/match.hpp"

#include "season/locate.hpp"

#include <algorithm>

namespace wetspell {

namespace {

struct Sources {
  Field file, row;
};

Sources sources(TableKind table) {
  if (table == TableKind::life)
    return {Field::life_source_file, Field::life_source_row};
  return {Field::visit_source_file, Field::visit_source_row};
}

bool contains(const std::vector<std::size_t>& all, std::size_t one) {
  return std::find(all.begin(), all.end(), one) != all.end();
}

} // namespace

std::string joined(const std::vector<std::string>& words) {
  std::string all;
  for (const std::string& word : words)
    all += (&word == &words.front() ? "" : " | ") + word;
  return all;
}

TableMatch::TableMatch(const Season& season, TableKind table, RowWords& words)
    : table_(table), words_(words) {
  const auto all = fields(table);
  const auto take = [&](const auto& records) {
    held_.reserve(records.size());
    for (const auto& record : records) {
      HeldRow& row = held_.emplace_back();
      row.row = record.row;
      for (const FieldSpec& field : all)
        row.cells.push_back(season.cell(field.field, record.row));
      row.file = to_text(season.cell(sources(table).file, record.row));
      row.where = to_text(season.cell(sources(table).row, record.row));
      index(held_.size() - 1);
    }
  };
  if (!season.where(table).found())
    return;
  if (table == TableKind::life)
    take(season.life);
  else
    take(season.visits);
}

void TableMatch::index(std::size_t at) {
  HeldRow& row = held_[at];
  row.key = joined(words_.key(table_, row.cells));
  if (table_ == TableKind::visits)
    row.start = words_.of(Field::visit_start, row.cells[position(Field::visit_start)]);
  by_key_[row.key].push_back(at);
  if (!row.file.empty())
    by_source_.try_emplace({row.file, row.where}, at);
}

void TableMatch::change(std::size_t at, Field field, const Cell& cell) {
  std::erase(by_key_[held_[at].key], at);
  held_[at].cells[position(field)] = cell;
  index(at);
}

TableMatch::Coming TableMatch::coming(const CameRow& row) {
  const auto key = words_.key(table_, row.cells);
  Coming one{&row, joined(key), {}, !key[0].empty() && !key[1].empty()};
  if (table_ == TableKind::visits)
    one.start = words_.of(Field::visit_start, row.cells[position(Field::visit_start)]);
  return one;
}

bool TableMatch::may_be(const Coming& one, const HeldRow& other) const {
  return one.start.empty() || other.start.empty() || one.start == other.start;
}

/// A blank says nothing, so it contradicts nothing.
std::vector<Field> TableMatch::differences(const Coming& one, const HeldRow& other) {
  std::vector<Field> differing;
  for (const FieldSpec& field : fields(table_)) {
    const Cell& cell = one.row->cells[position(field.field)];
    if (field.role == Role::typed && !cell.empty() && cell != other.cells[position(field.field)] &&
        words_.of(field.field, cell) != words_.of(field.field, other.cells[position(field.field)]))
      differing.push_back(field.field);
  }
  return differing;
}

std::optional<Match> TableMatch::same(const Coming& one) {
  if (const auto found = by_key_.find(one.key); found != by_key_.end())
    for (const std::size_t at : found->second)
      if (may_be(one, held_[at]) && differences(one, held_[at]).empty())
        return Match{Verdict::same, at, {}};
  return std::nullopt;
}

/// Of several, one that no other row of the file is, then the one that came from this very row, then the one
/// that differs least.
std::optional<Match> TableMatch::differing(const Coming& one, const std::string& file, const Rows& taken) {
  const auto found = by_key_.find(one.key);
  if (!one.complete || found == by_key_.end())
    return std::nullopt;
  std::optional<Match> best;
  std::tuple<bool, bool, std::size_t> cost;
  for (const std::size_t at : found->second) {
    const HeldRow& other = held_[at];
    if (!may_be(one, other))
      continue;
    Match match{Verdict::differs, at, differences(one, other)};
    const std::tuple now{contains(taken, at), other.file != file || other.where != one.row->where,
                         match.fields.size()};
    if (!best || now < cost) {
      best = std::move(match);
      cost = now;
    }
  }
  return best;
}

/// The row that was gathered from this place before, and whose pool, day or person were corrected since: two
/// of the three still agree, or one of them says nothing.
std::optional<Match> TableMatch::moved(const Coming& one, const std::string& file, const Rows& taken) {
  const auto found = by_source_.find({file, one.row->where});
  if (found == by_source_.end() || contains(taken, found->second))
    return std::nullopt;
  const HeldRow& other = held_[found->second];
  const auto mine = words_.key(table_, one.row->cells);
  const auto theirs = words_.key(table_, other.cells);
  std::size_t apart = 0;
  for (std::size_t i = 0; i < mine.size(); ++i)
    apart += !mine[i].empty() && !theirs[i].empty() && mine[i] != theirs[i];
  if (apart > 1)
    return std::nullopt;
  auto differing = differences(one, other);
  return Match{differing.empty() ? Verdict::same : Verdict::differs, found->second, std::move(differing)};
}

std::vector<Match> TableMatch::match(const CameFile& file) {
  const auto& rows = file.rows(table_);
  std::vector<std::optional<Match>> found(rows.size());
  std::vector<Coming> all;
  Rows taken;
  const auto settle = [&](std::size_t at, std::optional<Match> match) {
    if (match)
      taken.push_back(match->held);
    found[at] = std::move(match);
  };
  all.reserve(rows.size());
  for (const CameRow& row : rows)
    all.push_back(coming(row));
  for (std::size_t i = 0; i < all.size(); ++i)
    settle(i, same(all[i]));
  for (std::size_t i = 0; i < all.size(); ++i)
    if (!found[i])
      settle(i, differing(all[i], file.file, taken));
  std::vector<Match> matches;
  for (std::size_t i = 0; i < all.size(); ++i) {
    if (!found[i])
      settle(i, same(all[i])); // rows of this file that were added
    if (!found[i])
      settle(i, moved(all[i], file.file, taken));
    if (!found[i])
      settle(i, differing(all[i], file.file, taken));
    if (!found[i]) {
      held_.push_back({std::nullopt, rows[i].cells, file.file, rows[i].where, {}, {}});
      index(held_.size() - 1);
      settle(i, Match{Verdict::added, held_.size() - 1, {}});
    }
    matches.push_back(std::move(*found[i]));
  }
  return matches;
}

} // namespace wetspell
