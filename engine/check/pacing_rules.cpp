// Rules about lengths and widths that were paced.
#include "check/say.hpp"
#include "check/size_family.hpp"
#include "check/size_lines.hpp"
#include "quantity/print.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace wetspell {

namespace {

/// The first of the two lines that stands as a count.
Line counted_line(const Season& season, const Visit& visit) {
  return counted(season, visit, visit.length) ? Line::length : Line::width;
}

const Person* known_pacer(const Season& season, const Visit& visit) {
  const Ref walker = pacer(visit);
  return walker.known() ? &season.people[static_cast<std::size_t>(walker.index)] : nullptr;
}

Outcome tool_fits_counts(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!any_counted(view.season, visit) || !visit.size_tool.chosen()) {
    return Outcome::undecided;
  }
  if (visit.size_tool.is(SizeTool::paces)) {
    return Outcome::holds;
  }
  const Line line = counted_line(view.season, visit);
  doubts.push_back(doubt(Field::visit_size_tool,
                         fmt::format("The {} is given as {}, but it is said to be got by {}.", word(line),
                                     line_words(view, visit, typed(visit, line)),
                                     visit.size_tool.is(SizeTool::tape) ? "tape" : "eye"),
                         {field_of(line)},
                         {{Field::visit_size_tool,
                           Cell::of_text(std::string(
                               size_tool_words().words[static_cast<std::size_t>(SizeTool::paces)].label))}}));
  return Outcome::fails;
}

RuleSpec paces_by_tape() {
  return {"paces-by-tape",
          Family::size,
          Level::fix,
          Scope::visit,
          "A size that stands in paces or steps was paced",
          "Ask which is right, the count or the tool.",
          "Was it taped, paced or judged by eye?",
          "common practice, no source",
          {Field::visit_length, Field::visit_size_tool},
          &tool_fits_counts};
}

Outcome pacer_has_calibration(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!any_counted(view.season, visit)) {
    return Outcome::undecided;
  }
  const Season& season = view.season;
  const Person* walker = known_pacer(season, visit);
  if (walker == nullptr) {
    return Outcome::undecided;
  }
  if (season.paces[static_cast<std::size_t>(pacer(visit).index)]) {
    return Outcome::holds;
  }
  const Line line = counted_line(view.season, visit);
  doubts.push_back(
      doubt(field_of(line),
            fmt::format("{} of {:.40} cannot be turned into a length: no calibration walk of {:.40} can be "
                        "used.",
                        line_words(view, visit, typed(visit, line)), walker->code, walker->code),
            {Field::visit_person, Field::visit_paced_by, Field::person_course, Field::person_run_1}));
  return Outcome::fails;
}

RuleSpec paces_without_calibration() {
  return {"paces-without-calibration",
          Family::size,
          Level::ask,
          Scope::visit,
          "Whoever paces a pool has walked a taped course before",
          "Ask for two walks over a taped course of about 100 ft, and write the counts beside the person.",
          "Could you walk a taped course of about 100 ft (30 m) twice, and send its length and both counts?",
          "common practice, no source",
          {Field::visit_length, Field::person_code},
          &pacer_has_calibration};
}

Outcome pacer_was_there(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!visit.paced_by.known() || !(visit.person.known() || visit.second_person.known())) {
    return Outcome::undecided;
  }
  if (visit.paced_by == visit.person || visit.paced_by == visit.second_person) {
    return Outcome::holds;
  }
  if (visit.person.index == Ref::unknown || visit.second_person.index == Ref::unknown) {
    return Outcome::undecided; // a misspelt code may be the one who paced
  }
  const auto& people = view.season.people;
  const auto code = [&](Ref ref) {
    return ref.known() ? people[static_cast<std::size_t>(ref.index)].code : "";
  };
  const std::string there =
      visit.second_person.known() && visit.person.known()
          ? fmt::format("{:.40} and {:.40}", code(visit.person), code(visit.second_person))
          : fmt::format("{:.40}", code(visit.person) + code(visit.second_person));
  Doubt doubt{Field::visit_paced_by,
              fmt::format("The paces are said to be those of {:.40}, but the visit was made by {}.",
                          code(visit.paced_by), there),
              {},
              {},
              {Field::visit_person, Field::visit_second_person},
              {}};
  if (visit.person.known() && !visit.second_person.known()) {
    doubt.proposals.push_back({Field::visit_paced_by, Cell::of_text(code(visit.person))});
  }
  doubts.push_back(std::move(doubt));
  return Outcome::fails;
}

