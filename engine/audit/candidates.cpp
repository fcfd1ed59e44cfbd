#include "audit/candidates.hpp"

#include "audit/column_units.hpp"
#include "audit/letter_numbers.hpp"
#include "audit/vocabulary.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace wetspell {

namespace {

constexpr double against = 0.35; // the cells speak against the words
constexpr double agreed = 1.04;
constexpr double no_cells = 0.95;
constexpr double cells_alone = 0.66; // no word of the heading helps, the cells are plain

/// The better of two guesses at the same column, field by field.
HeadingGuess merged(HeadingGuess one, const HeadingGuess& other) {
  for (const WordMatch& match : other.matches) {
    const auto same = std::find_if(one.matches.begin(), one.matches.end(),
                                   [&](const WordMatch& m) { return m.field == match.field; });
    if (same == one.matches.end())
      one.matches.push_back(match);
    else if (same->score < match.score)
      *same = match;
  }
  std::stable_sort(one.matches.begin(), one.matches.end(),
                   [](const WordMatch& a, const WordMatch& b) { return a.score > b.score; });
  if (one.part == Part::none)
    one.part = other.part;
  if (!one.count)
    one.count = other.count;
  if (one.unit == Unit::none)
    one.unit = other.unit;
  return one;
}

std::string of_cells(std::size_t some, std::size_t all, std::string_view what) {
  return fmt::format("{} of {} {} {}", some, all, all == 1 ? "cell reads as" : "cells read as", what);
}

std::string cells_hold(std::size_t cells, std::string_view what) {
  return fmt::format("{} {} {}", cells, cells == 1 ? "cell holds" : "cells hold", what);
}

std::string_view plain(Kind kind) {
  switch (kind) {
  case Kind::temperature:
    return "a temperature";
  case Kind::depth:
    return "a depth";
  case Kind::length:
    return "a length";
  case Kind::area:
    return "an area";
  case Kind::volume:
    return "a volume";
  case Kind::percent:
    return "a per cent";
  case Kind::count:
    return "a count";
  case Kind::date:
    return "a date";
  case Kind::time:
    return "a time";
  case Kind::truth:
    return "yes or no";
  }
  return {};
}

std::size_t tenths(double share, std::size_t all) {
  return static_cast<std::size_t>(std::lround(share * static_cast<double>(all)));
}

/// "Dried on", "Date entered": a day, but not that of the visit.
bool names_another_day(std::string_view heading) {
  // Common practice, no source.
  constexpr std::array<std::string_view, 30> other{
      "dried",    "drying",  "dry",    "filled", "fill",    "full",    "ice",  "iced",
      "thawed",   "rain",    "rained", "snow",   "last",    "next",    "due",  "planned",
      "previous", "entered", "entry",  "typed",  "updated", "printed", "sent", "set",
      "hatched",  "laid",    "found",  "mapped", "built",   "permit"};
  const auto words = words_of(heading);
  return std::any_of(words.begin(), words.end(), [&](const std::string& word) {
    return std::find(other.begin(), other.end(), word) != other.end();
  });
}

/// Whether the words name one of the readings of the temperature.
bool names_a_reading(const HeadingGuess& guess) {
  if (guess.best() < known_heading)
    return false;
  const Field field = guess.matches.front().field;
  return field == Field::visit_temperature_1 || field == Field::visit_temperature_2 ||
         field == Field::visit_temperature_3;
}

} // namespace

Column::Column(const Block& block, std::size_t at) : Column(block.headings[at].text, look_at(block, at)) {
  at_ = at;
  const BlockHeading& heading = block.headings[at];
  unit_below_ = heading.unit;
  if (const auto numbered = numbered_by_letter(block.headings, at))
    if (HeadingGuess guess = guess_heading(*numbered); names_a_reading(guess)) {
      guess_ = std::move(guess);
      said_ = guess_.unit != Unit::none ? guess_.unit : heading.unit;
      return;
    }
  // The lower of two rows alone: only where it is more than a number or a unit under a group.
  if (heading.alone != heading.text)
    if (const HeadingGuess alone = guess_heading(heading.alone); says_something(alone))
      guess_ = merged(guess_, alone);
  said_ = guess_.unit != Unit::none ? guess_.unit : heading.unit;
}

