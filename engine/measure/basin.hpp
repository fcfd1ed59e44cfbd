// A pool's basin in the power form of Hayashi and van der Kamp (2000): area and volume from depth.
//
//   A = s (h / 1 m)^(2/p),   V = A h / (1 + 2/p)
//
// s: area at a depth of 1 m; p: shape, 1 a cone, 2 a paraboloid (bowl), towards infinity a tub. In logarithms
// a straight line: ln A = ln s + b ln h, with the exponent b = 2/p. All in SI.
#pragma once

#include "base/result.hpp"
#include "measure/measured.hpp"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace wetspell {

struct BasinReading {
  Measured depth; ///< m, over 0
  Measured area;  ///< m², over 0
};

/// Where one reading pulls the line, and how unsure it is, all in logarithms.
struct BasinPull {
  double on_scale = 0, on_exponent = 0;
  double depth_error = 0, area_error = 0; ///< relative standard uncertainties
};

struct Basin {
  std::size_t n = 0;                                          ///< readings
  bool shape_given = false;                                   ///< not from readings
  double log_scale = 0;                                       ///< ln s
  double exponent = 0;                                        ///< b
  double log_scale_uncertainty = 0, exponent_uncertainty = 0; ///< 0: not known
  double covariance = 0;                                      ///< of ln s and b
  double given_error = 0;    ///< standard uncertainty of an exponent that is not from readings
  double given_on_scale = 0; ///< how ln s changes with it
  double stretch = 1;        ///< of all errors, since the readings scatter more than their own say
  std::vector<BasinPull> pulls;

  [[nodiscard]] Measured scale() const; ///< s, m²
  [[nodiscard]] Measured shape() const; ///< p
};

/// From two readings or more: least squares on the logarithms. Uncertainty by the GUM's law from those of the
/// readings, depth and area; from three readings on all are stretched by sqrt(chi-squared / freedom) where
/// the readings scatter more than their own uncertainties would in 95 of 100 cases. Where the readings' are
/// not known (0), from the scatter alone (three or more), else not known. Refuses fewer than two readings and
/// depths that are all the same (not_enough), what is not over 0, and areas that do not grow with depth
/// (bad_argument).
Result<Basin> basin_from_readings(std::span<const BasinReading> readings);

/// Standard uncertainty of the exponent 2/p where the shape is not from readings: a rectangle over the
/// exponents of the published shapes, 0.91 (Karran et al. 2017) to 3.3 (larger prairie ponds).
double given_exponent_uncertainty();

/// From one reading and a shape. Refuses what is not over 0 (bad_argument).
Result<Basin> basin_with_shape(const BasinReading& reading, double shape);

/// Area and volume at a depth; `reading` says that the depth is that of this reading of the fit, whose error
/// is then the same one. 0 at a depth of 0. Refuses a depth below 0 (bad_argument).
Result<Measured> area_at(const Basin& basin, const Measured& depth, std::optional<std::size_t> reading = {});
Result<Measured> volume_at(const Basin& basin, const Measured& depth,
                           std::optional<std::size_t> reading = {});

/// Ends of the interval of a positive number whose logarithm is about normal: value / f and value * f.
Interval spread_of(const Measured& measured, double level);

/// From this relative uncertainty of a volume on, the law of first order no longer does: take volume_drawn().
inline constexpr double large_uncertainty = 0.3;

/// A volume by Monte Carlo (JCGM 101:2008): depth, areas and a given exponent drawn (normal in logarithms,
/// the exponent normal and over 0), the fit made again each time. Median and standard uncertainty of the
/// draws, and their interval with equal tails.
struct DrawnVolume {
  Measured volume;
  Interval interval;
};
Result<DrawnVolume> volume_drawn(const Basin& basin, const Measured& depth,
                                 std::optional<std::size_t> reading, double level, std::size_t draws,
                                 std::uint64_t seed);

/// How full a basin of this exponent is, as a share of its volume at the brim, from two depths:
/// (h / brim)^(1 + b). A depth over the brim gives more than 1. Refuses a brim that is not over 0.
Result<Measured> fill_from_depth(const Basin& basin, const Measured& depth, const Measured& brim);

} // namespace wetspell
