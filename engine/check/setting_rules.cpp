// Rules about a pool's setting: what joins it to other water, and how much of its edge was seen.
#include "check/say.hpp"
#include "check/setting_family.hpp"
#include "quantity/print.hpp"

#include <fmt/format.h>

#include <array>

namespace wetspell {

namespace {

struct SettingField {
  Field field;
  Choice Visit::*member;
};
constexpr std::array setting_fields{
    SettingField{Field::visit_isolated, &Visit::isolated},
    SettingField{Field::visit_inlet, &Visit::inlet},
    SettingField{Field::visit_outlet, &Visit::outlet},
    SettingField{Field::visit_joined, &Visit::joined},
    SettingField{Field::visit_edge_seen, &Visit::edge_seen},
};

/// "isolated" beside a channel: a dry one carries nothing and does not join the pool to other water.
template <Field field, Choice Visit::*channel>
Outcome isolated_or_flowing(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  const Choice said = visit.*channel;
  if (!visit.isolated.chosen() || !said.chosen()) {
    return Outcome::undecided;
  }
  if (!visit.isolated.is(YesNo::yes) || !said.is(Channel::flowing)) {
    return Outcome::holds;
  }
  doubts.push_back(
      doubt(field,
            fmt::format("The pool is called isolated ({}), but its {} is said to be {}.",
                        as_typed(view, Field::visit_isolated, visit.row),
                        field == Field::visit_inlet ? "inlet" : "outlet", as_typed(view, field, visit.row)),
            {Field::visit_isolated}));
  return Outcome::fails;
}

RuleSpec isolated_yet_inlet_flows() {
  return {"isolated-yet-inlet-flows",
          Family::setting,
          Level::ask,
          Scope::visit,
          "An isolated pool has no inlet that flows",
          "Ask whether water came in by a channel, or over the ground after rain.",
          "Did water come in by a channel, or over the ground after rain?",
          "common practice, no source",
          {Field::visit_isolated, Field::visit_inlet},
          &isolated_or_flowing<Field::visit_inlet, &Visit::inlet>};
}

RuleSpec isolated_yet_outlet_flows() {
  return {"isolated-yet-outlet-flows",
          Family::setting,
          Level::ask,
          Scope::visit,
          "An isolated pool has no outlet that flows",
          "Ask whether water left by a channel, and where it went.",
          "Did water leave by a channel, and where did it go?",
          "common practice, no source",
          {Field::visit_isolated, Field::visit_outlet},
          &isolated_or_flowing<Field::visit_outlet, &Visit::outlet>};
}

Outcome isolated_or_joined(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!visit.isolated.chosen() || !visit.joined.chosen()) {
    return Outcome::undecided;
  }
  if (!visit.isolated.is(YesNo::yes) || visit.joined.is(Joined::nothing)) {
    return Outcome::holds;
  }
  doubts.push_back(doubt(Field::visit_isolated,
                         fmt::format("The pool is called isolated ({}), but joined to {}.",
                                     as_typed(view, Field::visit_isolated, visit.row),
                                     as_typed(view, Field::visit_joined, visit.row)),
                         {Field::visit_joined}));
  return Outcome::fails;
}

RuleSpec isolated_yet_joined() {
  return {"isolated-yet-joined",
          Family::setting,
          Level::fix,
          Scope::visit,
          "An isolated pool is joined to no other water",
          "Ask whether the waters touched on that day, and correct one of the two.",
          "Did the waters touch on that day?",
          "common practice, no source",
          {Field::visit_isolated, Field::visit_joined},
          &isolated_or_joined};
}

/// Isolated was said, and this much of the edge had been seen.
template <bool most> Outcome edge_was_seen(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!visit.isolated.chosen() || !visit.edge_seen.chosen()) {
    return Outcome::undecided;
  }
  const bool too_little = visit.edge_seen.is(EdgeSeen::half) || visit.edge_seen.is(EdgeSeen::less);
  const bool in_question = most ? visit.edge_seen.is(EdgeSeen::most) : too_little;
  if (!visit.isolated.is(YesNo::yes) || !in_question) {
    return Outcome::holds;
  }
  doubts.push_back(doubt(Field::visit_isolated,
                         fmt::format("The pool is called isolated ({}), but of its edge only {} was seen.",
                                     as_typed(view, Field::visit_isolated, visit.row),
                                     as_typed(view, Field::visit_edge_seen, visit.row)),
                         {Field::visit_edge_seen}));
  return Outcome::fails;
}

RuleSpec isolated_by_half_an_edge() {
  return {
      "isolated-by-half-an-edge",
      Family::setting,
      Level::ask,
      Scope::visit,
      "Only somebody who saw the edge can say that a pool is isolated",
      "Ask whether the rest of the edge was seen on another visit; otherwise choose that it cannot be told.",
      "Was the rest of the edge seen too, on this visit or on another?",
      "common practice, no source",
      {Field::visit_isolated, Field::visit_edge_seen},
      &edge_was_seen<false>};
}

