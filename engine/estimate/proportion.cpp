#include "estimate/proportion.hpp"

#include "measure/distribution.hpp"
#include "measure/special_functions.hpp"
#include "measure/usable.hpp"

#include <boost/math/distributions/beta.hpp>
#include <boost/math/distributions/chi_squared.hpp>

#include <algorithm>
#include <cmath>

namespace wetspell {

namespace {

std::optional<Problem> wrong_count(double count) {
  if (!std::isfinite(count))
    return not_a_number("A count is not a finite number.");
  if (count < 0 || count != std::floor(count))
    return bad_argument(fmt::format("A count is a whole number from 0 on, not {}.", in_words(count)));
  return std::nullopt;
}

std::optional<Problem> wrong_share(double some, double all, double level) {
  for (const double count : {some, all})
    if (auto wrong = wrong_count(count))
      return wrong;
  if (all == 0)
    return not_enough("A share of none is not known: the count of all is 0.");
  if (some > all)
    return bad_argument(fmt::format("{} of {} is no share.", in_words(some), in_words(all)));
  return unusable_level(level);
}

double beta_quantile(double a, double b, double p) {
  return boost::math::quantile(boost::math::beta_distribution<double, QuietPolicy>(a, b), p);
}

double chi_squared_quantile(double degrees, double p) {
  return boost::math::quantile(boost::math::chi_squared_distribution<double, QuietPolicy>(degrees), p);
}

} // namespace

Result<Interval> wilson_interval(double some, double all, double level) {
  if (auto wrong = wrong_share(some, all, level))
    return *std::move(wrong);
  const double z = normal_factor(level);
  const double share = some / all;
  const double middle = share + z * z / (2 * all);
  const double half = z * std::sqrt(share * (1 - share) / all + z * z / (4 * all * all));
  const double stretch = 1 + z * z / all;
  // Rounding would leave a trace beyond 0 or 1 where the formula ends there exactly.
  return Interval{some == 0 ? 0 : std::max(0.0, (middle - half) / stretch),
                  some == all ? 1 : std::min(1.0, (middle + half) / stretch)};
}

Result<Interval> exact_interval(double some, double all, double level) {
  if (auto wrong = wrong_share(some, all, level))
    return *std::move(wrong);
  const double tail = (1 - level) / 2;
  return Interval{some == 0 ? 0 : beta_quantile(some, all - some + 1, tail),
                  some == all ? 1 : beta_quantile(some + 1, all - some, 1 - tail)};
}

Result<Interval> poisson_interval(double count, double level) {
  if (auto wrong = wrong_count(count))
    return *std::move(wrong);
  if (auto wrong = unusable_level(level))
    return *std::move(wrong);
  const double tail = (1 - level) / 2;
  return Interval{count == 0 ? 0 : chi_squared_quantile(2 * count, tail) / 2,
                  chi_squared_quantile(2 * count + 2, 1 - tail) / 2};
}

} // namespace wetspell
