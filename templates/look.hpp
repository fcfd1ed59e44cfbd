// How cells look: every look once, with its two colours, so that a test can measure their contrast.
#pragma once

#include <cstdint>
#include <span>
#include <string_view>

namespace wetspell::workbook {

// The palette: a still pool at dusk, its shore, and the amber of a lantern.
namespace colour {
inline constexpr std::string_view paper = "#ffffff";
inline constexpr std::string_view ink = "#1d2b30";
inline constexpr std::string_view quiet_ink = "#4f6066";
inline constexpr std::string_view deep_water = "#17424e";
inline constexpr std::string_view water = "#2b6675";
inline constexpr std::string_view mist = "#e7eff0";
inline constexpr std::string_view shore = "#f6f2e8";
inline constexpr std::string_view reed = "#b9c6c6";
inline constexpr std::string_view lantern = "#fff3d6";
inline constexpr std::string_view lantern_bright = "#ffdf94";
inline constexpr std::string_view amber = "#7a4c00";
inline constexpr std::string_view brick = "#8a2413";
inline constexpr std::string_view brick_pale = "#fbe4de";
inline constexpr std::string_view moss = "#2c5a2e";
inline constexpr std::string_view moss_pale = "#e4f0e0";
} // namespace colour

enum class Look : std::uint8_t {
  page, ///< empty paper around tables
  title,
  subtitle,
  explanation,
  small_print,
  version_here,
  rows_in_use,
  section,
  step,
  step_text,
  legend_label,
  link,
  banner,
  banner_good,
  banner_bad,
  caution,
  caution_head,
  band_typed,
  band_derived,
  band_check,
  head_typed,
  head_derived,
  head_check,
  typed_text,
  typed_code, ///< kept as it is typed or chosen: 007 is no number
  typed_wrapped,
  typed_number,
  typed_date,
  typed_time,
  setting_label,
  setting_date,
  setting_help,
  in_use,
  in_use_date,
  derived_text,
  derived_number,
  derived_fine, ///< with a digit more: paces, which are multiplied
  derived_whole,
  check_text,
  check_flag,
  doubtful,       ///< a check cell that says something
  doubtful_words, ///< the same, for whole sentences
  level_fix,
  level_ask,
  level_note,
  answered,
  fixed_text, ///< written by Wetspell, not to be typed over
  fixed_number,
  fixed_date,
};

enum class NumberLook : std::uint8_t {
  general,
  one_decimal,
  two_decimals,
  whole,
  date,
  time,
  version,
  rows,
  text
};
enum class Across : std::uint8_t { automatic, left, middle, right };
enum class Border : std::uint8_t { none, box, below, left_bar };

struct LookSpec {
  Look look;
  /// As the office's list of styles shows it. Without blanks and underscores, which files write in another
  /// way, so that a rule that names a look finds it.
  std::string_view name;
  std::string_view ink;
  std::string_view ground; ///< empty: transparent, that is paper
  double points;
  bool bold;
  bool italic;
  bool wrap;
  Across across;
  Border border;
  NumberLook number;
};
std::span<const LookSpec> looks();
const LookSpec& spec(Look look);

enum class PageLook : std::uint8_t {
  poster,     ///< the start page: all of it on one page
  wide_table, ///< as wide as one page across
  very_wide,  ///< columns over several pages
  letter,     ///< upright, all of it on one page
  two_across, ///< the rows of a handout: broken once, each half as wide as a page
};

} // namespace wetspell::workbook
