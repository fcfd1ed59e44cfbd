#include "check/say.hpp"

#include "quantity/print.hpp"

#include <fmt/format.h>

#include <cmath>

namespace wetspell {

std::string as_typed(const SeasonView& view, Field field, std::uint32_t row) {
  constexpr std::size_t longest = 40;
  std::string text = to_text(view.season.cell(field, row));
  if (text.size() > longest) {
    std::size_t end = longest;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0) == 0x80) // not inside a character
      --end;
    text.resize(end);
    text += "...";
  }
  return fmt::format("\"{}\"", text);
}

std::string say(const SeasonView& view, Kind kind, double si) {
  return print(si, view.season.settings.unit_of(kind));
}

std::string say_difference(const SeasonView& view, Kind kind, double si) {
  return print_difference(si, view.season.settings.unit_of(kind));
}

std::string say(const Quantity& quantity) {
  return print(quantity.si, quantity.unit);
}

std::string say_days(double days) {
  const auto whole = std::llround(days);
  return fmt::format("{} {}", whole, whole == 1 ? "day" : "days");
}

std::string say_minutes(double minutes) {
  const auto whole = std::llround(minutes);
  const auto counted = [](long long n, std::string_view word) {
    return fmt::format("{} {}{}", n, word, n == 1 ? "" : "s");
  };
  if (whole < 120)
    return counted(whole, "minute");
  return whole % 60 == 0 ? counted(whole / 60, "hour")
                         : counted(whole / 60, "hour") + " " + counted(whole % 60, "minute");
}

std::string_view heading(Field field) {
  return spec(field).heading;
}

std::string pool_of(const SeasonView& view, const Visit& visit) {
  return visit.pool.known() ? view.season.pools[static_cast<std::size_t>(visit.pool.index)].code : "the pool";
}

std::string pool_and_day(const SeasonView& view, const Visit& visit) {
  std::string words = visit.pool.known()   ? "pool " + pool_of(view, visit)
                      : visit.pool.typed() ? "pool " + as_typed(view, Field::visit_pool, visit.row)
                                           : "the pool";
  if (visit.date.has_value())
    words += " on " + print_date(visit.date.si);
  else if (visit.date.typed())
    words += " on " + as_typed(view, Field::visit_date, visit.row);
  return words;
}

std::size_t sheet_row(const SeasonView& view, Field field, std::uint32_t row) {
  const auto place = view.season.place(field, row);
  return place ? place->row : std::size_t{row} + 1;
}

Doubt doubt(Field field, std::string message, std::vector<Field> behind, std::vector<Proposal> proposals) {
  return {field, std::move(message), {}, std::move(proposals), std::move(behind), {}};
}

Cell with_unit(double written, Unit unit) {
  if (unit == Unit::percent)
    return Cell::of_text(plain(written, 6) + "%");
  return Cell::of_text(fmt::format("{} {}", plain(written, 6), symbol(unit)));
}

} // namespace wetspell
