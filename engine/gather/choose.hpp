// The lines of the sheet 'To choose': one value of the season beside one that came in.
#pragma once

#include "table/table.hpp"

#include <array>
#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace wetspell {

/// What became of a line.
enum class LineState : std::uint8_t {
  open,      ///< nothing was chosen, or nothing that is understood
  again,     ///< the season's value changed after the line was written
  kept,      ///< the season's value stays
  taken,     ///< what came in stands in the season now
  no_longer, ///< both say the same now
};
std::string_view words(LineState state);

/// What a person can choose.
inline constexpr std::string_view choose_season = "keep the season's";
inline constexpr std::string_view choose_came = "take what came in";

struct ChooseLine {
  std::string visit;  ///< "B07, 2026-04-18, RW": which row of the season
  std::string column; ///< heading of the field
  std::string season; ///< what the season holds, as it would be typed
  Cell came;
  std::string file, where;
  std::string choice; ///< as it stands in the cell
  LineState state = LineState::open;
  std::string mark; ///< by which the row and the field are found again

  [[nodiscard]] bool open() const { return state == LineState::open || state == LineState::again; }
  bool operator==(const ChooseLine&) const = default;
};

inline constexpr std::array<std::string_view, 10> choose_headings{"Row of the season",
                                                                  "Column",
                                                                  "The season holds",
                                                                  "Came in",
                                                                  "From file",
                                                                  "From row",
                                                                  "Your choice",
                                                                  "State",
                                                                  "Mark",
                                                                  "Kind"};
inline constexpr std::size_t choice_column = 6;
inline constexpr std::size_t choose_shown = 8; ///< columns behind these are for Wetspell

/// As texts, with the headings in the first row. Values are texts, so that nothing is shown otherwise than it
/// was typed.
Table choose_table(std::span<const ChooseLine> lines);
/// The way back.
std::vector<ChooseLine> choose_lines(const Table& table);

} // namespace wetspell
