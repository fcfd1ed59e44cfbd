// Rules about length and width as they stand in one visit; joins the parts of the family.
#include "check/say.hpp"
#include "check/size_family.hpp"
#include "check/size_lines.hpp"
#include "quantity/print.hpp"

#include <fmt/format.h>

namespace wetspell {

namespace {

std::vector<Field> both_lines() {
  return {Field::visit_length, Field::visit_width};
}

Outcome size_readable(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  for (const Line line : {Line::length, Line::width}) {
    const Quantity& text_read = typed(visit, line);
    if (text_read.status == Status::bad) {
      doubts.push_back(doubt(field_of(line),
                             fmt::format("The {} {} cannot be read: {}.", word(line),
                                         as_typed(view, field_of(line), visit.row), text(text_read.reason))));
    }
  }
  if (!doubts.empty()) {
    return Outcome::fails;
  }
  return visit.length.typed() || visit.width.typed() ? Outcome::holds : Outcome::undecided;
}

RuleSpec size_unreadable() {
  return {"size-unreadable",
          Family::size,
          Level::fix,
          Scope::reading,
          "A length or width can be read as a number of feet, metres, yards, paces or steps",
          "Look at the field sheet and write one number, with its unit where it is not that of the column.",
          "What was measured, as one number with its unit?",
          "common practice, no source",
          {Field::visit_length},
          &size_readable};
}

Outcome width_within_length(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  const bool counts = counted(view.season, visit, visit.length) && counted(view.season, visit, visit.width);
  if (!counts && (counted(view.season, visit, visit.length) || counted(view.season, visit, visit.width))) {
    const DerivedVisit& derived = view.derived_of(visit);
    if (!derived.length || !derived.width) {
      return Outcome::undecided;
    }
    if (derived.width->value <= derived.length->value) {
      return Outcome::holds;
    }
  } else {
    // Two counts of one walker compare as they stand, whether or not their pace is known.
    const double along = counts ? visit.length.written : visit.length.si;
    const double across = counts ? visit.width.written : visit.width.si;
    const bool alike = !counts || visit.length.status == visit.width.status;
    if (!alike || !(visit.length.has_value() || counts) || !(visit.width.has_value() || counts)) {
      return Outcome::undecided;
    }
    if (across <= along) {
      return Outcome::holds;
    }
  }
  const Season& season = view.season;
  doubts.push_back(
      doubt(Field::visit_width,
            fmt::format("The width {} is more than the length {}, but the length is the longest line.",
                        line_words(view, visit, visit.width), line_words(view, visit, visit.length)),
            {Field::visit_length, Field::visit_size_tool, Field::visit_paced_by},
            {{Field::visit_length, season.cell(Field::visit_width, visit.row)},
             {Field::visit_width, season.cell(Field::visit_length, visit.row)}}));
  return Outcome::fails;
}

RuleSpec wider_than_long() {
  return {"wider-than-long",
          Family::size,
          Level::fix,
          Scope::visit,
          "The width of a pool is not more than its length",
          "Swap the two numbers, unless the field sheet says otherwise.",
          "Which of the two is the longest line over the water, and which the width across it?",
          "common practice, no source",
          both_lines(),
          &width_within_length};
}

Outcome dry_without_size(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!visit.water.chosen()) {
    return Outcome::undecided;
  }
  if (!visit.water.is(Water::none)) {
    return Outcome::holds;
  }
  for (const Line line : {Line::length, Line::width}) {
    const Quantity& read = typed(visit, line);
    if (read.written > 0) {
      doubts.push_back(
          doubt(field_of(line),
                fmt::format("The pool had no standing water, but its {} is given as {}.", word(line),
                            read.has_value() || counted(view.season, visit, read)
                                ? line_words(view, visit, read)
                                : as_typed(view, field_of(line), visit.row)),
                {Field::visit_water}));
      return Outcome::fails;
    }
  }
  return Outcome::holds;
}

RuleSpec size_of_dry_pool() {
  return {"size-of-dry-pool",
          Family::size,
          Level::ask,
          Scope::visit,
          "A pool without standing water has no length and no width",
          "Ask whether the water was there, or whether the size is that of the empty basin.",
          "Was there water, or is this the size of the empty basin?",
          "common practice, no source",
          {Field::visit_water, Field::visit_length},
          &dry_without_size};
}

Outcome size_over_nothing(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!visit.water.is(Water::standing) || !(visit.length.has_value() || visit.width.has_value())) {
    return Outcome::undecided;
  }
  for (const Line line : {Line::length, Line::width}) {
    const Quantity& read = typed(visit, line);
    if (read.has_value() && read.written <= 0) {
      doubts.push_back(doubt(field_of(line),
                             fmt::format("There was standing water, but its {} is given as {}.", word(line),
                                         line_words(view, visit, read)),
                             {Field::visit_water}));
    }
  }
  return doubts.empty() ? Outcome::holds : Outcome::fails;
}

