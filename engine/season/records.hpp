// The records of a season: pools, people, visits and life counts, as read from their tables.
#pragma once

#include "quantity/quantity.hpp"
#include "season/choice.hpp"

#include <array>
#include <cstdint>
#include <string>

namespace wetspell {

/// A reference to a pool, person or species by its code or name.
struct Ref {
  static constexpr std::int32_t blank = -1;
  static constexpr std::int32_t unknown = -2; ///< a code stands there that no table knows

  std::int32_t index = blank;

  [[nodiscard]] bool known() const { return index >= 0; }
  [[nodiscard]] bool typed() const { return index != blank; }
  bool operator==(const Ref&) const = default;
};

/// Every record knows its row inside its table (not the sheet's row).
struct Pool {
  std::uint32_t row = 0;
  std::string code;
  std::string name;
  Quantity longest; ///< length of the pool's edge at its fullest ever, m
  Quantity widest;  ///< width of the same, m
  Quantity deepest; ///< greatest depth ever seen, m
  Choice isolated;  ///< YesNo: usually isolated
};

struct Person {
  std::uint32_t row = 0;
  std::string code;
  std::string name;
  Choice counts;                       ///< CountingWay
  Quantity course;                     ///< taped distance of the calibration runs, m
  Quantity run_1, run_2, run_3, run_4; ///< counts over the course
  [[nodiscard]] std::array<Quantity, 4> runs() const { return {run_1, run_2, run_3, run_4}; }
};

struct Visit {
  std::uint32_t row = 0;
  Ref pool, person, second_person, paced_by;
  Quantity date, start, end;
  Choice water; ///< Water
  Choice rain;  ///< Rain, in the days before
  Quantity temperature_1, temperature_2, temperature_3, temperature_mean, probe_depth;
  Quantity depth;
  Choice depth_class; ///< row of the depth class table
  Choice depth_tool;  ///< DepthTool
  Quantity fill;
  Choice fill_class; ///< row of the fill class table
  Quantity length, width;
  Choice size_tool;     ///< SizeTool
  Choice isolated;      ///< YesNo
  Choice inlet, outlet; ///< Channel
  Choice joined;        ///< Joined
  Choice edge_seen;     ///< EdgeSeen
  [[nodiscard]] std::array<Quantity, 3> temperatures() const {
    return {temperature_1, temperature_2, temperature_3};
  }
};

struct LifeCount {
  std::uint32_t row = 0;
  Ref pool, person, second_person;
  Ref species;
  Quantity date;
  Choice seen_as; ///< SeenAs
  Quantity by_first, by_second,
      by_both; ///< counts of the first person, the second person, and of what both saw
};

} // namespace wetspell
