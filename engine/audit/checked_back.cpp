#include "audit/checked_back.hpp"

#include "audit/said_twice.hpp"
#include "audit/spoken_units.hpp"
#include "check/findings_table.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <map>
#include <set>
#include <tuple>

namespace wetspell {

namespace {

std::uint32_t row_of_record(const Season& season, TableKind table, std::uint32_t record) {
  switch (table) {
  case TableKind::pools:
    return season.pools[record].row;
  case TableKind::people:
    return season.people[record].row;
  case TableKind::life:
    return season.life[record].row;
  default:
    return season.visits[record].row;
  }
}

/// Whether the finding speaks of a cell without which its row cannot be told, and which is blank.
bool is_blank_key(const Season& season, const Finding& finding) {
  return spec(finding.field).required &&
         season.cell(finding.field, row_of_record(season, finding.table, finding.record)).empty();
}

} // namespace

Table empty_visits() {
  Table table(Place{"visits", 1, 0}, 1, 3);
  table.at(0, 0) = Cell::of_text("Pool");
  table.at(0, 1) = Cell::of_text("Date");
  table.at(0, 2) = Cell::of_text("Notes");
  return table;
}

const TidyTable* CheckedBack::tidy_at(const Place& place) const {
  for (const TidyTable& tidy : audit_.tidy)
    if (spec(tidy.kind()).name == place.sheet && place.row >= 2 && place.row - 2 < tidy.rows())
      return &tidy;
  return nullptr;
}

Place CheckedBack::back(const Place& place) const {
  const TidyTable* tidy = tidy_at(place);
  return tidy == nullptr ? place : audit_.source(*tidy, place.row - 2, place.column);
}

/// Messages name rows of the tidy table; what a person has in front of them is the source.
std::string CheckedBack::rows_in_source(const std::string& words, const TidyTable& tidy,
                                        std::size_t table) const {
  constexpr std::string_view mark = "row ";
  std::string out;
  for (std::size_t at = 0; at < words.size();) {
    const std::size_t found = words.find(mark, at);
    if (found == std::string::npos) {
      out += words.substr(at);
      break;
    }
    out += words.substr(at, found + mark.size() - at);
    at = found + mark.size();
    std::size_t row = 0;
    const auto [end, error] = std::from_chars(words.data() + at, words.data() + words.size(), row);
    if (error != std::errc{} || row < 2 || row - 2 >= tidy.rows())
      continue;
    const Spot spot = tidy.origin(row - 2, 0);
    const Place place = audit_.source(tidy, row - 2);
    out += audit_.tables[spot.table].layout == Layout::cell_a_visit
               ? fmt::format("(cell {}{})", column_letters(place.column), place.row)
           : audit_.frames[spot.table].turned ? fmt::format("(column {})", column_letters(place.column))
                                              : std::to_string(place.row);
    if (audit_.tables[spot.table].sheet != audit_.tables[table].sheet)
      out += fmt::format(" of {}", place.sheet);
    at = static_cast<std::size_t>(end - words.data());
  }
  return out;
}

void CheckedBack::take_findings(CheckReport report) {
  using Told = std::tuple<const RuleSpec*, std::string, std::size_t, std::size_t, std::string>;
  std::map<Told, std::size_t> told; // a day or a pool at the side of many readings is told once
  for (Finding& finding : report.findings) {
    const auto tidy = std::find_if(audit_.tidy.begin(), audit_.tidy.end(),
                                   [&](const TidyTable& each) { return each.kind() == finding.table; });
    if (tidy == audit_.tidy.end())
      continue;
    const std::uint32_t record = row_of_record(*audit_.season, finding.table, finding.record);
    if (audit_.season->cell(finding.field, record).text().ends_with(unit_asked))
      continue; // told among what was left unread
    const std::size_t row = record - 1;
    const std::size_t table = tidy->origin(row, 0).table;
    if (finding.open() && finding.rule->level != Level::note && tidy->states[row] == RowState::usable)
      tidy->states[row] = RowState::after_answers;
    finding.place = back(finding.place);
    for (Change& change : finding.changes)
      change.place = back(change.place);
    finding.message = rows_in_source(finding.message, *tidy, table);
    finding.advice = rows_in_source(finding.advice, *tidy, table);
    const bool counts_beside =
        finding.table == TableKind::life && audit_.tables[table].kind == TableKind::visits;
    if (counts_beside || audit_.tables[table].layout == Layout::cell_a_visit) {
      const Place& at = finding.place;
      const auto [first, fresh] = told.try_emplace(
          Told{finding.rule, at.sheet, at.row, at.column, finding.message}, audit_.findings.size());
      if (!fresh) {
        ++audit_.findings[first->second].rows;
        continue;
      }
    }
    audit_.findings.push_back({table, std::move(finding)});
  }
}

void CheckedBack::count_reasons() {
  // A row is counted once for a reason, however many of its cells are concerned.
  std::map<std::string, std::set<std::tuple<std::size_t, std::size_t, std::size_t>>> rows;
  std::map<std::string, std::size_t> more; // rows of a cell beyond the first
  std::set<std::tuple<std::string, std::size_t, std::size_t>> told;
  const auto row_at = [&](std::size_t table, const Place& place) {
    const bool cell = audit_.tables[table].layout == Layout::cell_a_visit;
    const bool turned = audit_.frames[table].turned;
    return std::tuple(table, cell || !turned ? place.row : 0, cell || turned ? place.column : 0);
  };
  for (const Unread& unread : audit_.unread) {
    rows[unread.sort].insert(row_at(unread.table, unread.place));
    more[unread.sort] += unread.rows - 1;
    told.insert({unread.place.sheet, unread.place.row, unread.place.column});
  }
  for (const AuditFinding& each : audit_.findings) {
    const Finding& finding = each.finding;
    if (!finding.open() || finding.rule->level == Level::note)
      continue;
    if (told.count({finding.place.sheet, finding.place.row, finding.place.column}) > 0 ||
        is_blank_key(*audit_.season, finding)) // counted below
      continue;
    const std::string words = fmt::format("not so: {}", finding.rule->expectation);
    rows[words].insert(row_at(each.table, finding.place));
    more[words] += each.rows - 1;
  }
  for (const TidyTable& tidy : audit_.tidy)
    for (const FieldSpec& field : fields(tidy.kind())) {
      if (!field.required)
        continue;
      const std::int32_t column = tidy.column(field.field);
      std::size_t blank = 0;
      const Located& at = audit_.season->where(tidy.kind());
      for (std::size_t row = 0; row < tidy.rows(); ++row)
        blank += column < 0 || at.table->at(row + 1, static_cast<std::size_t>(column)).empty();
      if (blank > 0)
        audit_.reasons.push_back(
            {fmt::format("{}: {}", field.heading,
                         column < 0 ? "the table has no such column" : "nothing stands there"),
             blank});
    }
  for (const auto& [words, where] : rows)
    audit_.reasons.push_back({words, where.size() + more[words]});
  std::stable_sort(audit_.reasons.begin(), audit_.reasons.end(),
                   [](const CommonReason& a, const CommonReason& b) { return a.rows > b.rows; });
}

void CheckedBack::count_rows() {
  const auto add = [](RowCounts& counts, RowState state) {
    ++(state == RowState::usable          ? counts.usable
       : state == RowState::after_answers ? counts.after_answers
                                          : counts.unusable);
  };
  for (const TidyTable& tidy : audit_.tidy)
    for (std::size_t row = 0; row < tidy.rows(); ++row) {
      add(audit_.rows, tidy.states[row]);
      add(audit_.tables[tidy.origin(row, 0).table].rows, tidy.states[row]);
    }
}

void CheckedBack::tell_lacking() {
  for (const RuleSpec& rule : rules()) {
    if (std::vector<Field> missing = columns_missing(*audit_.season, rule); !missing.empty())
      audit_.lacking.push_back({&rule, std::move(missing)});
  }
}

void CheckedBack::check(std::vector<Table> lists, const AuditOptions& how) {
  std::vector<Table> sheets;
  bool visits = false;
  for (TidyTable& tidy : audit_.tidy) {
    visits = visits || tidy.kind() == TableKind::visits;
    sheets.push_back(tidy.take_cells());
  }
  if (!visits)
    sheets.push_back(empty_visits());
  std::move(lists.begin(), lists.end(), std::back_inserter(sheets));
  auto season = read_season(std::move(sheets), how.today);
  if (!season) {
    audit_.remarks.push_back(season.error().text);
    count_rows();
    return;
  }
  audit_.season = std::make_unique<Season>(std::move(season).value());
  audit_.settings = audit_.season->settings;
  if (!audit_.settings.says_units)
    speak_as_written(*audit_.season);
  audit_.remarks.insert(audit_.remarks.end(), audit_.season->remarks.begin(), audit_.season->remarks.end());
  if (std::string twice = said_twice(audit_); !twice.empty())
    audit_.remarks.push_back(std::move(twice));
  if (!audit_.tidy.empty()) {
    const auto answers = answers_in(*audit_.season); // of a workbook that was checked before
    CheckOptions options;
    options.answers = answers;
    options.progress = how.progress;
    CheckReport report = wetspell::check(*audit_.season, options);
    audit_.cancelled = report.cancelled;
    take_findings(std::move(report));
    tell_lacking();
  }
  count_reasons();
  count_rows();
}

} // namespace wetspell
