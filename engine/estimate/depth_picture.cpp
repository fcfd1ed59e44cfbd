#include "estimate/depth_picture.hpp"

#include "estimate/figure.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>
#include <vector>

namespace wetspell {

namespace {

constexpr std::size_t week = 7;
constexpr double most_signs = 40;
constexpr std::string_view no_visit = "·", dry = "○", water = "~", unsaid = "?";
constexpr std::array<std::string_view, 8> bars{"▁", "▂", "▃", "▄", "▅", "▆", "▇", "█"};

std::string_view sign_of(const CountedVisit& visit, const DepthScale& scale) {
  if (visit.depth && visit.depth->value > 0) {
    const double eighths = scale.deepest > 0 ? std::ceil(8 * visit.depth->value / scale.deepest) : 8;
    return bars[static_cast<std::size_t>(std::clamp(eighths, 1.0, 8.0)) - 1];
  }
  if (visit.depth || (visit.wet && !*visit.wet))
    return dry;
  return visit.wet ? water : unsaid;
}

} // namespace

DepthScale depth_scale(const SeasonHistory& history) {
  const Settings& settings = history.season.settings;
  std::optional<double> first = settings.first_day, last = settings.last_day;
  DepthScale scale;
  for (const PoolHistory& pool : history.pools)
    for (const CountedVisit& visit : pool.visits) {
      first = std::min(first.value_or(visit.day), visit.day);
      last = std::max(last.value_or(visit.day), visit.day);
      if (visit.depth)
        scale.deepest = std::max(scale.deepest, visit.depth->value);
    }
  if (!first || !last)
    return scale;
  const double days = *last - *first + 1;
  scale.first_day = *first;
  scale.sign_days = week * static_cast<std::size_t>(std::max(1.0, std::ceil(days / (week * most_signs))));
  scale.signs = static_cast<std::size_t>(std::ceil(days / static_cast<double>(scale.sign_days)));
  return scale;
}

std::string depth_picture(const PoolHistory& pool, const DepthScale& scale) {
  std::vector<std::string_view> signs(scale.signs, no_visit);
  for (const CountedVisit& visit : pool.visits) {
    const double at = std::floor((visit.day - scale.first_day) / static_cast<double>(scale.sign_days));
    if (at < 0 || at >= static_cast<double>(scale.signs))
      continue;
    std::string_view& sign = signs[static_cast<std::size_t>(at)];
    const std::string_view said = sign_of(visit, scale);
    if (said != unsaid || sign == no_visit)
      sign = said;
  }
  std::string picture;
  for (const std::string_view sign : signs)
    picture += sign;
  return picture;
}

std::string explained(const DepthScale& scale, const Settings& settings) {
  const double last = scale.first_day + static_cast<double>(scale.signs * scale.sign_days) - 1;
  return fmt::format(
      "{} to {} depth, a full bar is {}; {} dry; {} water, its depth not read; {} a visit that says "
      "neither; {} no visit. {} days a sign, {} to {}.",
      bars.front(), bars.back(), in_words(scale.deepest, Figured::depth, settings), dry, water, unsaid,
      no_visit, scale.sign_days, in_words(scale.first_day, Figured::date, settings),
      in_words(last, Figured::date, settings));
}

} // namespace wetspell
