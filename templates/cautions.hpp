// What everybody is warned of before they go out, the same on every workbook.
#pragma once

#include <array>
#include <cstddef>
#include <string>
#include <string_view>

namespace wetspell::workbook {

/// Cautions of common practice, no source. Each covers `down` rows beside the settings of a season workbook.
struct Caution {
  std::string_view about, text;
  std::size_t down;
};
inline constexpr std::array<Caution, 7> cautions{{
    {"Cold water",
     "Cold water takes your strength within minutes. Go in pairs, tell somebody where, bring dry clothes.",
     1},
    {"Ice",
     "Thin ice: never step on a pool's ice. Write 'frozen over' from the edge and leave the readings blank.",
     1},
    {"Disease",
     "Disease travels from pool to pool on mud and water. Clean boots, sticks and thermometers and let them "
     "dry "
     "before the next pool; tell the coordinator of dead or sick animals and touch none.",
     2},
    {"Animals",
     "Animals and eggs stay where they are: count with the eyes, step around what lies in the shallows. "
     "Handle them only where licensed and needed.",
     1},
    {"Land",
     "Land: go only where the owner has agreed (column Permission of the pools), and by the way agreed on.",
     1},
    {"Turning back", "Turning back is always right. A blank row costs nothing; write in the notes why.", 1},
    {"Rules",
     "Local rules, licences and your coordinator come first. Nothing in this workbook is a legal wetland "
     "determination.",
     1},
}};

/// "Deep water: do not wade where it is deeper than 36 in." `depth` is text, or a formula between quotes.
inline std::string deep_water_caution(const std::string& depth) {
  return "Deep water: do not wade where it is deeper than " + depth +
         ". A stick or a weighted line reaches further than you should.";
}

} // namespace wetspell::workbook
