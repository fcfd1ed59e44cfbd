// Half-widths of intervals in standard deviations.
#pragma once

namespace wetspell {

/// Two-sided, at `level` between 0 and 1: 1.96 for 0.95.
double normal_factor(double level);
/// Student's t with so many degrees of freedom (over 0): 2.776 for 0.95 and 4.
double student_factor(double level, double freedom);
/// The share of a normal distribution beyond `z` on both sides.
double normal_tails(double z);
/// The share of chi-squared with so many degrees of freedom above `value`.
double chi_squared_above(double value, double freedom);

} // namespace wetspell
