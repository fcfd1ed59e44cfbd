// Rules about who counted what in a row of life counts; joins the parts of the family. Pool, day and person
// of a count belong to identity.
#include "check/life_family.hpp"
#include "check/nearest.hpp"
#include "check/say.hpp"
#include "quantity/print.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace wetspell {

std::string animal_words(const Season& season, const LifeCount& life) {
  std::string words = life.species.known()
                          ? season.species_names[static_cast<std::size_t>(life.species.index)]
                          : "the animal";
  if (life.seen_as.chosen()) {
    words += fmt::format(", {}", seen_as_words().words[static_cast<std::size_t>(life.seen_as.index)].label);
  }
  return words;
}

std::optional<double> counted_animals(const LifeCount& life) {
  if (!life.by_first.has_value() && !life.by_second.has_value()) {
    return std::nullopt;
  }
  return std::max(life.by_first.has_value() ? life.by_first.si : 0,
                  life.by_second.has_value() ? life.by_second.si : 0);
}

namespace {

Outcome second_is_another(const SeasonView& view, const LifeCount& life, Doubts& doubts) {
  if (!life.person.known() || !life.second_person.known()) {
    return Outcome::undecided;
  }
  if (!(life.person == life.second_person)) {
    return Outcome::holds;
  }
  doubts.push_back(doubt(Field::life_second_person,
                         fmt::format("First and second person are both {}; two counts need two people.",
                                     as_typed(view, Field::life_person, life.row)),
                         {Field::life_person}));
  return Outcome::fails;
}

RuleSpec same_person_twice() {
  return {"same-person-twice",
          Family::life,
          Level::fix,
          Scope::visit,
          "The second person of a count is another than the first",
          "Ask who counted with the first person; leave the cell blank when nobody did.",
          "Who was the second to count, if anybody was?",
          "common practice, no source",
          {Field::life_person, Field::life_second_person},
          &second_is_another};
}

Outcome species_known(const SeasonView& view, const LifeCount& life, Doubts& doubts) {
  if (life.species.known()) {
    return Outcome::holds;
  }
  if (!life.species.typed()) {
    return Outcome::undecided;
  }
  NearestWord names;
  for (const std::string& name : view.season.species_names) {
    names.add(name);
  }
  Doubt found = doubt(Field::life_species, fmt::format("Species {} is not in the table of species.",
                                                       as_typed(view, Field::life_species, life.row)));
  if (const auto near = names.find(to_text(view.season.cell(Field::life_species, life.row)))) {
    const std::string& name = view.season.species_names[*near];
    found.message.back() = ';';
    found.message += fmt::format(" the nearest is {:.60}.", name);
    found.proposals.push_back({Field::life_species, Cell::of_text(name)});
  }
  doubts.push_back(std::move(found));
  return Outcome::fails;
}

RuleSpec species_unknown() {
  return {"species-unknown",
          Family::life,
          Level::ask,
          Scope::visit,
          "A count names a species of the table of species",
          "Correct the name, or add the species to its table.",
          "Which animal is meant? Another name for it helps.",
          "common practice, no source",
          {Field::life_species},
          &species_known};
}

Outcome species_given(const SeasonView&, const LifeCount& life, Doubts& doubts) {
  if (life.species.typed()) {
    return Outcome::holds;
  }
  const auto count = counted_animals(life);
  if (!count) {
    return Outcome::undecided;
  }
  doubts.push_back(doubt(Field::life_species,
                         fmt::format("{} were counted, but it is not said of what.", plain(*count, 2)),
                         {Field::life_by_first, Field::life_by_second}));
  return Outcome::fails;
}

RuleSpec species_missing() {
  return {"species-missing",
          Family::life,
          Level::fix,
          Scope::visit,
          "A count says of which species it is",
          "Look on the field sheet and choose the species.",
          "Which animal was it?",
          "common practice, no source",
          {Field::life_species, Field::life_by_first},
          &species_given};
}

Outcome form_given(const SeasonView& view, const LifeCount& life, Doubts& doubts) {
  if (life.seen_as.chosen()) {
    return Outcome::holds;
  }
  if (life.seen_as.index == Choice::not_known || (!life.seen_as.typed() && !life.species.typed())) {
    return Outcome::undecided;
  }
  if (!life.seen_as.typed()) {
    doubts.push_back(doubt(Field::life_seen_as,
                           fmt::format("It is not said in which form {} was seen.",
                                       as_typed(view, Field::life_species, life.row)),
                           {Field::life_species}));
    return Outcome::fails;
  }
  std::string known;
  for (const ChoiceWord& choice : seen_as_words().words) {
    known += fmt::format("{}{}", known.empty() ? "" : ", ", choice.label);
  }
  doubts.push_back(
      doubt(Field::life_seen_as, fmt::format("The form seen reads {}; known are: {}.",
                                             as_typed(view, Field::life_seen_as, life.row), known)));
  return Outcome::fails;
}

RuleSpec form_unclear() {
  return {"form-unclear",
          Family::life,
          Level::ask,
          Scope::reading,
          "A count says whether egg masses, larvae, juveniles, adults or signs were counted",
          "Choose the form; write one row for each form that was seen.",
          "Were these egg masses, larvae, juveniles, adults or signs?",
          "common practice, no source",
          {Field::life_seen_as},
          &form_given};
}

} // namespace

std::span<const RuleSpec> life_rules() {
  // The more specific stand first: what they doubt, the later ones leave alone.
  static const std::vector<RuleSpec> all = [] {
    std::vector<RuleSpec> list{species_missing(), species_unknown(), form_unclear(), same_person_twice()};
    for (const auto& part : {life_count_rules(), life_time_rules()}) {
      list.insert(list.end(), part.begin(), part.end());
    }
    return list;
  }();
  return all;
}

} // namespace wetspell