RuleSpec paced_by_someone_else() {
  return {"paced-by-someone-else",
          Family::size,
          Level::ask,
          Scope::visit,
          "Whoever paced a pool was at the visit",
          "Ask who walked; paces count with the calibration of whoever walked them.",
          "Who walked the paces?",
          "common practice, no source",
          {Field::visit_paced_by, Field::visit_person},
          &pacer_was_there};
}

Outcome pacer_said(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!any_counted(view.season, visit) || !(visit.paced_by.typed() || visit.person.typed())) {
    return Outcome::undecided;
  }
  if (visit.paced_by.typed() || !visit.second_person.typed()) {
    return Outcome::holds;
  }
  const Line line = counted_line(view.season, visit);
  doubts.push_back(
      doubt(Field::visit_paced_by,
            fmt::format("Two people were there and nobody is named for the {}; they count as the "
                        "first person's.",
                        line_words(view, visit, typed(visit, line))),
            {Field::visit_person, Field::visit_second_person, field_of(line)}));
  return Outcome::fails;
}

RuleSpec paces_of_nobody() {
  return {"paces-of-nobody",
          Family::size,
          Level::note,
          Scope::visit,
          "Paces name the person who walked them",
          "Write who walked; the length follows from that person's calibration.",
          "Who walked the paces?",
          "common practice, no source",
          {Field::visit_length, Field::visit_paced_by},
          &pacer_said};
}

// Within a fortnight and at the same depth a pool keeps its size: judgement.
constexpr double same_days = 14;
constexpr double same_depth = 0.05; // metres

Outcome tape_and_paces_agree(const SeasonView& view, const Visit& before, const Visit& now, Doubts& doubts) {
  Outcome outcome = Outcome::undecided;
  const bool one_taped = before.size_tool.is(SizeTool::tape) != now.size_tool.is(SizeTool::tape);
  if (!one_taped || now.date.si - before.date.si > same_days) {
    return outcome;
  }
  const DerivedVisit& then = view.derived_of(before);
  const DerivedVisit& here = view.derived_of(now);
  if (!then.depth || !here.depth || std::abs(then.depth->value - here.depth->value) > same_depth) {
    return outcome;
  }
  const double most = view.season.limits[Limit::tape_against_paces];
  for (const Line line : {Line::length, Line::width}) {
    const bool paced_then = counted(view.season, before, typed(before, line));
    const bool paced_now = counted(view.season, now, typed(now, line));
    const auto& a = metres(then, line);
    const auto& b = metres(here, line);
    const bool taped = (paced_then ? now : before).size_tool.is(SizeTool::tape);
    if (paced_then == paced_now || !taped || !a || !b || !(a->value > 0) || !(b->value > 0)) {
      continue;
    }
    const double tape = paced_then ? b->value : a->value;
    const double paces = paced_then ? a->value : b->value;
    if (std::abs(paces - tape) <= most * tape) {
      outcome = outcome == Outcome::fails ? outcome : Outcome::holds;
      continue;
    }
    doubts.push_back(
        {field_of(line),
         fmt::format("The {} is {} by {} and was {} by {} on {}; {:.0f} per cent apart at the same depth.",
                     word(line), say(view, Kind::length, b->value), paced_now ? "paces" : "tape",
                     say(view, Kind::length, a->value), paced_then ? "paces" : "tape", day_words(before.date),
                     100 * std::abs(paces - tape) / tape),
         {},
         {},
         {Field::visit_depth, Field::visit_size_tool, Field::visit_paced_by},
         view.index(before)});
    outcome = Outcome::fails;
  }
  return outcome;
}

RuleSpec tape_against_paces() {
  return {"tape-against-paces",
          Family::size,
          Level::ask,
          Scope::pool_over_time,
          "A pool that is taped once and paced soon after at the same depth has the same size",
          "Ask both people how they measured; the tape counts until then.",
          "How was it measured, and from where to where?",
          "judgement: pacing in woods errs by 2 to 5 per cent; brush and soft ground double it",
          {Field::visit_length, Field::visit_size_tool, Field::visit_depth},
          &tape_and_paces_agree};
}

} // namespace

std::vector<RuleSpec> pacing_rules() {
  return {paces_by_tape(), paced_by_someone_else(), paces_without_calibration(), paces_of_nobody(),
          tape_against_paces()};
}

} // namespace wetspell
