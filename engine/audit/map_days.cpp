#include "audit/map_days.hpp"

#include "audit/map_reading.hpp"
#include "audit/mapper.hpp"
#include "audit/name_of_reading.hpp"
#include "season/locate.hpp"
#include "season/words.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace wetspell {

namespace {

/// A text that may name the reading, and how much it weighs there.
struct Source {
  std::string text;
  std::string_view where;
  double factor = 1;
};

/// A sample of the cells where pools and days meet.
Evidence readings_in(const Block& block) {
  constexpr std::size_t sample_size = 400;
  const std::size_t step = filled_cells(block) / sample_size + 1;
  Evidence evidence;
  for (std::size_t row = block.first_data; row < block.end_data; ++row) {
    if (!block.is_record(row))
      continue;
    for (const std::size_t column : block.days->days)
      if (const Cell& cell = block.grid.at(row, column);
          holds_something(cell) && evidence.looked++ % step == 0 &&
          !(cell.kind() == CellKind::text && says_not_known(cell.text())))
        evidence.cells.push_back(&cell);
  }
  return evidence;
}

/// Titles that name different readings name none for all cells.
bool titles_agree(const std::vector<std::string>& titles) {
  std::optional<std::string> said;
  for (const std::string& title : titles)
    if (const auto name = name_of_reading(title)) {
      const HeadingGuess guess = guess_heading(*name);
      const std::string meant =
          meaning_word(guess.count ? std::nullopt : reading_meant(guess), Part::none, guess.count);
      if (said && *said != meant)
        return false;
      said = meant;
    }
  return true;
}

class DayMapper {
public:
  DayMapper(const Block& block, const MapHints& hints)
      : block_(block), hints_(hints), evidence_(readings_in(block)) {
    const std::string& corner = block.headings[block.days->names].text;
    sources_.push_back({corner, "the corner of the table", 1});
    if (titles_agree(block.titles))
      for (auto title = block.titles.rbegin(); title != block.titles.rend(); ++title)
        sources_.push_back({*title, "the title", 0.97});
    sources_.push_back({block.grid.table().sheet(), "the sheet's name", 0.95});
  }

  BlockMap map() {
    BlockMap map;
    map.layout = Layout::cell_a_visit;
    for (const BlockHeading& heading : block_.headings)
      map.columns.push_back(beside(map.columns.size(), heading.text));
    const Mapping reading = read();
    for (const std::size_t column : block_.days->days) {
      map.columns[column] = reading;
      map.columns[column].column = column;
    }
    Mapping& names = map.columns[block_.days->names];
    if (names.heading == reading.heading)
      names.heading.clear(); // the corner says what was read
    if (reading.open()) {
      map.reason = "pools and days stand at its sides, but nothing says for sure what was read";
      names.reason = "left alone: the table is none of ours: " + map.reason;
      return map;
    }
    map.kind = reading.count ? TableKind::life : TableKind::visits;
    map.reason =
        fmt::format("{} days {}, pools {}", block_.days->days.size(),
                    block_.grid.turned() ? "down" : "across", block_.grid.turned() ? "across" : "down");
    names.field = pool_field(*map.kind);
    names.confidence = block_.days->sure;
    names.reason = block_.days->why;
    return map;
  }

private:
  static Mapping beside(std::size_t column, const std::string& heading) {
    Mapping mapping;
    mapping.column = column;
    mapping.heading = heading;
    mapping.reason = heading.empty() ? "left alone: it has no heading" : "left alone: it is no day";
    return mapping;
  }

  /// What was read: as a person says, or as the nearest words say.
  [[nodiscard]] Mapping read() const {
    std::string name; // the words that name it
    Mapping reading = by_words(name);
    const GivenMapping* given = hints_.given == nullptr ? nullptr : hints_.given->find(reading.heading);
    if (given != nullptr)
      take_given(*given, reading);
    if (reading.field)
      settle_unit(reading, Column(name, evidence_), {TitleUnits(block_.titles), hints_.settings});
    return reading;
  }

  Mapping by_words(std::string& name) const {
    std::optional<Mapping> nearest;
    for (const Source& source : sources_) {
      const auto named = name_of_reading(source.text);
      if (!named)
        continue;
      Mapping reading = map_reading(source.text, Column(*named, evidence_), source.where, source.factor);
      if (!reading.open() || !nearest)
        name = *named;
      if (!reading.open())
        return reading;
      if (!nearest)
        nearest = std::move(reading);
    }
    if (nearest)
      return *nearest;
    Mapping open;
    open.heading = name = block_.titles.empty() ? block_.grid.table().sheet() : block_.titles.front();
    open.reason = "left alone: neither the corner, a title nor the sheet's name says what was read";
    return open;
  }

  const Block& block_;
  const MapHints& hints_;
  Evidence evidence_;
  std::vector<Source> sources_; ///< the nearest first
};

} // namespace

std::size_t filled_cells(const Block& block) {
  std::size_t filled = 0;
  for (const std::size_t column : block.days->days)
    filled += block.filled[column];
  return filled;
}

BlockMap map_days(const Block& block, const MapHints& hints) {
  return DayMapper(block, hints).map();
}

} // namespace wetspell