RuleSpec isolated_by_most_of_the_edge() {
  return {"isolated-by-most-of-the-edge",
          Family::setting,
          Level::note,
          Scope::visit,
          "Whoever calls a pool isolated has seen the whole of its edge",
          "Walk the rest of the edge on the next visit.",
          "Could you walk the rest of the edge on your next visit?",
          "common practice, no source",
          {Field::visit_isolated, Field::visit_edge_seen},
          &edge_was_seen<true>};
}

Outcome joined_by_something(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!visit.isolated.chosen() || !visit.inlet.chosen() || !visit.outlet.chosen() || !visit.joined.chosen()) {
    return Outcome::undecided;
  }
  const bool nothing =
      visit.inlet.is(Channel::none) && visit.outlet.is(Channel::none) && visit.joined.is(Joined::nothing);
  if (!visit.isolated.is(YesNo::no) || !nothing) {
    return Outcome::holds;
  }
  doubts.push_back(doubt(
      Field::visit_isolated,
      fmt::format(
          "Isolated is answered with {}, but inlet {}, outlet {} and joined to {} leave "
          "nothing that joins the pool.",
          as_typed(view, Field::visit_isolated, visit.row), as_typed(view, Field::visit_inlet, visit.row),
          as_typed(view, Field::visit_outlet, visit.row), as_typed(view, Field::visit_joined, visit.row)),
      {Field::visit_inlet, Field::visit_outlet, Field::visit_joined},
      {{Field::visit_isolated,
        Cell::of_text(std::string(yes_no_words().words[static_cast<std::size_t>(YesNo::yes)].label))}}));
  return Outcome::fails;
}

RuleSpec joined_by_nothing() {
  return {"joined-by-nothing",
          Family::setting,
          Level::ask,
          Scope::visit,
          "A pool that is not isolated has an inlet, an outlet or other water that touches it",
          "Ask what joins the pool to other water.",
          "What joined the pool to other water?",
          "common practice, no source",
          {Field::visit_isolated, Field::visit_inlet, Field::visit_outlet, Field::visit_joined},
          &joined_by_something};
}

Outcome stream_has_channel(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!visit.joined.chosen() || !visit.inlet.chosen() || !visit.outlet.chosen()) {
    return Outcome::undecided;
  }
  const bool channelled = visit.joined.is(Joined::stream) || visit.joined.is(Joined::ditch);
  if (!channelled || !visit.inlet.is(Channel::none) || !visit.outlet.is(Channel::none)) {
    return Outcome::holds;
  }
  doubts.push_back(
      doubt(Field::visit_joined,
            fmt::format("The pool is joined to {}, but inlet {} and outlet {} leave no way for it.",
                        as_typed(view, Field::visit_joined, visit.row),
                        as_typed(view, Field::visit_inlet, visit.row),
                        as_typed(view, Field::visit_outlet, visit.row)),
            {Field::visit_inlet, Field::visit_outlet}));
  return Outcome::fails;
}

RuleSpec stream_without_channel() {
  return {"stream-without-channel",
          Family::setting,
          Level::ask,
          Scope::visit,
          "A pool that is joined to a stream or a ditch has an inlet or an outlet",
          "Ask where the stream meets the pool, and choose its inlet or outlet.",
          "Where does the stream or ditch meet the pool, and does it come in or go out there?",
          "common practice, no source",
          {Field::visit_joined, Field::visit_inlet, Field::visit_outlet},
          &stream_has_channel};
}

Outcome setting_whole(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  const SettingField* given = nullptr;
  const SettingField* lacking = nullptr;
  for (const SettingField& one : setting_fields) {
    if ((visit.*one.member).typed()) {
      given = given == nullptr ? &one : given;
    } else if (view.season.has(one.field)) {
      lacking = lacking == nullptr ? &one : lacking;
    }
  }
  if (given == nullptr) {
    return Outcome::undecided;
  }
  if (lacking == nullptr) {
    return Outcome::holds;
  }
  doubts.push_back(doubt(lacking->field,
                         fmt::format("{} is given as {}, but {} is blank.", heading(given->field),
                                     as_typed(view, given->field, visit.row), heading(lacking->field)),
                         {given->field}));
  return Outcome::fails;
}

RuleSpec half_a_setting() {
  return {"half-a-setting",
          Family::setting,
          Level::note,
          Scope::visit,
          "A visit that says anything about the setting says all of it",
          "Look on the field sheet; where nothing stands choose that it cannot be told.",
          "What was seen of it? If it could not be told, please say so.",
          "common practice, no source",
          {Field::visit_isolated},
          &setting_whole};
}

} // namespace

std::span<const RuleSpec> setting_rules() {
  static const std::vector<RuleSpec> all = [] {
    std::vector<RuleSpec> list{isolated_yet_joined(),          isolated_yet_inlet_flows(),
                               isolated_yet_outlet_flows(),    isolated_by_half_an_edge(),
                               isolated_by_most_of_the_edge(), joined_by_nothing(),
                               stream_without_channel(),       half_a_setting()};
    const auto over_time = setting_change_rules();
    list.insert(list.end(), over_time.begin(), over_time.end());
    return list;
  }();
  return all;
}

} // namespace wetspell
