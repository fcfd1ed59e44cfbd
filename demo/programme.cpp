#include "demo/programme.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>

namespace wetspell::demo {

namespace {

constexpr std::array first_words{"Otter", "Lantern", "Mossy",  "Crooked", "Heron",
                                 "Split", "Amber",   "Hidden", "Quill",   "Ferny"};
constexpr std::array second_words{"Hollow", "Basin", "Dip", "Saucer"};
constexpr std::array localities{"Tallow Ridge", "Upper Fennick Wood", "Marl Common", "Old Kettle Road"};
constexpr std::array given_names{"Ansel", "Brida", "Corin", "Della", "Edrik", "Fenna", "Gorin",
                                 "Hale",  "Ilse",  "Joram", "Kesta", "Lorn",  "Mave",  "Nils",
                                 "Orla",  "Pell",  "Quen",  "Runa",  "Soren", "Tova",  "Ulric",
                                 "Vesna", "Wend",  "Yara",  "Zeb"};
constexpr std::array family_names{"Quillfeather", "Barrowmere", "Ashgrove-Pine", "Thistledown", "Mudwick"};

TruePool invent_pool(std::size_t index, Chance& chance) {
  TruePool pool;
  pool.code = fmt::format("{}{:02}", "TFMK"[index / 10], index % 10 + 1);
  pool.name =
      fmt::format("{} {}", first_words[index % first_words.size()], second_words[index / first_words.size()]);
  pool.locality = localities[index / 10];
  pool.longest = chance.between(11, 34);
  pool.widest = pool.longest * chance.between(0.45, 0.85);
  pool.deepest = chance.between(0.45, 0.85);
  pool.peak = chance.between(0.86, 0.97);
  pool.fall = chance.between(0.0065, 0.012);
  pool.warmth = chance.about(0, 0.5);
  pool.isolated = !chance.one_in(6);
  pool.dry_inlet = pool.isolated && chance.one_in(5);
  pool.frog_masses = std::round(chance.between(15, 120));
  pool.salamander_masses = std::round(chance.between(12, 70));
  pool.visitor = index * person_count / pool_count;
  return pool;
}

TruePerson invent_person(std::size_t index, Chance& chance) {
  TruePerson person;
  const std::string_view given = given_names[index];
  const std::string_view family = family_names[index % family_names.size()];
  person.name = fmt::format("{} {}", given, family);
  person.code = fmt::format("{}{}", given.substr(0, 2), family.front());
  std::transform(person.code.begin(), person.code.end(), person.code.begin(),
                 [](char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c; });
  person.hand = index % 7 == 3 ? Hand::metric : index % 7 == 5 ? Hand::with_marks : Hand::bare;
  person.paces = index % 2 == 0;
  person.steps = index % 6 == 4;
  person.pace = chance.between(1.45, 1.75);
  person.course = index % 3 == 0 ? 30 : 30.48;
  return person;
}

} // namespace

Programme invent_programme(Chance& chance) {
  Programme programme;
  for (std::size_t i = 0; i < pool_count; ++i)
    programme.pools.push_back(invent_pool(i, chance));
  for (std::size_t i = 0; i < person_count; ++i)
    programme.people.push_back(invent_person(i, chance));
  return programme;
}

int day_of_year(int month, int day) {
  using namespace std::chrono;
  const year y{season_year};
  const sys_days date{y / month / day};
  return static_cast<int>((date - sys_days{y / January / 1}).count()) + 1;
}

double depth_on(const TruePool& pool, double day) {
  const double peak_day = day_of_year(4, 16);
  const double rain_day = day_of_year(5, 14);
  double depth = pool.deepest * pool.peak;
  if (day < peak_day)
    depth -= (peak_day - day) * 0.003;
  else
    depth -= (day - peak_day) * pool.fall;
  if (day >= rain_day)
    depth += 0.05;
  return std::max(0.0, depth);
}

double warmth_on(const TruePool& pool, double day) {
  return 7.5 + (day - day_of_year(3, 25)) * 0.13 + pool.warmth;
}

} // namespace wetspell::demo
