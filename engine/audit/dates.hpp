// Days as old sheets write them: the order of day and month, the century and the day that numbers count from
// are decided for a whole column, each with its reason.
#pragma once

#include "quantity/read.hpp"
#include "table/cell.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace wetspell {

/// How the dates of one column are read.
struct DateSense {
  DateOrder order = DateOrder::unknown;
  std::optional<int> year; ///< the sheet's year: completes dates without one, settles the century
  int this_year = 2026;    ///< no two-digit year lies behind it
  bool from_1904 = false;  ///< bare numbers count from 1904-01-01
};

struct ReadDate {
  bool readable = false;
  double serial = 0;
  std::string reason;   ///< why not, in words
  bool askable = false; ///< one answer (which comes first? which year?) would make it readable
};
ReadDate date_from(const Cell& cell, const DateSense& sense);

/// Whether the cell is a date but for the order of day and month, or for its year.
bool could_be_date(const Cell& cell);

/// Whether a bare number is likely to count days (from 1900 or 1904 on), or to be a day in figures: 20190403.
bool counts_days(double number);

/// A date in figures, day and month before the year or the year left out: the two numbers in question.
struct TwoNumbers {
  int first = 0;
  int second = 0;
  int year = -1; ///< as written; -1: none
};
std::optional<TwoNumbers> two_numbers(std::string_view text);

/// Collects what a column says about its dates; add() every cell, then decide().
class DateColumn {
public:
  explicit DateColumn(DateSense known) : sense_(known) {}
  void add(const Cell& cell);
  /// The sense with what the column adds; `reason` says how the order was decided.
  DateSense decide(std::string& reason) const;

private:
  /// How the days would lie under one order.
  struct Reading {
    std::size_t impossible = 0, backwards = 0;
    double first = 0, last = 0, before = 0;
    std::size_t count = 0;
    void add(std::optional<double> serial);
  };
  [[nodiscard]] int full_year(int written) const;

  DateSense sense_;
  Reading day_first_, month_first_;
  std::size_t in_figures_ = 0;
  std::size_t only_day_first_ = 0, only_month_first_ = 0;
  std::size_t numbers_ = 0, numbers_fit_1900_ = 0, numbers_fit_1904_ = 0;
};

/// The four-digit year of a title such as "Spring 2019"; nothing when there are two.
std::optional<int> year_in(std::string_view text);

} // namespace wetspell
