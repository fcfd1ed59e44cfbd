// The words that headings are made of, and the patterns of words that name a field.
#pragma once

#include "season/field.hpp"

#include <cstdint>
#include <initializer_list>
#include <optional>
#include <span>
#include <string_view>

namespace wetspell {

/// One thing that a word of a heading can stand for.
enum class Word : std::uint8_t {
  filler, // "of", "the": says nothing
  pool,
  code,
  name,
  date,
  visit,
  time,
  start,
  end,
  person,
  first,
  second,
  third,
  fourth,
  water,
  present,
  rain,
  temperature,
  mean,
  probe,
  depth,
  most,
  measured,
  classed,
  tool,
  full,
  percent,
  length,
  width,
  size,
  pace,
  isolated,
  inlet,
  outlet,
  joined,
  edge,
  seen,
  photos,
  notes,
  locality,
  latitude,
  longitude,
  forest,
  owner,
  permission,
  usually,
  species,
  stage,
  count,
  both,
  day,
  month,
  year,
  parameter,
  value,
  unit,
  area,
  course,
  run,
  egg,
};

/// The meaning of a word in small letters; nothing for a word that is not known.
std::optional<Word> heading_word(std::string_view word);
/// The meaning of the known word that is so many slips of the pen away; nothing when several meanings are, or
/// when the word is too short to tell. A plural is no slip: "stations" is how many, "station" is which.
std::optional<Word> heading_word_near(std::string_view word, std::size_t slips);

/// A way to name a field: every word of `needs` must stand in the heading, those of `may` can.
struct Pattern {
  Field field;
  double score; ///< how surely the needed words name the field
  std::initializer_list<Word> needs;
  std::initializer_list<Word> may;
};
std::span<const Pattern> heading_patterns();

} // namespace wetspell