Column::Column(std::string words, Evidence cells)
    : heading_(std::move(words)), evidence_(std::move(cells)), guess_(guess_heading(heading_)),
      said_(guess_.unit) {
  for (const std::string& word : words_of(heading_))
    says_mean_ = says_mean_ || heading_word(word) == Word::mean || word == "noted";
}

const AsKind& Column::as(Kind kind) const {
  auto& kept = as_[static_cast<std::size_t>(kind)];
  if (!kept)
    kept = as_kind(evidence_, kind);
  return *kept;
}

Column::Weighed Column::weigh_quantity(const FieldSpec& field) const {
  const AsKind& read = as(field.kind);
  const std::string said = of_cells(read.readable, read.filled, plain(field.kind));
  if (read.share() < 0.25)
    return {against, "but " + said};
  // A heading names a unit; water of 60 °C speaks against the words.
  if (said_ != Unit::none && fits(said_, field.kind) && !possible(field.kind, said_, read))
    return {0.6, fmt::format("but numbers up to {:.6g} {} are not those of a pool", read.highest(),
                             symbol(said_))};
  if (said_ == Unit::none && field.kind == Kind::temperature &&
      !possible(field.kind, Unit::fahrenheit, read) && !possible(field.kind, Unit::celsius, read))
    return {against,
            fmt::format("but numbers from {:.6g} to {:.6g} are no water's", read.lowest(), read.highest())};
  const bool too_deep = field.kind == Kind::depth && !possible(field.kind, Unit::millimetre, read);
  const bool no_share = field.kind == Kind::percent && (read.low() < 0 || read.high() > 150);
  if (too_deep || no_share)
    return {against,
            fmt::format("but numbers from {:.6g} to {:.6g} cannot be meant", read.lowest(), read.highest())};
  return {read.share() >= 0.8 ? agreed : read.share() >= 0.5 ? 1.0 : 0.85, said};
}

Column::Weighed Column::weigh_reference(const FieldSpec& field) const {
  if (field.type == FieldType::species_ref) {
    const double known = share_of_species(evidence_);
    const std::string said =
        of_cells(tenths(known, evidence_.filled()), evidence_.filled(), "an animal we know");
    return {known >= 0.5 ? agreed : 0.75, said};
  }
  if (share_of_dates(evidence_) > 0.5)
    return {against, "but its cells are dates"};
  const AsKind& numbers = as(Kind::depth);
  if (numbers.share() > 0.5 && numbers.share_with_decimals() > 0.2)
    return {against, "but its cells are numbers with decimals"};
  return {agreed, cells_hold(evidence_.filled(), "a code or a name")};
}

Column::Weighed Column::weigh(const FieldSpec& field) const {
  const bool classes = field.type == FieldType::depth_class || field.type == FieldType::fill_class;
  if (unit_below_ != Unit::none && !classes &&
      !(field.type == FieldType::quantity && fits(unit_below_, field.kind)))
    return {against, fmt::format("but {} is the unit of its numbers", symbol(unit_below_))};
  if (evidence_.filled() == 0)
    return {no_cells, "nothing stands below it"};
  switch (field.type) {
  case FieldType::quantity:
    return weigh_quantity(field);
  case FieldType::pool_ref:
  case FieldType::person_ref:
  case FieldType::species_ref:
  case FieldType::key:
    return weigh_reference(field);
  case FieldType::choice: {
    const double share = share_in(evidence_, *field.choices);
    const std::string said = of_cells(tenths(share, evidence_.filled()), evidence_.filled(),
                                      fmt::format("a word for {}", field.choices->name));
    return {share >= 0.6 ? agreed : share >= 0.3 ? 0.9 : against, (share < 0.3 ? "but " : "") + said};
  }
  case FieldType::depth_class:
  case FieldType::fill_class:
    if (share_of_numbers(evidence_) > 0.7)
      return {0.6, "but its cells are single numbers, not classes"};
    return {1.0, "its cells are words or ranges"};
  case FieldType::text:
    break;
  }
  if (field.field == Field::pool_latitude || field.field == Field::pool_longitude) {
    const bool degrees =
        as(Kind::depth).share() > 0.5 && as(Kind::depth).low() >= -180 && as(Kind::depth).high() <= 180;
    return {degrees ? agreed : 0.6, degrees ? "its numbers can be degrees" : "but its cells are no degrees"};
  }
  return {1.0, cells_hold(evidence_.filled(), "something")};
}

