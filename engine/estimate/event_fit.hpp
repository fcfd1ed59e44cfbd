// The work behind event_curve: where weight can lie, and how much of it maximises the likelihood.
#pragma once

#include "estimate/between.hpp"

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace wetspell {

/// Fits one set of observations again and again under different weights, as a bootstrap does.
class EventFit {
public:
  explicit EventFit(std::span<const Between> observations);

  [[nodiscard]] std::size_t distinct() const { return distinct_.size(); }
  /// Which of the distinct observations each one is.
  [[nodiscard]] std::span<const std::uint32_t> which() const { return which_; }

  /// Maximises the likelihood with so many of each distinct observation (whole numbers, not all 0), to a
  /// Kuhn-Tucker gap of at most `tolerance`; the greatest number of turns is fixed, and gap() tells where it
  /// ended.
  void fit(std::span<const double> weights, double tolerance);

  [[nodiscard]] std::span<const Between> places() const { return places_; }
  [[nodiscard]] double weight(std::size_t place) const { return below_[place + 1] - below_[place]; }
  [[nodiscard]] double gap() const { return gap_; }
  [[nodiscard]] double log_likelihood() const { return log_likelihood(below_); }
  [[nodiscard]] std::size_t turns() const { return turns_; }

private:
  /// One end of an observation in the order of time: at one moment exact ones begin, then all end, then
  /// open-ended ones begin.
  struct End {
    std::uint32_t observation = 0;
    bool begins = false;
  };
  /// Observations that cover the same run of places: first to last.
  struct Covers {
    std::uint32_t first = 0, last = 0;
    double weight = 0;
  };

  void find_places(std::span<const double> weights);
  void join_like_covers();
  void gradient();
  void expectation_step();
  void convex_minorant_step();
  [[nodiscard]] double log_likelihood(std::span<const double> below) const;

  std::vector<Between> distinct_;
  std::vector<std::uint32_t> which_;
  std::vector<End> ends_;

  std::vector<Between> places_;
  std::vector<Covers> covers_;
  std::vector<double> below_; ///< weight below each place's beginning; the last is 1
  double n_ = 0;
  double gap_ = 0;
  std::size_t turns_ = 0;

  // Room for the steps, kept from one fit to the next.
  std::vector<std::uint32_t> first_;
  std::vector<double> slope_, curvature_, target_, trial_;
  struct Block {
    double value = 0, weight = 0;
    std::size_t size = 0;
  };
  std::vector<Block> blocks_;
};

} // namespace wetspell
