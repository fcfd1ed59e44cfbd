// Quantities for tests, made directly and not by the reader.
#pragma once

#include "quantity/quantity.hpp"

namespace wetspell::test {

inline Quantity a_value(double written, Unit unit, Status status = Status::value) {
  Quantity quantity;
  quantity.written = written;
  quantity.unit = unit;
  quantity.si = to_si(written, unit);
  quantity.status = status;
  quantity.si_high = quantity.has_value() ? quantity.si : Quantity::no_value;
  return quantity;
}

inline Quantity a_range(double low, double high, Unit unit) {
  Quantity quantity = a_value(low, unit, Status::range);
  quantity.si_high = to_si(high, unit);
  return quantity;
}

inline Quantity without_value(Status status) {
  Quantity quantity;
  quantity.status = status;
  return quantity;
}

} // namespace wetspell::test