RuleSpec size_not_over_nothing() {
  return {"water-without-size",
          Family::size,
          Level::ask,
          Scope::visit,
          "Standing water is longer and wider than nothing",
          "Leave the cell blank where nothing was measured; a 0 is read as a measurement.",
          "What was measured? If nothing was, please say so.",
          "common practice, no source",
          {Field::visit_water, Field::visit_length, Field::visit_width},
          &size_over_nothing};
}

Outcome both_or_none(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!visit.length.typed() && !visit.width.typed()) {
    return Outcome::undecided;
  }
  if (visit.length.typed() && visit.width.typed()) {
    return Outcome::holds;
  }
  const Line there = visit.length.typed() ? Line::length : Line::width;
  doubts.push_back(
      doubt(field_of(other(there)),
            fmt::format("The {} is given as {}, the {} is blank; without both there is no area.", word(there),
                        as_typed(view, field_of(there), visit.row), word(other(there))),
            {field_of(there)}));
  return Outcome::fails;
}

RuleSpec half_a_size() {
  return {"half-a-size",
          Family::size,
          Level::note,
          Scope::visit,
          "Length and width are measured together",
          "Look for the other line on the field sheet.",
          "How long was the other line? If it was not measured, please say so.",
          "common practice, no source",
          both_lines(),
          &both_or_none};
}

Outcome tool_said(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  const Line line = visit.length.typed() ? Line::length : Line::width;
  const Quantity& read = typed(visit, line);
  if (counted(view.season, visit, read) || visit.size_tool.chosen()) {
    return Outcome::holds;
  }
  if (!read.has_value() || visit.size_tool.typed()) {
    return Outcome::undecided;
  }
  doubts.push_back(doubt(Field::visit_size_tool,
                         fmt::format("The {} {} is given without saying how it was measured.", word(line),
                                     line_words(view, visit, read)),
                         {field_of(line)}));
  return Outcome::fails;
}

RuleSpec size_without_tool() {
  return {"size-without-tool",
          Family::size,
          Level::note,
          Scope::visit,
          "A size says whether it was taped, paced or judged by eye",
          "Choose how the size was measured.",
          "Was it taped, paced or judged by eye?",
          "common practice, no source",
          {Field::visit_length, Field::visit_size_tool},
          &tool_said};
}

Outcome length_possible(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  const auto& length = view.derived_of(visit).length;
  if (!length) {
    return Outcome::undecided;
  }
  const double most = view.season.limits[Limit::length_most];
  if (length->value <= most) {
    return Outcome::holds;
  }
  doubts.push_back(
      doubt(Field::visit_length,
            fmt::format("A length of {} is more than the {} beyond which a seasonal pool is doubtful.",
                        say(view, Kind::length, length->value), say(view, Kind::length, most)),
            {Field::visit_size_tool, Field::visit_paced_by}));
  return Outcome::fails;
}

RuleSpec length_beyond_pools() {
  return {"length-beyond-pools",
          Family::size,
          Level::ask,
          Scope::reading,
          "A seasonal pool is not longer than the limit for its length",
          "Ask for the length and the unit in which it was measured.",
          "How long was the water, and in which unit was it measured?",
          "judgement: a little over the width of a round pool of 41,361 m², the largest in Dryad 0cfxpnw3r",
          {Field::visit_length},
          &length_possible};
}

/// "The length 40 ft is more than ... ": over what the pool ever was, plus a slack.
template <Line line> Outcome within_edge(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  const Season& season = view.season;
  const auto& size = metres(view.derived_of(visit), line);
  if (!size || !visit.pool.known()) {
    return Outcome::undecided;
  }
  const Quantity& edge = fullest(season.pools[static_cast<std::size_t>(visit.pool.index)], line);
  if (!edge.has_value() || !(edge.si > 0)) {
    return Outcome::undecided;
  }
  if (size->value <= edge.si * (1 + season.limits[Limit::edge_slack])) {
    return Outcome::holds;
  }
  doubts.push_back(
      doubt(field_of(line),
            fmt::format("The {} {} is more than this pool ever had: {} at its fullest.", word(line),
                        say(view, Kind::length, size->value), say(view, Kind::length, edge.si)),
            {Field::visit_pool, Field::visit_size_tool, Field::visit_paced_by,
             line == Line::length ? Field::pool_longest : Field::pool_widest}));
  return Outcome::fails;
}

RuleSpec longer_than_ever() {
  return {"longer-than-ever",
          Family::size,
          Level::ask,
          Scope::visit,
          "The water is not longer than the pool at its fullest",
          "Ask for the length; where it is right, correct the pool's greatest length.",
          "Was the water this long, and in which unit was it measured?",
          "judgement: two people choose the longest line a little differently, a tenth is left for that",
          {Field::visit_pool, Field::visit_length, Field::pool_longest},
          &within_edge<Line::length>};
}

