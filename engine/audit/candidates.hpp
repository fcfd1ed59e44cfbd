// What a column could hold, by its heading's words and by what stands below it together.
#pragma once

#include "audit/evidence.hpp"
#include "audit/heading_words.hpp"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace wetspell {

struct Candidate {
  Field field{};
  TableKind table{};
  double score = 0; ///< words and cells together, 0 to 1
  std::string reason;
};

/// A column of a block with everything that was found out about it.
class Column {
public:
  Column(const Block& block, std::size_t at);
  /// What words say of cells, wherever both stand.
  Column(std::string words, Evidence cells);

  [[nodiscard]] std::size_t at() const { return at_; }
  [[nodiscard]] const HeadingGuess& guess() const { return guess_; }
  [[nodiscard]] const Evidence& evidence() const { return evidence_; }
  [[nodiscard]] const std::string& heading() const { return heading_; }
  /// What the heading, or the row of units, says.
  [[nodiscard]] Unit said_unit() const { return said_; }
  [[nodiscard]] bool says_mean() const { return says_mean_; }
  [[nodiscard]] const AsKind& as(Kind kind) const;
  [[nodiscard]] std::vector<Candidate> candidates() const;
  /// How far the cells speak for a piece of a date or of a reading, 0 to 1.
  [[nodiscard]] double part_score(Part part) const;
  /// How far the cells are counts of one animal.
  [[nodiscard]] double count_score() const;

private:
  struct Weighed {
    double factor = 1;
    std::string reason;
  };
  [[nodiscard]] Weighed weigh(const FieldSpec& field) const;
  [[nodiscard]] Weighed weigh_quantity(const FieldSpec& field) const;
  [[nodiscard]] Weighed weigh_reference(const FieldSpec& field) const;

  std::size_t at_ = 0;
  std::string heading_;
  Evidence evidence_;
  HeadingGuess guess_;
  Unit said_ = Unit::none;
  Unit unit_below_ = Unit::none; ///< what the row of units says
  bool says_mean_ = false;
  mutable std::array<std::optional<AsKind>, kinds_of_quantity> as_;
};

} // namespace wetspell
