#include "measure/distribution.hpp"

#include "measure/special_functions.hpp"

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>

#include <cmath>

namespace wetspell {

namespace {

const boost::math::normal_distribution<double, QuietPolicy> normal;

} // namespace

// The upper tail is asked for directly: 1 - tail would lose digits for levels near 1.
double normal_factor(double level) {
  return boost::math::quantile(boost::math::complement(normal, (1 - level) / 2));
}

double student_factor(double level, double freedom) {
  const boost::math::students_t_distribution<double, QuietPolicy> student(freedom);
  return boost::math::quantile(boost::math::complement(student, (1 - level) / 2));
}

double normal_tails(double z) {
  return 2 * boost::math::cdf(boost::math::complement(normal, std::abs(z)));
}

double chi_squared_above(double value, double freedom) {
  const boost::math::chi_squared_distribution<double, QuietPolicy> chi_squared(freedom);
  return boost::math::cdf(boost::math::complement(chi_squared, value));
}

} // namespace wetspell