RuleSpec wider_than_ever() {
  return {"wider-than-ever",
          Family::size,
          Level::ask,
          Scope::visit,
          "The water is not wider than the pool at its fullest",
          "Ask for the width; where it is right, correct the pool's greatest width.",
          "Was the water this wide, and in which unit was it measured?",
          "judgement: two people choose the widest line a little differently, a tenth is left for that",
          {Field::visit_pool, Field::visit_width, Field::pool_widest},
          &within_edge<Line::width>};
}

Outcome area_plausible(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  const auto& area = view.derived_of(visit).area;
  if (!area || !(area->value > 0)) {
    return Outcome::undecided;
  }
  const Season& season = view.season;
  const double least = season.limits[Limit::area_least];
  const double most = season.limits[Limit::area_most];
  if (area->value >= least && area->value <= most) {
    return Outcome::holds;
  }
  const bool small = area->value < least;
  const auto [made, limit] = print_apart(area->value, small ? least : most, season.settings.area);
  doubts.push_back(
      doubt(Field::visit_length,
            fmt::format("Length and width make an area of {}, {} than the {} that a pool would have.", made,
                        small ? "less" : "more", limit),
            {Field::visit_width, Field::visit_size_tool, Field::visit_paced_by}));
  return Outcome::fails;
}

RuleSpec area_beyond_pools() {
  return {
      "area-beyond-pools",
      Family::size,
      Level::ask,
      Scope::visit,
      "Length and width make an area that a seasonal pool can have",
      "Ask for both lines and the unit in which they were measured.",
      "How long and how wide was the water, and in which unit was it measured?",
      "Dryad 0cfxpnw3r: 64 wetlands that dry up, up to 41,361 m²; the lower limit is judgement: a pool that "
      "dries passes through every size down to a puddle",
      both_lines(),
      &area_plausible};
}

// Judgement: two people choose and measure a line a little differently, and a stick is off by an inch.
constexpr double much_longer = 1.3;
constexpr double still_water = 0.025; // metres

Outcome size_goes_with_water(const SeasonView& view, const Visit& before, const Visit& now, Doubts& doubts) {
  const DerivedVisit& then = view.derived_of(before);
  const DerivedVisit& here = view.derived_of(now);
  const bool judged = before.size_tool.is(SizeTool::eye) || now.size_tool.is(SizeTool::eye);
  if (judged || !then.depth || !here.depth) {
    return Outcome::undecided;
  }
  const double rise = here.depth->value - then.depth->value;
  Outcome outcome = Outcome::undecided;
  for (const Line line : {Line::length, Line::width}) {
    const auto& a = metres(then, line);
    const auto& b = metres(here, line);
    if (!a || !b || !(a->value > 0) || !(b->value > 0)) {
      continue;
    }
    const bool grew = b->value > a->value * much_longer;
    const bool shrank = a->value > b->value * much_longer;
    if (!(grew && rise <= still_water) && !(shrank && rise >= -still_water)) {
      outcome = outcome == Outcome::fails ? outcome : Outcome::holds;
      continue;
    }
    Doubt found =
        doubt(field_of(line),
              fmt::format("The {} went from {} to {} since {}, but the depth from {} to {}.", word(line),
                          say(view, Kind::length, a->value), say(view, Kind::length, b->value),
                          day_words(before.date), say(view, Kind::depth, then.depth->value),
                          say(view, Kind::depth, here.depth->value)),
              {Field::visit_pool, Field::visit_depth, Field::visit_size_tool, Field::visit_paced_by});
    found.other_row = view.index(before);
    doubts.push_back(std::move(found));
    outcome = Outcome::fails;
  }
  return outcome;
}

RuleSpec size_against_water() {
  return {"size-against-water",
          Family::size,
          Level::ask,
          Scope::pool_over_time,
          "A pool does not grow while its water falls, nor shrink while it rises",
          "Ask how and where the line was measured.",
          "How was it measured, and from where to where?",
          "judgement: the edge of the water follows its depth; three tenths are left for two people's lines",
          {Field::visit_pool, Field::visit_date, Field::visit_depth, Field::visit_length},
          &size_goes_with_water};
}

} // namespace

std::span<const RuleSpec> size_rules() {
  // The more specific stand first: what they doubt, the later ones leave alone.
  static const std::vector<RuleSpec> all = [] {
    std::vector<RuleSpec> list{size_unreadable()};
    for (const auto& part : {calibration_rules(), size_slip_rules()}) {
      list.insert(list.end(), part.begin(), part.end());
    }
    for (const RuleSpec& rule :
         {wider_than_long(), size_of_dry_pool(), size_not_over_nothing(), half_a_size(), size_without_tool(),
          length_beyond_pools(), longer_than_ever(), wider_than_ever(), area_beyond_pools()}) {
      list.push_back(rule);
    }
    const auto paced = pacing_rules();
    list.insert(list.end(), paced.begin(), paced.end());
    list.push_back(size_against_water());
    return list;
  }();
  return all;
}

} // namespace wetspell
