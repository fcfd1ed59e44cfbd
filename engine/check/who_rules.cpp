// Pools, people and chosen words: is what stands there known?
#include "check/identity_family.hpp"
#include "check/say.hpp"

#include <fmt/format.h>

#include <array>

namespace wetspell {

namespace {

bool error_cell(const SeasonView& view, Field field, std::uint32_t row) {
  return view.season.cell(field, row).kind() == CellKind::error;
}

Outcome pool_missing(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (visit.pool.known())
    return Outcome::holds;
  if (visit.pool.typed())
    return error_cell(view, Field::visit_pool, visit.row) ? Outcome::undecided : Outcome::holds;
  const std::string day =
      visit.date.typed() ? "dated " + as_typed(view, Field::visit_date, visit.row) : "without a date";
  doubts.push_back(doubt(Field::visit_pool, fmt::format("The visit {} names no pool.", day),
                         {Field::visit_date, Field::visit_person}));
  return Outcome::fails;
}

Outcome pool_unknown(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (visit.pool.known())
    return Outcome::holds;
  if (!visit.pool.typed())
    return Outcome::undecided;
  Doubt found = doubt(Field::visit_pool, fmt::format("Pool {} is not in the table of pools.",
                                                     as_typed(view, Field::visit_pool, visit.row)));
  if (const auto near = view.pool_codes.find(to_text(view.season.cell(Field::visit_pool, visit.row)))) {
    const std::string& code = view.season.pools[*near].code;
    found.message.back() = ';';
    found.message += fmt::format(" the nearest code is {}.", code);
    found.proposals.push_back({Field::visit_pool, Cell::of_text(code)});
  }
  doubts.push_back(std::move(found));
  return Outcome::fails;
}

Outcome person_missing(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (visit.person.known())
    return Outcome::holds;
  if (visit.person.typed())
    return error_cell(view, Field::visit_person, visit.row) ? Outcome::undecided : Outcome::holds;
  doubts.push_back(doubt(Field::visit_person,
                         fmt::format("The visit to pool {} names no person, so nobody can be asked about it.",
                                     as_typed(view, Field::visit_pool, visit.row)),
                         {Field::visit_pool, Field::visit_date}));
  return Outcome::fails;
}

void unknown_person(const SeasonView& view, const Ref& ref, Field field, std::uint32_t row, Doubts& doubts) {
  if (ref.known() || !ref.typed())
    return;
  Doubt found = doubt(
      field, fmt::format("{} {} is not in the table of people.", heading(field), as_typed(view, field, row)));
  if (const auto near = view.person_codes.find(to_text(view.season.cell(field, row)))) {
    const std::string& code = view.season.people[*near / 2].code;
    found.message.back() = ';';
    found.message += fmt::format(" the nearest is {}.", code);
    found.proposals.push_back({field, Cell::of_text(code)});
  }
  doubts.push_back(std::move(found));
}

Outcome person_unknown(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  unknown_person(view, visit.person, Field::visit_person, visit.row, doubts);
  unknown_person(view, visit.second_person, Field::visit_second_person, visit.row, doubts);
  unknown_person(view, visit.paced_by, Field::visit_paced_by, visit.row, doubts);
  if (!doubts.empty())
    return Outcome::fails;
  return visit.person.typed() || visit.second_person.typed() || visit.paced_by.typed() ? Outcome::holds
                                                                                       : Outcome::undecided;
}

Outcome second_is_first(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!visit.person.known())
    return Outcome::undecided;
  if (!visit.second_person.known())
    return visit.second_person.typed() ? Outcome::undecided : Outcome::holds;
  if (visit.person != visit.second_person)
    return Outcome::holds;
  doubts.push_back(doubt(Field::visit_second_person,
                         fmt::format("Second person {} is the first person too.",
                                     as_typed(view, Field::visit_second_person, visit.row)),
                         {Field::visit_person}));
  return Outcome::fails;
}

/// The words that the field allows, as they stand in the season.
std::vector<std::string> allowed_words(const SeasonView& view, Field field) {
  std::vector<std::string> words;
  if (const ChoiceList* list = spec(field).choices)
    for (const ChoiceWord& word : list->words)
      words.emplace_back(word.label);
  const bool fill = spec(field).type == FieldType::fill_class;
  if (fill || spec(field).type == FieldType::depth_class)
    for (const ClassRow& row : (fill ? view.season.fill_classes : view.season.depth_classes).rows)
      words.push_back(row.label);
  return words;
}

void word_not_known(const SeasonView& view, Field field, std::uint32_t row, Doubts& doubts) {
  NearestWord known;
  const auto words = allowed_words(view, field);
  std::string listed;
  for (const std::string& word : words) {
    known.add(word);
    listed += (listed.empty() ? "" : ", ") + word;
  }
  Doubt found = doubt(field, {});
  if (const auto near = known.find(to_text(view.season.cell(field, row)))) {
    found.message = fmt::format("{} {} is not one of its words; the nearest is \"{}\".", heading(field),
                                as_typed(view, field, row), words[*near]);
    found.proposals.push_back({field, Cell::of_text(words[*near])});
  } else {
    found.message = fmt::format("{} {} is not one of its words.", heading(field), as_typed(view, field, row));
    found.advice = fmt::format("Choose one of: {}.", listed);
  }
  found.question = fmt::format("Which of these is meant: {}?", listed);
  doubts.push_back(std::move(found));
}

struct ChosenWord {
  Field field;
  Choice Visit::*choice;
};
constexpr std::array<ChosenWord, 11> chosen_words{{
    {Field::visit_water, &Visit::water},
    {Field::visit_rain, &Visit::rain},
    {Field::visit_depth_class, &Visit::depth_class},
    {Field::visit_depth_tool, &Visit::depth_tool},
    {Field::visit_fill_class, &Visit::fill_class},
    {Field::visit_size_tool, &Visit::size_tool},
    {Field::visit_isolated, &Visit::isolated},
    {Field::visit_inlet, &Visit::inlet},
    {Field::visit_outlet, &Visit::outlet},
    {Field::visit_joined, &Visit::joined},
    {Field::visit_edge_seen, &Visit::edge_seen},
}};

Outcome words_known(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  // Almost always all are in order, so that is asked without looking anything up.
  const auto bad = [](Choice choice) { return choice.index == Choice::unreadable; };
  const auto typed = [](Choice choice) { return choice.index != Choice::blank; };
  const auto any = [&](auto is) {
    return is(visit.water) || is(visit.rain) || is(visit.depth_class) || is(visit.depth_tool) ||
           is(visit.fill_class) || is(visit.size_tool) || is(visit.isolated) || is(visit.inlet) ||
           is(visit.outlet) || is(visit.joined) || is(visit.edge_seen);
  };
  if (!any(bad))
    return any(typed) ? Outcome::holds : Outcome::undecided;
  for (const ChosenWord& word : chosen_words)
    if ((visit.*word.choice).index == Choice::unreadable)
      word_not_known(view, word.field, visit.row, doubts);
  return Outcome::fails;
}

template <class Record>
Outcome code_of_its_own(const SeasonView& view, const Record& record, const std::vector<Record>& all,
                        const std::vector<std::uint32_t>& twin, Field field, Field name, Doubts& doubts) {
  if (record.code.empty())
    return Outcome::undecided;
  const std::uint32_t other = twin[static_cast<std::size_t>(&record - all.data())];
  if (other == SeasonView::nowhere)
    return Outcome::holds;
  const std::uint32_t row = all[other].row;
  doubts.push_back(
      doubt(field, fmt::format("{} {} was entered more than once{}.", heading(field),
                               as_typed(view, field, record.row),
                               all[other].name.empty() ? "" : ", also for " + as_typed(view, name, row))));
  doubts.back().other_row = other;
  doubts.back().advice = fmt::format("Look at this row and at row {}: give one of the two another code, or "
                                     "clear the one that was entered twice.",
                                     sheet_row(view, field, row));
  return Outcome::fails;
}

Outcome pool_code_own(const SeasonView& view, const Pool& pool, Doubts& doubts) {
  return code_of_its_own(view, pool, view.season.pools, view.pool_twin, Field::pool_code, Field::pool_name,
                         doubts);
}

Outcome person_code_own(const SeasonView& view, const Person& person, Doubts& doubts) {
  return code_of_its_own(view, person, view.season.people, view.person_twin, Field::person_code,
                         Field::person_name, doubts);
}

constexpr std::string_view practice = "common practice, no source";

} // namespace

