// Closed lists of words that a field may hold, and one choice from such a list.
#pragma once

#include <cstdint>
#include <span>
#include <string_view>

namespace wetspell {

/// One word of a list. `also` holds other spellings, separated by "|".
struct ChoiceWord {
  std::string_view label;
  std::string_view also;
};

struct ChoiceList {
  std::string_view name;
  std::span<const ChoiceWord> words;
};

/// A field that was filled from a list. The index is that of the list's enum (or of the class table's row).
struct Choice {
  static constexpr std::int16_t blank = -1;
  static constexpr std::int16_t unreadable = -2; ///< something stands there that is not in the list
  static constexpr std::int16_t not_known = -3;  ///< "not known", "cannot tell", n/a

  std::int16_t index = blank;

  [[nodiscard]] bool chosen() const { return index >= 0; }
  [[nodiscard]] bool typed() const { return index != blank; }
  template <class Enum> [[nodiscard]] bool is(Enum value) const {
    return index == static_cast<std::int16_t>(value);
  }
};

// The lists of the catalogue; each enum is in the order of its list (season/choice.cpp).
enum class Water : std::int16_t { standing, none, frozen };
enum class Rain : std::int16_t { none, some, much };
enum class DepthTool : std::int16_t { stick, line, eye };
enum class SizeTool : std::int16_t { tape, paces, eye };
enum class YesNo : std::int16_t { yes, no };
enum class Channel : std::int16_t { none, dry, flowing };
enum class Joined : std::int16_t { nothing, stream, pond, wetland, ditch };
enum class EdgeSeen : std::int16_t { all, most, half, less };
enum class CountingWay : std::int16_t { paces, steps };
enum class SeenAs : std::int16_t { egg_masses, larvae, juveniles, adults, signs };
enum class UnitSystem : std::int16_t { us_customary, metric };
enum class AnswerWord : std::int16_t { right_as_it_is, corrected, will_ask };

const ChoiceList& water_words();
const ChoiceList& rain_words();
const ChoiceList& depth_tool_words();
const ChoiceList& size_tool_words();
const ChoiceList& yes_no_words();
const ChoiceList& channel_words();
const ChoiceList& joined_words();
const ChoiceList& edge_seen_words();
const ChoiceList& counting_way_words();
const ChoiceList& seen_as_words();
const ChoiceList& unit_system_words();
const ChoiceList& answer_words();

/// Reads a typed word: case, blanks and hyphens aside, labels and other spellings. Blank stays blank.
Choice choice_from(std::string_view text, const ChoiceList& list);

} // namespace wetspell
