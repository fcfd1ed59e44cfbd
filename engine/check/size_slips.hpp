// Lengths and widths that were written in another unit or way of counting than they are read in.
#pragma once

#include "check/size_lines.hpp"

#include <optional>

namespace wetspell {

enum class SizeSlipKind : std::uint8_t { metres_as_feet, feet_as_metres, steps_as_paces, paces_as_steps };

struct SizeSlip {
  SizeSlipKind kind{};
  double read = 0;                ///< metres, as it is read now
  double meant = 0;               ///< metres, as it was probably meant
  const Visit* against = nullptr; ///< the visit that speaks for it; null: the pool's edge does
};

/// Whether the line could hold this slip at all, from how it stands in its cell.
bool can_slip(const Season& season, const Visit& visit, const Quantity& line, SizeSlipKind kind);

/// A slip explains a value when the value meant fits the pool's visits before and after (or its edge), and
/// nothing else seen that day says that the pool itself had changed so much.
struct SlipVerdict {
  Outcome outcome = Outcome::holds; ///< undecided: no other visit and no edge to compare with
  SizeSlip slip;                    ///< when it fails
};
SlipVerdict size_slip(const SeasonView& view, const Visit& visit, Line line, SizeSlipKind kind);

} // namespace wetspell
