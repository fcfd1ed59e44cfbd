// What titles, corners and sheet names say that a table's cells are.
#pragma once

#include "audit/heading_words.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace wetspell {

/// The parts of a title between its signs, without what says nothing about a reading: years, seasons, words
/// such as "survey" and "all pools". "Water depth (cm), Split Rock, spring 2019": "Water depth (cm)", "Split
/// Rock".
std::vector<std::string> pieces_of(std::string_view text);

/// The part that names a reading; nothing where none does, where two name different ones, or where the other
/// parts hold words that are no names of places: those may say that something else is meant.
std::optional<std::string> name_of_reading(std::string_view text);

/// Whether a text speaks of a pool or of pools.
bool mentions_pool(std::string_view text);

/// The reading of visits that a heading's words mean.
std::optional<Field> reading_meant(const HeadingGuess& guess);

} // namespace wetspell
