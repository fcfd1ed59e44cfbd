#include "quantity/unit_words.hpp"

#include "quantity/fold.hpp"
#include "quantity/vocabulary.hpp"

#include <cstddef>
#include <utility>

namespace wetspell {

namespace {

// Small letters, no full stops, one space between words: as Folded leaves them.
constexpr WordMeaning<Unit> unit_list[] = {
    {"c", Unit::celsius},
    {"celsius", Unit::celsius},
    {"centigrade", Unit::celsius},
    {"\x01", Unit::none}, // a degree sign alone: the degrees of the column
    {"\x01"
     "c",
     Unit::celsius},
    {"\x01 c", Unit::celsius},
    {"\x01 celsius", Unit::celsius},
    {"\x01"
     "celsius",
     Unit::celsius},
    {"deg", Unit::none},
    {"degs", Unit::none},
    {"degree", Unit::none},
    {"degrees", Unit::none},
    {"degc", Unit::celsius},
    {"deg c", Unit::celsius},
    {"degs c", Unit::celsius},
    {"degree c", Unit::celsius},
    {"degrees c", Unit::celsius},
    {"deg celsius", Unit::celsius},
    {"degree celsius", Unit::celsius},
    {"degrees celsius", Unit::celsius},
    {"degree centigrade", Unit::celsius},
    {"degrees centigrade", Unit::celsius},
    {"f", Unit::fahrenheit},
    {"fahrenheit", Unit::fahrenheit},
    {"\x01"
     "f",
     Unit::fahrenheit},
    {"\x01 f", Unit::fahrenheit},
    {"\x01 fahrenheit", Unit::fahrenheit},
    {"\x01"
     "fahrenheit",
     Unit::fahrenheit},
    {"degf", Unit::fahrenheit},
    {"deg f", Unit::fahrenheit},
    {"degs f", Unit::fahrenheit},
    {"degree f", Unit::fahrenheit},
    {"degrees f", Unit::fahrenheit},
    {"deg fahrenheit", Unit::fahrenheit},
    {"degree fahrenheit", Unit::fahrenheit},
    {"degrees fahrenheit", Unit::fahrenheit},
    {"k", Unit::kelvin},
    {"kelvin", Unit::kelvin},
    {"kelvins", Unit::kelvin},
    {"degrees kelvin", Unit::kelvin},
    {"mm", Unit::millimetre},
    {"millimetre", Unit::millimetre},
    {"millimetres", Unit::millimetre},
    {"millimeter", Unit::millimetre},
    {"millimeters", Unit::millimetre},
    {"cm", Unit::centimetre},
    {"cms", Unit::centimetre},
    {"centimetre", Unit::centimetre},
    {"centimetres", Unit::centimetre},
    {"centimeter", Unit::centimetre},
    {"centimeters", Unit::centimetre},
    {"m", Unit::metre},
    {"mtr", Unit::metre},
    {"mtrs", Unit::metre},
    {"metre", Unit::metre},
    {"metres", Unit::metre},
    {"meter", Unit::metre},
    {"meters", Unit::metre},
    {"\"", Unit::inch},
    {"''", Unit::inch},
    {"in", Unit::inch},
    {"ins", Unit::inch},
    {"inch", Unit::inch},
    {"inches", Unit::inch},
    {"'", Unit::foot},
    {"ft", Unit::foot},
    {"fts", Unit::foot},
    {"foot", Unit::foot},
    {"feet", Unit::foot},
    {"yd", Unit::yard},
    {"yds", Unit::yard},
    {"yard", Unit::yard},
    {"yards", Unit::yard},
    {"m2", Unit::square_metre},
    {"m^2", Unit::square_metre},
    {"sqm", Unit::square_metre},
    {"sq m", Unit::square_metre},
    {"m sq", Unit::square_metre},
    {"square m", Unit::square_metre},
    {"sq metre", Unit::square_metre},
    {"sq metres", Unit::square_metre},
    {"sq meter", Unit::square_metre},
    {"sq meters", Unit::square_metre},
    {"square metre", Unit::square_metre},
    {"square metres", Unit::square_metre},
    {"square meter", Unit::square_metre},
    {"square meters", Unit::square_metre},
    {"metres squared", Unit::square_metre},
    {"meters squared", Unit::square_metre},
    {"ft2", Unit::square_foot},
    {"ft^2", Unit::square_foot},
    {"'^2", Unit::square_foot},
    {"sqft", Unit::square_foot},
    {"sq ft", Unit::square_foot},
    {"ft sq", Unit::square_foot},
    {"square ft", Unit::square_foot},
    {"sq foot", Unit::square_foot},
    {"sq feet", Unit::square_foot},
    {"square foot", Unit::square_foot},
    {"square feet", Unit::square_foot},
    {"feet squared", Unit::square_foot},
    {"yd2", Unit::square_yard},
    {"yd^2", Unit::square_yard},
    {"sqyd", Unit::square_yard},
    {"sq yd", Unit::square_yard},
    {"sq yds", Unit::square_yard},
    {"sq yard", Unit::square_yard},
    {"sq yards", Unit::square_yard},
    {"square yard", Unit::square_yard},
    {"square yards", Unit::square_yard},
    {"yards squared", Unit::square_yard},
    {"ac", Unit::acre},
    {"acre", Unit::acre},
    {"acres", Unit::acre},
    {"ha", Unit::hectare},
    {"hectare", Unit::hectare},
    {"hectares", Unit::hectare},
    {"m3", Unit::cubic_metre},
    {"m^3", Unit::cubic_metre},
    {"cu m", Unit::cubic_metre},
    {"cubic m", Unit::cubic_metre},
    {"cu metre", Unit::cubic_metre},
    {"cu metres", Unit::cubic_metre},
    {"cu meter", Unit::cubic_metre},
    {"cu meters", Unit::cubic_metre},
    {"cubic metre", Unit::cubic_metre},
    {"cubic metres", Unit::cubic_metre},
    {"cubic meter", Unit::cubic_metre},
    {"cubic meters", Unit::cubic_metre},
    {"metres cubed", Unit::cubic_metre},
    {"meters cubed", Unit::cubic_metre},
    {"ft3", Unit::cubic_foot},
    {"ft^3", Unit::cubic_foot},
    {"'^3", Unit::cubic_foot},
    {"cuft", Unit::cubic_foot},
    {"cu ft", Unit::cubic_foot},
    {"cubic ft", Unit::cubic_foot},
    {"cu foot", Unit::cubic_foot},
    {"cu feet", Unit::cubic_foot},
    {"cubic foot", Unit::cubic_foot},
    {"cubic feet", Unit::cubic_foot},
    {"feet cubed", Unit::cubic_foot},
    {"%", Unit::percent},
    {"pct", Unit::percent},
    {"percent", Unit::percent},
    {"per cent", Unit::percent},
    {"of 1", Unit::one},
    {"of one", Unit::one},
    {"fraction", Unit::one},
    {"fraction of one", Unit::one},
    {"one", Unit::one},
    {"pace", Unit::pace},
    {"paces", Unit::pace},
    {"double pace", Unit::pace},
    {"double paces", Unit::pace},
    {"step", Unit::step},
    {"steps", Unit::step},
    {"single step", Unit::step},
    {"single steps", Unit::step},
};

constexpr auto unit_words = vocabulary(unit_list);

/// Edit distance of two short words, given up as soon as it must exceed one.
bool one_slip_apart(std::string_view a, std::string_view b) {
  if (a.size() > b.size())
    std::swap(a, b);
  if (b.size() - a.size() > 1)
    return false;
  std::size_t i = 0;
  while (i < a.size() && a[i] == b[i])
    ++i;
  if (a.size() == b.size()) {
    if (i + 1 < a.size() && a[i] == b[i + 1] && a[i + 1] == b[i] && a.substr(i + 2) == b.substr(i + 2))
      return true; // two neighbours changed places
    return i < a.size() && a.substr(i + 1) == b.substr(i + 1);
  }
  return a.substr(i) == b.substr(i + 1);
}

} // namespace

std::optional<Unit> unit_word(std::string_view folded) {
  return unit_words.find(folded);
}

std::optional<Unit> unit_named(std::string_view text) {
  const Folded folded(text);
  if (folded.trouble() != Reason::none)
    return std::nullopt;
  const auto unit = unit_word(folded.text());
  return unit == Unit::none ? std::nullopt : unit; // "degrees" alone names no unit
}

std::string_view unit_word_near(std::string_view word) {
  const Folded folded(word);
  // Among short words everything is near everything: a hint would be a guess.
  if (folded.trouble() != Reason::none || folded.text().size() < 4)
    return {};
  std::string_view near;
  Unit unit = Unit::none;
  for (const auto& [known, meaning] : unit_words.words()) {
    if (known.size() < 4 || !one_slip_apart(folded.text(), known))
      continue;
    if (!near.empty() && meaning != unit)
      return {};
    near = known.size() > near.size() ? known : near; // the plural rather than the singular of "inchs"
    unit = meaning;
  }
  return near;
}

} // namespace wetspell
