// Rules about a setting that changes: a pool's channels do not come and go within a season.
#include "check/say.hpp"
#include "check/setting_family.hpp"
#include "quantity/print.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace wetspell {

namespace {

template <Field field, Choice Visit::*channel>
Outcome channel_stays(const SeasonView& view, const Visit& before, const Visit& now, Doubts& doubts) {
  const Choice then = before.*channel;
  const Choice here = now.*channel;
  if (!then.chosen() || !here.chosen()) {
    return Outcome::undecided;
  }
  if (then.is(Channel::none) == here.is(Channel::none)) {
    return Outcome::holds;
  }
  doubts.push_back(
      {field,
       fmt::format("The {} is said to be {}, but was {} on {}; a channel stays where it is.",
                   field == Field::visit_inlet ? "inlet" : "outlet", as_typed(view, field, now.row),
                   as_typed(view, field, before.row), print_date(before.date.si)),
       {},
       {},
       {Field::visit_pool},
       view.index(before)});
  return Outcome::fails;
}

RuleSpec inlet_comes_and_goes() {
  return {"inlet-comes-and-goes",
          Family::setting,
          Level::ask,
          Scope::pool_over_time,
          "A pool has an inlet channel at all visits or at none, dry or flowing",
          "Ask both visitors; a channel without water is a dry channel, not none.",
          "Is there a channel by which water comes in, even if it is dry at times?",
          "common practice, no source",
          {Field::visit_pool, Field::visit_date, Field::visit_inlet},
          &channel_stays<Field::visit_inlet, &Visit::inlet>};
}

RuleSpec outlet_comes_and_goes() {
  return {"outlet-comes-and-goes",
          Family::setting,
          Level::ask,
          Scope::pool_over_time,
          "A pool has an outlet channel at all visits or at none, dry or flowing",
          "Ask both visitors; a channel without water is a dry channel, not none.",
          "Is there a channel by which water goes out, even if it is dry at times?",
          "common practice, no source",
          {Field::visit_pool, Field::visit_date, Field::visit_outlet},
          &channel_stays<Field::visit_outlet, &Visit::outlet>};
}

/// Whether something that joins a pool to other water was seen otherwise on the two visits.
bool joins_changed(const Visit& before, const Visit& now) {
  const auto changed = [](Choice a, Choice b) { return a.chosen() && b.chosen() && a.index != b.index; };
  return changed(before.inlet, now.inlet) || changed(before.outlet, now.outlet) ||
         changed(before.joined, now.joined);
}

Outcome isolated_stays(const SeasonView& view, const Visit& before, const Visit& now, Doubts& doubts) {
  if (!before.isolated.chosen() || !now.isolated.chosen()) {
    return Outcome::undecided;
  }
  if (before.isolated.index == now.isolated.index || joins_changed(before, now)) {
    return Outcome::holds;
  }
  doubts.push_back(
      {Field::visit_isolated,
       fmt::format("Isolated is answered with {}, but was {} on {}, and nothing else about the setting "
                   "has changed.",
                   as_typed(view, Field::visit_isolated, now.row),
                   as_typed(view, Field::visit_isolated, before.row), print_date(before.date.si)),
       {},
       {},
       {Field::visit_pool, Field::visit_inlet, Field::visit_outlet, Field::visit_joined},
       view.index(before)});
  return Outcome::fails;
}

RuleSpec isolated_now_and_then() {
  return {"isolated-now-and-then",
          Family::setting,
          Level::ask,
          Scope::pool_over_time,
          "A pool stays isolated, or not, unless an inlet, an outlet or other water changes too",
          "Ask both visitors what joins the pool to other water.",
          "What, if anything, joined the pool to other water on that day?",
          "common practice, no source",
          {Field::visit_pool, Field::visit_date, Field::visit_isolated},
          &isolated_stays};
}

Outcome isolated_as_usual(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!visit.isolated.chosen() || !visit.pool.known()) {
    return Outcome::undecided;
  }
  const Pool& pool = view.season.pools[static_cast<std::size_t>(visit.pool.index)];
  if (!pool.isolated.chosen()) {
    return Outcome::undecided;
  }
  if (pool.isolated.index == visit.isolated.index) {
    return Outcome::holds;
  }
  doubts.push_back(doubt(Field::visit_isolated,
                         fmt::format("Isolated is answered with {}; of {:.40} the table of pools says {}.",
                                     as_typed(view, Field::visit_isolated, visit.row), pool.code,
                                     as_typed(view, Field::pool_isolated, pool.row)),
                         {Field::pool_isolated}));
  return Outcome::fails;
}

RuleSpec isolated_unlike_usual() {
  return {"isolated-unlike-usual",
          Family::setting,
          Level::note,
          Scope::visit,
          "A pool is isolated, or not, as the table of pools says",
          "Look whether high water joined the pool that day; otherwise correct one of the two.",
          "What, if anything, joined the pool to other water on that day?",
          "common practice, no source",
          {Field::visit_isolated, Field::pool_isolated},
          &isolated_as_usual};
}

Outcome setting_given(const SeasonView& view, const Pool& pool, Doubts& doubts) {
  const auto at = static_cast<std::size_t>(&pool - view.season.pools.data());
  const auto& visits = view.pool_visits[at];
  if (visits.empty()) {
    return Outcome::undecided;
  }
  const bool given = std::any_of(visits.begin(), visits.end(), [&](std::uint32_t index) {
    const Visit& visit = view.visit(index);
    return visit.isolated.typed() || visit.inlet.typed() || visit.outlet.typed() || visit.joined.typed();
  });
  if (given) {
    return Outcome::holds;
  }
  doubts.push_back(
      doubt(Field::pool_code,
            fmt::format("{:.40} was visited {}, and nothing was said about what joins it to other water.",
                        pool.code, visits.size() == 1 ? "1 time" : fmt::format("{} times", visits.size()))));
  return Outcome::fails;
}

RuleSpec setting_never_given() {
  return {"setting-never-given",
          Family::setting,
          Level::note,
          Scope::pool_over_time,
          "What joins a pool to other water is said at least once in a season",
          "Ask one of the visitors, or look on the next visit.",
          "What, if anything, joins the pool to other water? The next visit is soon enough to look.",
          "common practice, no source",
          {Field::pool_code, Field::visit_pool, Field::visit_isolated},
          &setting_given};
}

} // namespace

std::vector<RuleSpec> setting_change_rules() {
  return {inlet_comes_and_goes(), outlet_comes_and_goes(), isolated_now_and_then(), isolated_unlike_usual(),
          setting_never_given()};
}

} // namespace wetspell