std::vector<RuleSpec> who_rules() {
  return {
      {"pool-code-twice",
       Family::identity,
       Level::fix,
       Scope::season,
       "A pool's code stands once in the table of pools",
       "Give one of the two pools another code, or clear the row that was entered twice.",
       "Are these two pools, or one that was entered twice?",
       practice,
       {Field::pool_code},
       pool_code_own},
      {"person-code-twice",
       Family::identity,
       Level::fix,
       Scope::season,
       "A person's code stands once in the table of people",
       "Give one of the two people another code, or clear the row that was entered twice.",
       "Is this code yours alone, or does somebody else write it too?",
       practice,
       {Field::person_code},
       person_code_own},
      {"pool-missing",
       Family::identity,
       Level::fix,
       Scope::reading,
       "A visit names its pool",
       "Find the pool from the person's field sheet or route, and write its code.",
       "Which pool was it?",
       practice,
       {Field::visit_pool},
       pool_missing},
      {"unknown-pool",
       Family::identity,
       Level::fix,
       Scope::reading,
       "A visit's pool is in the table of pools",
       "Correct the code, or add the pool to the table of pools.",
       "Which pool is meant? Its name, or where it lies, will do.",
       practice,
       {Field::visit_pool, Field::pool_code},
       pool_unknown},
      {"person-missing",
       Family::identity,
       Level::ask,
       Scope::reading,
       "A visit names the person who made it",
       "Ask who was at the pool on that day, and write the code.",
       "Who was at the pool on that day?",
       practice,
       {Field::visit_person},
       person_missing},
      {"unknown-person",
       Family::identity,
       Level::fix,
       Scope::reading,
       "A visit's people are in the table of people",
       "Correct the code, or add the person to the table of people.",
       "Who is meant? The full name will do.",
       practice,
       {Field::visit_person, Field::person_code},
       person_unknown},
      {"second-person-is-first",
       Family::identity,
       Level::fix,
       Scope::visit,
       "The second person is somebody other than the first",
       "Write the code of whoever came along, or clear the second person.",
       "Who came along, if anybody did?",
       practice,
       {Field::visit_person, Field::visit_second_person},
       second_is_first},
      {"word-not-known",
       Family::identity,
       Level::fix,
       Scope::reading,
       "Where words are to be chosen, the word is one of the list",
       "Choose the word that was meant from the list.",
       "Which word of the list is meant?",
       practice,
       {Field::visit_pool},
       words_known},
  };
}

} // namespace wetspell