std::vector<Candidate> Column::candidates() const {
  std::vector<Candidate> all;
  for (const WordMatch& match : guess_.matches) {
    const FieldSpec& field = spec(match.field);
    const Weighed cells = weigh(field);
    all.push_back({match.field, match.table, std::min(0.99, match.score * cells.factor),
                   fmt::format("by {}: {}; {}", match.how, field.heading, cells.reason)});
  }
  // Without a word that helps, only what can hardly be anything else.
  const bool words_help = std::any_of(
      all.begin(), all.end(), [](const Candidate& candidate) { return candidate.score >= known_heading; });
  if (!words_help && guess_.part == Part::none && evidence_.filled() >= 3) {
    if (const double dates = share_of_dates(evidence_); dates >= 0.7 && !names_another_day(heading_))
      for (const Field field : {Field::visit_date, Field::life_date})
        all.push_back({field, spec(field).table, cells_alone,
                       "by its cells alone: " +
                           of_cells(tenths(dates, evidence_.filled()), evidence_.filled(), "a date")});
    if (const double animals = share_of_species(evidence_); animals >= 0.7)
      all.push_back({Field::life_species, TableKind::life, cells_alone,
                     "by its cells alone: " + of_cells(tenths(animals, evidence_.filled()),
                                                       evidence_.filled(), "an animal we know")});
  }
  std::stable_sort(all.begin(), all.end(),
                   [](const Candidate& a, const Candidate& b) { return a.score > b.score; });
  return all;
}

double Column::part_score(Part part) const {
  if (guess_.part != part)
    return 0;
  if (evidence_.filled() == 0)
    return 0.5;
  const AsKind& numbers = as(Kind::count);
  const bool whole = numbers.share() > 0.8;
  switch (part) {
  case Part::year:
    return whole && numbers.low() >= 0 && numbers.high() < 2200 ? 0.9 : 0.3;
  case Part::month: {
    const bool names = share_of_numbers(evidence_) < 0.2 && !evidence_.cells.empty();
    return (whole && numbers.low() >= 1 && numbers.high() <= 12) || names ? 0.9 : 0.3;
  }
  case Part::day:
    return whole && numbers.low() >= 1 && numbers.high() <= 31 ? 0.9 : 0.3;
  case Part::parameter: {
    std::size_t known = 0;
    for (const Cell* cell : evidence_.cells)
      known += cell->kind() == CellKind::text && guess_heading(cell->text()).best() >= known_heading;
    return known * 2 >= evidence_.filled() ? 0.9 : 0.3;
  }
  case Part::value:
    return 0.85;
  case Part::unit_name:
    return share_of_numbers(evidence_) < 0.5 ? 0.85 : 0.3;
  case Part::none:
    break;
  }
  return 0;
}

double Column::count_score() const {
  if (!guess_.count)
    return 0;
  return evidence_.filled() == 0 ? 0.7 : as(Kind::count).share() >= 0.6 ? 0.85 : 0.3;
}

} // namespace wetspell
