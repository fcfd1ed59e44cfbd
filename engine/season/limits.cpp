#include "season/limits.hpp"

namespace wetspell {

namespace {

// Values that people can change in the workbook. "judgement" says that nobody has published the number.
constexpr std::array<LimitSpec, limit_count> catalogue{{
    {Limit::temperature_lowest, "temperature_lowest", "Water colder than this cannot be right", -5,
     Unit::celsius, false, "USGS National Field Manual 6.1.3.B, scope of the method: -5 to 45 °C"},
    {Limit::temperature_highest, "temperature_highest", "Water warmer than this cannot be right", 45,
     Unit::celsius, false, "USGS National Field Manual 6.1.3.B, scope of the method: -5 to 45 °C"},
    {Limit::temperature_doubtful_low, "temperature_doubtful_low", "Water colder than this is doubtful", -0.5,
     Unit::celsius, false,
     "judgement: fresh water is liquid from 0 °C on; half a degree is left for the thermometer"},
    {Limit::temperature_doubtful_high, "temperature_doubtful_high", "Water warmer than this is doubtful", 30,
     Unit::celsius, false, "judgement: shaded pools in spring and summer stay well below"},
    {Limit::temperature_spread, "temperature_spread",
     "Readings of one visit further apart than this are doubtful", 2.5, Unit::celsius, true,
     "judgement: readings in one pool commonly differ by a degree or two Fahrenheit; 2.5 °C (4.5 °F) is more "
     "than twice that, and more than sun on one end of a pool explains on most days"},
    {Limit::temperature_mean_slack, "temperature_mean_slack",
     "A mean that was noted may differ by this much from the mean of the readings", 0.3, Unit::celsius, true,
     "judgement: a mean rounded to whole degrees Fahrenheit is off by up to 0.28 °C"},
    {Limit::temperature_jump_per_day, "temperature_jump_per_day",
     "A mean that changes by more than this in a day between visits of a pool is doubtful", 6, Unit::celsius,
     true, "judgement: shallow water follows the air by a few degrees from one day to the next"},
    {Limit::depth_most, "depth_most", "Deeper than this cannot be right for a seasonal pool", 5, Unit::metre,
     false, "judgement: four times the deepest of 64 wetlands (Dryad 0cfxpnw3r, 22 to 118 cm)"},
    {Limit::depth_doubtful, "depth_doubtful", "Deeper than this is doubtful", 1.2, Unit::metre, false,
     "Dryad 0cfxpnw3r: 64 wetlands that dry up, deepest 118 cm"},
    {Limit::depth_wading, "depth_wading", "Deeper than this is not safe to wade", 36, Unit::inch, false,
     "judgement, for safety: above the hips of many people, and above most boots"},
    {Limit::depth_slack, "depth_slack",
     "A depth may lie this far outside the class that was judged, and still agree with it", 1, Unit::inch,
     false, "judgement: what a stick in soft ground is off by"},
    {Limit::depth_fall_per_day, "depth_fall_per_day",
     "Water that falls by more than this in a day, on average between visits, is doubtful", 25,
     Unit::millimetre, false,
     "judgement: 2.5 times the ordinary loss of about 10 mm a day (Carlson Mazur et al. 2014, Ecohydrology "
     "7:378-390)"},
    {Limit::depth_rise, "depth_rise",
     "Water that rises by more than this between two visits without much rain is doubtful", 300,
     Unit::millimetre, false,
     "judgement: a pool gathers the rain of the ground around it, several times over"},
    {Limit::fill_change, "fill_change",
     "A fill that grows by more than this between two visits without rain is doubtful", 50, Unit::percent,
     true, "judgement: half of the basin"},
    {Limit::fill_slack, "fill_slack",
     "A per cent may lie this far outside the class that was judged, and still agree with it", 5,
     Unit::percent, true, "judgement: people judge to the nearest 5 or 10 per cent"},
    {Limit::length_most, "length_most", "Longer than this is doubtful for a seasonal pool", 250, Unit::metre,
     false,
     "judgement: a little over the width of a round pool of 41,361 m² (229 m), the largest in Dryad "
     "0cfxpnw3r"},
    {Limit::area_least, "area_least", "A pool smaller than this is doubtful", 0.2, Unit::square_metre, false,
     "judgement: a puddle of half a metre; a pool that dries passes through every size"},
    {Limit::area_most, "area_most", "A pool larger than this is doubtful", 41361, Unit::square_metre, false,
     "Dryad 0cfxpnw3r: 64 wetlands that dry up, 24 to 41,361 m²"},
    {Limit::tape_against_paces, "tape_against_paces",
     "Paces that differ by more than this from a tape over the same line are doubtful", 15, Unit::percent,
     true, "judgement: pacing in woods errs by 2 to 5 per cent; brush and soft ground double it"},
    {Limit::step_shortest, "step_shortest", "A step shorter than this is doubtful", 2, Unit::foot, false,
     "judgement: natural steps are 2.5 to 3 ft (Field Surveying MAGM 230); half a foot is left for woods"},
    {Limit::step_longest, "step_longest", "A step longer than this is doubtful", 3.5, Unit::foot, false,
     "judgement: natural steps are 2.5 to 3 ft (Field Surveying MAGM 230); half a foot is left for tall "
     "people"},
    {Limit::pace_variation, "pace_variation",
     "Runs over one course whose counts scatter by more than this (standard deviation over mean) are "
     "doubtful",
     5, Unit::percent, true,
     "judgement: 1 in 100 is attainable on flat ground (Univ. of Washington FE 345); counts in halves on a "
     "short course alone give 2 to 3 per cent"},
    {Limit::edge_slack, "edge_slack",
     "A length or width may be this much over the greatest ever seen before it is doubtful", 10,
     Unit::percent, true, "judgement: two people choose the longest line a little differently"},
    {Limit::clock_shortest, "clock_shortest", "A visit shorter than this many minutes is doubtful", 3,
     Unit::none, false, "judgement: three temperatures alone take two minutes each"},
    {Limit::clock_longest, "clock_longest", "A visit longer than this many minutes is doubtful", 300,
     Unit::none, false, "judgement: five hours at one pool"},
    {Limit::visit_gap, "visit_gap", "Visits of a pool more than this many days apart leave a gap", 42,
     Unit::none, false,
     "judgement: six weeks; 15 days of water more or less already matter to what breeds there (Ryan and "
     "Winne "
     "2001, Am. Midl. Nat. 145:46-53)"},
    {Limit::season_margin, "season_margin",
     "A visit more than this many days outside the season's first and last day is doubtful", 14, Unit::none,
     false, "judgement: two weeks for an early or late spring"},
    {Limit::count_most, "count_most", "A count above this is doubtful in one pool", 1113, Unit::none, false,
     "Dryad 0cfxpnw3r: 0 to 1,113 egg masses of wood frogs in 64 wetlands over 21 years"},
    {Limit::count_change, "count_change",
     "A count more than this many times the one before, or less than one part in so many, is doubtful", 4,
     Unit::none, false, "judgement: laying lasts days; a count doubles between visits, rarely more"},
    {Limit::observers_differ, "observers_differ",
     "Two people's counts that differ by more than this are doubtful (from 6 apart on)", 25, Unit::percent,
     true, "judgement: twice the 12 per cent between two people in Crouch and Paton 2000"},
    {Limit::neighbours_least, "neighbours_least",
     "At least this many other pools must have been visited in the same days for a comparison", 5, Unit::none,
     false, "judgement: fewer pools do not show what is usual"},
    {Limit::neighbours_far, "neighbours_far",
     "A change this many times the other pools' own spread away from their median is doubtful", 4, Unit::none,
     false,
     "judgement: Iglewicz and Hoaglin 1993 name 3.5 for one set of numbers (from memory); a season compares "
     "many"},
}};

} // namespace

std::span<const LimitSpec> limits_catalogue() {
  return catalogue;
}

Limits Limits::defaults() {
  Limits limits;
  for (const LimitSpec& s : catalogue)
    limits.si[static_cast<std::size_t>(s.limit)] = limit_to_si(s, s.value, s.unit);
  return limits;
}

double limit_to_si(const LimitSpec& spec, double value, Unit unit) {
  if (unit == Unit::none)
    return value;
  return spec.difference ? difference_to_si(value, unit) : to_si(value, unit);
}

} // namespace wetspell
