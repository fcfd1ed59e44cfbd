#include "measure/walk.hpp"

#include "measure/careful_sum.hpp"
#include "measure/geodesic.hpp"
#include "measure/refuse.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>
#include <vector>

namespace wetspell {

namespace {

constexpr double longest_stretch = 500'000; // m

double turned(double degrees) {
  return std::remainder(degrees, 360);
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
std::vector<Flat> flattened(const std::vector<Position>& places) {
  constexpr double radian = std::numbers::pi / 180;
  const Position& origin = places.front();
  const double sine = std::sin(origin.latitude * radian);
  const double root = std::sqrt(1 - wgs84_e2 * sine * sine);
  const double north = radian * wgs84_equatorial * (1 - wgs84_e2) / (root * root * root);
  const double east = radian * wgs84_equatorial / root * std::cos(origin.latitude * radian);
  std::vector<Flat> flat;
  flat.reserve(places.size());
  for (const Position& each : places) {
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

Result<std::vector<Position>> outline(std::span<const Position> points) {
  std::vector<Position> places;
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
      places.push_back(points[i]);
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
  const std::vector<Position>& places = found.value();
  const std::size_t n = places.size();
  CarefulSum edge;
  double turns = 0; // degrees
  for (std::size_t i = 0; i < n; ++i) {
    const Position& one = places[i];
    const Position& other = places[(i + 1) % n];
    const double length = distance(one, other);
    if (length > longest_stretch) {
      return bad_argument(fmt::format("Points {} and {} lie {} km apart; that is no walk round a pool.",
                                      i + 1, (i + 1) % n + 1, in_words(std::round(length / 1000))));
    }
    turns += turned(other.longitude - one.longitude);
    edge.add(length);
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
  walk.area = {.value = enclosed_area(places), .uncertainty = area_uncertainty(flat, position_uncertainty)};
  walk.edge = edge.value();
  walk.gap = distance(points.back(), points.front());
  measure_across(flat, walk);
  return walk;
}

} // namespace wetspell
