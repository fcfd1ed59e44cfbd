// A sum that carries what rounding drops.
#pragma once

namespace wetspell {

/// Each addition's exact error by Knuth's two-sum, which needs no comparison that a processor could guess
/// wrongly.
class CarefulSum {
public:
  void add(double term) {
    const double next = sum_ + term;
    const double added = next - sum_;
    carried_ += (sum_ - (next - added)) + (term - added);
    sum_ = next;
  }
  [[nodiscard]] double value() const { return sum_ + carried_; }

private:
  double sum_ = 0;
  double carried_ = 0;
};

} // namespace wetspell
