#include "audit/evidence.hpp"

#include "audit/dates.hpp"
#include "quantity/read.hpp"
#include "season/locate.hpp"
#include "season/species.hpp"
#include "season/words.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace wetspell {

namespace {

constexpr std::size_t sample_size = 400;

template <class Test> double share(const Evidence& evidence, Test test) {
  if (evidence.cells.empty())
    return 0;
  const auto count = std::count_if(evidence.cells.begin(), evidence.cells.end(),
                                   [&](const Cell* cell) { return test(*cell); });
  return static_cast<double>(count) / static_cast<double>(evidence.cells.size());
}

bool readable_date(const Cell& cell) {
  return date_from(cell, {}).readable || could_be_date(cell);
}

/// Without a heading that says so: "4-6" and "3/4" may be anything.
bool plain_date(const Cell& cell) {
  const auto two = cell.kind() == CellKind::text ? two_numbers(cell.text()) : std::nullopt;
  return readable_date(cell) && !(two && two->year < 0);
}

ChoiceIndex species_words() {
  ChoiceIndex index;
  std::int16_t at = 0;
  for (const SpeciesSpec& animal : species_catalogue()) {
    index.add(animal.name, at);
    index.add(std::string(animal.name) + "s", at++);
  }
  return index;
}

} // namespace

Evidence look_at(const Block& block, std::size_t column) {
  Evidence evidence;
  const std::size_t rows = block.end_data - block.first_data;
  const std::size_t step = rows / sample_size + 1;
  for (std::size_t row = block.first_data; row < block.end_data; row += step) {
    if (!block.is_record(row))
      continue;
    ++evidence.looked;
    const Cell& cell = block.grid.at(row, column);
    if (holds_something(cell) && !(cell.kind() == CellKind::text && says_not_known(cell.text())))
      evidence.cells.push_back(&cell);
  }
  return evidence;
}

double AsKind::share_with_decimals() const {
  const auto broken =
      std::count_if(bare.begin(), bare.end(), [](double number) { return number != std::floor(number); });
  return bare.empty() ? 0 : static_cast<double>(broken) / static_cast<double>(bare.size());
}

AsKind as_kind(const Evidence& evidence, Kind kind) {
  AsKind as;
  as.filled = evidence.filled();
  std::array<std::size_t, 32> units{};
  for (const Cell* cell : evidence.cells) {
    if (kind == Kind::date) {
      as.readable += readable_date(*cell);
      continue;
    }
    const Quantity q = read(*cell, {.kind = kind});
    if (q.status == Status::bad || q.status == Status::blank)
      continue;
    ++as.readable;
    if (q.unit_typed) {
      ++as.with_unit;
      ++units[static_cast<std::size_t>(q.unit)];
    } else if (q.has_value() && q.unit == usual_unit(kind)) { // "3/4" of a pool says itself what it is of
      as.bare.push_back(q.written);
    }
  }
  std::sort(as.bare.begin(), as.bare.end());
  if (as.with_unit > 0) {
    const auto most = std::max_element(units.begin(), units.end());
    as.typed = static_cast<Unit>(most - units.begin());
    as.with_typed = *most;
  }
  return as;
}

double share_in(const Evidence& evidence, const ChoiceList& list) {
  ChoiceIndex index(list);
  return share(evidence, [&](const Cell& cell) {
    const Choice choice = index.find(to_text(cell));
    return choice.chosen() || choice.index == Choice::not_known;
  });
}

double share_of_species(const Evidence& evidence) {
  static const ChoiceIndex known = species_words();
  ChoiceIndex index = known;
  return share(evidence, [&](const Cell& cell) {
    return cell.kind() == CellKind::text && index.find(cell.text()).chosen();
  });
}

double share_of_numbers(const Evidence& evidence) {
  return share(evidence, [](const Cell& cell) {
    return cell.kind() == CellKind::number ||
           (cell.kind() == CellKind::text && read(cell.text(), {.kind = Kind::depth}).has_value());
  });
}

double share_of_dates(const Evidence& evidence) {
  return share(evidence,
               [](const Cell& cell) { return cell.kind() != CellKind::number && plain_date(cell); });
}

} // namespace wetspell
