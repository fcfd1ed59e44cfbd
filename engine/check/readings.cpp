#include "check/readings.hpp"

#include <algorithm>
#include <cmath>

namespace wetspell {

std::size_t first_temperature(const Visit& visit) {
  for (std::size_t i = 0; i < temperature_fields.size(); ++i)
    if (temperature(visit, i).has_value())
      return i;
  return 0;
}

int unusual(const SeasonView& view, const Quantity& reading) {
  if (reading.si < view.season.limits[Limit::temperature_doubtful_low])
    return -1;
  return reading.si > view.season.limits[Limit::temperature_doubtful_high] ? 1 : 0;
}

std::optional<std::size_t> odd_one(const SeasonView& view, const Visit& visit) {
  if (!view.signs_of(visit).readings_apart)
    return std::nullopt;
  if (!visit.temperature_1.has_value() || !visit.temperature_2.has_value() ||
      !visit.temperature_3.has_value())
    return std::nullopt;
  const double limit = view.season.limits[Limit::temperature_spread];
  const double a = visit.temperature_1.si, b = visit.temperature_2.si, c = visit.temperature_3.si;
  const bool ab = std::fabs(a - b) <= limit, bc = std::fabs(b - c) <= limit, ca = std::fabs(c - a) <= limit;
  if (ab + bc + ca != 1)
    return std::nullopt;
  return ab ? 2U : bc ? 0U : 1U;
}

std::optional<double> visit_temperature(const SeasonView& view, const Visit& visit) {
  const double known = view.compared[view.index(visit)].temperature;
  return std::isnan(known) ? std::nullopt : std::optional(known);
}

namespace {

struct Expected {
  double si;
  double within; ///< a candidate must be at least this near
};

/// What the reading should be about, from the visit's other temperatures or from the pool's other visits.
std::optional<Expected> expected(const SeasonView& view, const Visit& visit, std::size_t which) {
  double sum = 0;
  int n = 0;
  for (std::size_t i = 0; i < temperature_fields.size(); ++i) {
    const Quantity& other = temperature(visit, i);
    if (i == which || !other.has_value() || unusual(view, other) != 0)
      continue;
    sum += other.si;
    ++n;
  }
  const double spread = view.season.limits[Limit::temperature_spread];
  if (n > 0)
    return Expected{sum / n, 1.5 * spread};
  constexpr double weeks = 21; // days; water follows the season, so visits further away tell little
  for (const Visit* other : {view.before(visit), view.after(visit)}) {
    if (other == nullptr || std::fabs(other->date.si - visit.date.si) > weeks)
      continue;
    const auto known = visit_temperature(view, *other);
    if (known && *known >= view.season.limits[Limit::temperature_doubtful_low] &&
        *known <= view.season.limits[Limit::temperature_doubtful_high]) {
      sum += *known;
      ++n;
    }
  }
  if (n > 0)
    return Expected{sum / n, 4 * spread};
  return std::nullopt;
}

/// Whether another temperature of the visit is unusual to the same side: then somebody used another scale
/// throughout, since nobody slips a decimal in each of several readings.
bool all_alike(const SeasonView& view, const Visit& visit, std::size_t which) {
  const int side = unusual(view, temperature(visit, which));
  for (std::size_t i = 0; i < temperature_fields.size(); ++i)
    if (i != which && temperature(visit, i).has_value() && unusual(view, temperature(visit, i)) == side)
      return side != 0;
  return false;
}

/// Whether the other two agree with each other and not with this one, and are as pools usually are: where
/// they are not, the doubt is about them.
bool odd_among_usual(const SeasonView& view, const Visit& visit, std::size_t which) {
  if (odd_one(view, visit) != which)
    return false;
  for (std::size_t i = 0; i < 3; ++i)
    if (i != which && unusual(view, temperature(visit, i)) != 0)
      return false;
  return true;
}

} // namespace

MeantTemperature meant_temperature(const SeasonView& view, const Visit& visit, std::size_t which) {
  const Signs signs = view.signs_of(visit);
  const Quantity& reading = temperature(visit, which);
  if ((!signs.unusual_water && !signs.readings_apart) || !reading.has_value() ||
      (unusual(view, reading) == 0 && !odd_among_usual(view, visit, which)))
    return {};
  std::array<MeantTemperature, 3> candidates{};
  std::size_t n = 0;
  const auto offer = [&](TemperatureSlip slip, double written, Unit unit) {
    const MeantTemperature meant{slip, written, unit, to_si(written, unit)};
    if (meant.si >= view.season.limits[Limit::temperature_doubtful_low] &&
        meant.si <= view.season.limits[Limit::temperature_doubtful_high])
      candidates[n++] = meant;
  };
  if (reading.unit == Unit::fahrenheit)
    offer(TemperatureSlip::celsius_as_fahrenheit, reading.written, Unit::celsius);
  else if (reading.unit == Unit::celsius)
    offer(TemperatureSlip::fahrenheit_as_celsius, reading.written, Unit::fahrenheit);
  if (n == 0 || !all_alike(view, visit, which)) {
    offer(TemperatureSlip::decimal, reading.written / 10, reading.unit);
    offer(TemperatureSlip::decimal, reading.written * 10, reading.unit);
  }
  const auto near = expected(view, visit, which);
  if (near)
    n = static_cast<std::size_t>(std::remove_if(candidates.begin(), candidates.begin() + n,
                                                [&](const MeantTemperature& meant) {
                                                  return std::fabs(meant.si - near->si) > near->within;
                                                }) -
                                 candidates.begin());
  return n == 1 ? candidates[0] : MeantTemperature{};
}

} // namespace wetspell
