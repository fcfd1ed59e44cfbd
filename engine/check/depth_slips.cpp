#include "check/depth_slips.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace wetspell {

namespace {

struct Candidates {
  std::array<MeantDepth, 3> all{};
  std::size_t n = 0;

  void offer(DepthSlip slip, double written, Unit unit) {
    all[n++] = {slip, written, unit, to_si(written, unit)};
  }
  template <class Fits> void keep(Fits fits) {
    const auto end =
        std::remove_if(all.begin(), all.begin() + n, [&](const MeantDepth& m) { return !fits(m); });
    n = static_cast<std::size_t>(end - all.begin());
  }
};

Candidates slips_of(const Quantity& depth, double usual) {
  Candidates found;
  // A unit that was typed is taken at its word; only the point can have slipped then.
  if (!depth.unit_typed && depth.unit == Unit::inch)
    found.offer(DepthSlip::centimetres_as_inches, depth.written, Unit::centimetre);
  if (!depth.unit_typed && depth.unit == Unit::centimetre)
    found.offer(DepthSlip::inches_as_centimetres, depth.written, Unit::inch);
  found.offer(DepthSlip::decimal, depth.written / 10, depth.unit);
  found.offer(DepthSlip::decimal, depth.written * 10, depth.unit);
  found.keep([&](const MeantDepth& m) { return m.si <= usual; });
  return found;
}

/// The depth on the straight line between the visits before and after, where both were measured.
std::optional<double> between_neighbours(const SeasonView& view, const Visit& visit) {
  const Visit *before = view.before(visit), *after = view.after(visit);
  if (before == nullptr || after == nullptr || !before->depth.has_value() || !after->depth.has_value())
    return std::nullopt;
  const double days = after->date.si - before->date.si;
  const double share = days > 0 ? (visit.date.si - before->date.si) / days : 0.5;
  return before->depth.si + share * (after->depth.si - before->depth.si);
}

/// Whether something else explains a depth far from its neighbours: rain filled the pool, or the fill that
/// was judged went the same way.
bool explained(const SeasonView& view, const Visit& visit, OutOfLine line) {
  const Visit *before = view.before(visit), *after = view.after(visit);
  const bool above = line == OutOfLine::above;
  if (above ? visit.rain.is(Rain::much) : after->rain.is(Rain::much))
    return true;
  if (!visit.fill.has_value() || !before->fill.has_value() || !after->fill.has_value())
    return false;
  const double slack = 2 * view.season.limits[Limit::fill_slack];
  return above ? visit.fill.si > std::max(before->fill.si, after->fill.si) + slack
               : visit.fill.si < std::min(before->fill.si, after->fill.si) - slack;
}

} // namespace

MeantDepth meant_depth(const SeasonView& view, const Visit& visit) {
  const Signs signs = view.signs_of(visit);
  const OutOfLine line = signs.depth_line;
  const Quantity& depth = visit.depth;
  if ((!signs.depth_suspect && line == OutOfLine::no) || !depth.has_value() || !(depth.si > 0))
    return {};
  const double usual = usual_depth(view.season, visit);
  const bool too_deep = depth.si > usual;
  const bool judged = visit.depth_class.chosen();
  const auto row = static_cast<std::size_t>(std::max<int>(visit.depth_class.index, 0));
  const bool class_differs = judged && !agrees_with_class(view.season, depth.si, row);
  Candidates found = slips_of(depth, usual);
  if (judged) {
    if (!class_differs && !too_deep)
      return {}; // two people's eyes, stick and class, agree
    if (class_differs) {
      found.keep([&](const MeantDepth& m) { return agrees_with_class(view.season, m.si, row); });
      // A class says little about the depth itself: without a second sign the class may be the slip.
      if (!too_deep && line == OutOfLine::no)
        return {};
    }
  }
  if (!too_deep && !class_differs && explained(view, visit, line))
    return {};
  if (const auto expected = between_neighbours(view, visit))
    found.keep([&](const MeantDepth& m) {
      const double slack = 2 * view.season.limits[Limit::depth_slack];
      return m.si <= *expected * 1.5 + slack && m.si >= *expected / 1.5 - slack;
    });
  else if (!too_deep)
    return {};
  return found.n == 1 ? found.all[0] : MeantDepth{};
}

} // namespace wetspell
