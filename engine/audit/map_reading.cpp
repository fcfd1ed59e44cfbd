#include "audit/map_reading.hpp"

#include "audit/mapper.hpp"
#include "season/locate.hpp"
#include "season/words.hpp"

#include <fmt/format.h>

#include <unordered_map>

namespace wetspell {

namespace {

bool is_reading(Field field) {
  const FieldSpec& meant = spec(field);
  return meant.table == TableKind::visits && meant.role == Role::typed && !meant.required;
}

/// A word of the column that says what was read, and the cells beside it.
struct Word {
  std::string text;
  Evidence evidence;
};

std::vector<Word> words_in(const Block& block, std::size_t what, std::size_t value) {
  std::vector<Word> words;
  std::unordered_map<std::string, std::size_t> known;
  std::string buffer;
  for (std::size_t row = block.first_data; row < block.end_data; ++row) {
    const Cell& word = block.grid.at(row, what);
    if (!block.is_record(row) || !holds_something(word))
      continue;
    std::string text = to_text(word);
    const auto [at, first] = known.try_emplace(std::string(plain_word(text, buffer)), words.size());
    if (first)
      words.push_back({std::move(text), {}});
    Evidence& evidence = words[at->second].evidence;
    ++evidence.looked;
    if (const Cell& cell = block.grid.at(row, value);
        holds_something(cell) && !(cell.kind() == CellKind::text && says_not_known(cell.text())))
      evidence.cells.push_back(&cell);
  }
  return words;
}

} // namespace

Mapping map_reading(const std::string& heading, const Column& named, std::string_view said_by,
                    double factor) {
  Mapping reading;
  reading.heading = heading;
  if (const auto& count = named.guess().count) {
    reading.count = count;
    reading.confidence = named.count_score() * factor;
    reading.reason = fmt::format("as {} says: counts of {} as {}", said_by, count->species, count->seen_as);
  } else {
    for (const Candidate& candidate : named.candidates()) {
      if (!is_reading(candidate.field))
        continue;
      reading.field = candidate.field;
      reading.confidence = candidate.score * factor;
      reading.reason = fmt::format("as {} says, {}", said_by, candidate.reason);
      break;
    }
  }
  if (reading.confidence >= sure_enough)
    return reading;
  reading.reason = reading.open()
                       ? fmt::format("left alone: {} names none of our readings", said_by)
                       : fmt::format("left alone: not sure enough; nearest: {} ({})",
                                     meaning_word(reading.field, Part::none, reading.count), reading.reason);
  reading.field = std::nullopt;
  reading.count = std::nullopt;
  return reading;
}

void take_given(const GivenMapping& given, Mapping& reading) {
  reading.field = given.field && is_reading(*given.field) ? given.field : std::nullopt;
  reading.count = given.count;
  reading.unit = given.unit;
  reading.confidence = 1;
  reading.reason = given.leave_alone ? "left alone: a person said so"
                   : reading.open()  ? "left alone: a person gave it a field that is no reading at a pool"
                                     : "given by a person";
}

std::vector<Mapping> map_reading_words(const Block& block, const BlockMap& map, const MapHints& hints) {
  const Mapping* what = map.of(Part::parameter);
  const Mapping* value = map.of(Part::value);
  std::vector<Mapping> readings;
  if (what == nullptr || value == nullptr)
    return readings;
  const UnitHints units{TitleUnits(block.titles), hints.settings};
  for (Word& word : words_in(block, what->column, value->column)) {
    const Column named(word.text, std::move(word.evidence));
    Mapping reading = map_reading(word.text, named, "the word", 1);
    if (const GivenMapping* given = hints.given == nullptr ? nullptr : hints.given->find(word.text))
      take_given(*given, reading);
    if (reading.count) {
      reading.count = std::nullopt;
      reading.confidence = 0;
      reading.reason = "left alone: counts of animals are not read from rows of readings";
    }
    reading.column = what->column;
    settle_unit(reading, named, units);
    readings.push_back(std::move(reading));
  }
  return readings;
}

} // namespace wetspell
