#include "measure/walk.hpp"

#include "measure/careful_sum.hpp"
#include "measure/refuse.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>
#include <vector>

namespace wetspell {

namespace {

// WGS 84: its two defining constants, and what follows from them.
constexpr double equatorial = 6378137;
constexpr double flattening = 1 / 298.257223563;
constexpr double polar = equatorial * (1 - flattening);
constexpr double e2 = flattening * (2 - flattening);

constexpr double radian = std::numbers::pi / 180;
constexpr double longest_piece = 1000;      // m, over which a stretch is halved
constexpr double longest_stretch = 500'000; // m

struct Point {
  double x = 0, y = 0, z = 0;
};

Point operator+(const Point& a, const Point& b) {
  return {a.x + b.x, a.y + b.y, a.z + b.z};
}
Point operator-(const Point& a, const Point& b) {
  return {a.x - b.x, a.y - b.y, a.z - b.z};
}
Point operator*(double k, const Point& a) {
  return {k * a.x, k * a.y, k * a.z};
}
double size(const Point& a) {
  return std::sqrt(a.x * a.x + a.y * a.y + a.z * a.z);
}

/// On the ellipsoid: the angle of its normal and the one around the axis, in radians, and the place in space.
struct Place {
  double latitude = 0, longitude = 0;
  Point at;
};

Place place(double latitude, double longitude) {
  const double sine = std::sin(latitude);
  const double radius = equatorial / std::sqrt(1 - e2 * sine * sine);
  const double across = radius * std::cos(latitude);
  return {latitude,
          longitude,
          {across * std::cos(longitude), across * std::sin(longitude), radius * (1 - e2) * sine}};
}

/// Between two places: the middle of the straight line in space, moved out to the surface along the surface's
/// own normal there, which keeps the halves on the shortest way.
Place middle(const Place& one, const Place& other) {
  Point at = 0.5 * (one.at + other.at);
  constexpr double a2 = equatorial * equatorial;
  constexpr double b2 = polar * polar;
  for (int step = 0; step < 3; ++step) {
    const Point normal{at.x / a2, at.y / a2, at.z / b2};
    const double off = 1 - (at.x * normal.x + at.y * normal.y + at.z * normal.z);
    const double slope = 2 * (normal.x * normal.x + normal.y * normal.y + normal.z * normal.z);
    at = at + (off / slope) * normal;
  }
  return {std::atan2(at.z, (1 - e2) * std::hypot(at.x, at.y)), std::atan2(at.y, at.x), at};
}

/// The function whose integral over longitude is area: Snyder (1987), Map Projections, USGS PP 1395, eq. 3-12
/// (from memory), without its factor 1 - e².
double ordinate(double latitude) {
  static const double e = std::sqrt(e2);
  const double sine = std::sin(latitude);
  return sine / (1 - e2 * sine * sine) + std::atanh(e * sine) / e;
}

double turned(double longitudes) {
  return std::remainder(longitudes, 2 * std::numbers::pi);
}

/// Area between the equator's ordinate at `base` and the way from one place to another; and its length.
struct Stretch {
  CarefulSum area, length;
};

void add(Stretch& sum, const Place& one, const Place& other, double base) {
  const double chord = size(other.at - one.at);
  const Place mid = middle(one, other);
  if (chord > longest_piece) {
    add(sum, one, mid, base);
    add(sum, mid, other, base);
    return;
  }
  // A parabola through both ends and the middle.
  const double across = turned(other.longitude - one.longitude);
  const double first = ordinate(one.latitude) - base;
  const double last = ordinate(other.latitude) - base;
  const double share = across == 0 ? 0.5 : turned(mid.longitude - one.longitude) / across;
  const double bulge =
      std::abs(share - 0.5) < 0.25 ? ordinate(mid.latitude) - base - std::lerp(first, last, share) : 0.0;
  constexpr double half_axis = equatorial * equatorial * (1 - e2) / 2;
  sum.area.add(half_axis * across * ((first + last) / 2 + bulge * 2 / 3));
  const double bend = chord / equatorial;
  sum.length.add(chord * (1 + bend * bend / 24));
}

struct Flat {
  double x = 0, y = 0;
};

double cross(const Flat& o, const Flat& a, const Flat& b) {
  return (a.x - o.x) * (b.y - o.y) - (a.y - o.y) * (b.x - o.x);
}

bool crosses(const Flat& a, const Flat& b, const Flat& c, const Flat& d) {
  if (std::max(a.x, b.x) < std::min(c.x, d.x) || std::max(c.x, d.x) < std::min(a.x, b.x) ||
      std::max(a.y, b.y) < std::min(c.y, d.y) || std::max(c.y, d.y) < std::min(a.y, b.y)) {
    return false;
  }
  return cross(a, b, c) * cross(a, b, d) < 0 && cross(c, d, a) * cross(c, d, b) < 0;
}

/// In metres about the first place: good enough for anything that somebody walks round.
std::vector<Flat> flattened(const std::vector<Place>& places) {
  const Place& origin = places.front();
  const double sine = std::sin(origin.latitude);
  const double root = std::sqrt(1 - e2 * sine * sine);
  const double north = equatorial * (1 - e2) / (root * root * root);
  const double east = equatorial / root * std::cos(origin.latitude);
  std::vector<Flat> flat;
  flat.reserve(places.size());
  for (const Place& each : places) {
    flat.push_back(
        {turned(each.longitude - origin.longitude) * east, (each.latitude - origin.latitude) * north});
  }
  return flat;
}

std::optional<Problem> crossing_itself(const std::vector<Flat>& flat) {
  const std::size_t n = flat.size();
  for (std::size_t i = 0; i + 2 < n; ++i) {
    // The first and the last stretch share the first point.
    for (std::size_t j = i + 2; j < n - (i == 0 ? 1 : 0); ++j) {
      if (crosses(flat[i], flat[i + 1], flat[j], flat[(j + 1) % n])) {
        return bad_argument(fmt::format("The outline crosses itself: the stretch from point {} to {} and the "
                                        "one from {} to {}. Cut the walk "
                                        "where it comes back to its start, and take out loops.",
                                        i + 1, i + 2, j + 1, (j + 1) % n + 1));
      }
    }
  }
  return std::nullopt;
}

Result<std::vector<Place>> outline(std::span<const Position> points) {
  std::vector<Place> places;
  for (std::size_t i = 0; i < points.size(); ++i) {
    const auto& [latitude, longitude] = points[i];
    if (!std::isfinite(latitude) || !std::isfinite(longitude) || std::abs(latitude) > 90 ||
        std::abs(longitude) > 180) {
      return bad_argument(
          fmt::format("Point {} reads {}, {}; latitude lies within ±90 and longitude within ±180 degrees.",
                      i + 1, in_words(latitude), in_words(longitude)));
    }
    const bool again = i > 0 && latitude == points[i - 1].latitude && longitude == points[i - 1].longitude;
    const bool closed =
        i > 0 && i + 1 == points.size() && latitude == points[0].latitude && longitude == points[0].longitude;
    if (!again && !closed) {
      places.push_back(place(latitude * radian, longitude * radian));
    }
  }
  if (places.size() < 3) {
    return not_enough(
        fmt::format("{} of the at least 3 different points needed to go round something.", places.size()));
  }
  if (places.size() > outline_most) {
    return bad_argument(
        fmt::format("The outline has {} points; at most {} are taken.", places.size(), outline_most));
  }
  return places;
}

/// Longest line between two points, and widest across it.
void measure_across(const std::vector<Flat>& flat, Walk& walk) {
  Flat along{1, 0};
  for (std::size_t i = 0; i < flat.size(); ++i) {
    for (std::size_t j = 0; j < i; ++j) {
      const Flat line{flat[i].x - flat[j].x, flat[i].y - flat[j].y};
      if (const double length = std::hypot(line.x, line.y); length > walk.length) {
        walk.length = length;
        along = {line.x / length, line.y / length};
      }
    }
  }
  double least = 0;
  double most = 0;
  for (const Flat& each : flat) {
    const double off = each.y * along.x - each.x * along.y;
    least = std::min(least, off);
    most = std::max(most, off);
  }
  walk.width = most - least;
}

double area_uncertainty(const std::vector<Flat>& flat, double position_uncertainty) {
  const std::size_t n = flat.size();
  double squares = 0;
  for (std::size_t i = 0; i < n; ++i) {
    const Flat& before = flat[(i + n - 1) % n];
    const Flat& after = flat[(i + 1) % n];
    squares += (after.x - before.x) * (after.x - before.x) + (after.y - before.y) * (after.y - before.y);
  }
  return position_uncertainty / 2 * std::sqrt(squares);
}

} // namespace

Result<Walk> walk_around(std::span<const Position> points, double position_uncertainty) {
  if (!(position_uncertainty >= 0) || !std::isfinite(position_uncertainty)) {
    return bad_argument(fmt::format("An uncertainty of {} m was read; it cannot be below 0.",
                                    in_words(position_uncertainty)));
  }
  const auto found = outline(points);
  if (!found) {
    return found.error();
  }
  const std::vector<Place>& places = found.value();
  const std::size_t n = places.size();
  const double base = ordinate(places.front().latitude);
  Stretch sum;
  double turns = 0;
  for (std::size_t i = 0; i < n; ++i) {
    const Place& one = places[i];
    const Place& other = places[(i + 1) % n];
    if (const double chord = size(other.at - one.at); chord > longest_stretch) {
      return bad_argument(fmt::format("Points {} and {} lie {} km apart; that is no walk round a pool.",
                                      i + 1, (i + 1) % n + 1, in_words(std::round(chord / 1000))));
    }
    turns += turned(other.longitude - one.longitude);
    add(sum, one, other, base);
  }
  if (std::abs(turns) > 1) {
    return bad_argument("The outline goes round a pole.");
  }
  const std::vector<Flat> flat = flattened(places);
  if (auto problem = crossing_itself(flat)) {
    return *std::move(problem);
  }
  Walk walk;
  walk.points = n;
  walk.area = {.value = std::abs(sum.area.value()),
               .uncertainty = area_uncertainty(flat, position_uncertainty)};
  walk.edge = sum.length.value();
  walk.gap = distance(points.back(), points.front());
  measure_across(flat, walk);
  return walk;
}

double distance(const Position& from, const Position& to) {
  Stretch sum;
  add(sum, place(from.latitude * radian, from.longitude * radian),
      place(to.latitude * radian, to.longitude * radian), 0);
  return sum.length.value();
}

} // namespace wetspell
