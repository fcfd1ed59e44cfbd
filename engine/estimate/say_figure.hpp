// Short ways to make a figure.
#pragma once

#include "estimate/figure.hpp"
#include "measure/measured.hpp"

#include <cstddef>
#include <string>

namespace wetspell {

/// A figure without a value and the word why.
Figure cannot_say(const FigureSpec& spec, std::string why, std::size_t n = 0);

/// A number of things that were counted without error.
Figure counted_figure(const FigureSpec& spec, std::size_t count);

/// A value without an interval.
Figure plain_figure(const FigureSpec& spec, double si, std::size_t n);

/// A measured value with the interval of its standard uncertainty at `level` (normal, GUM 6.3.3); without one
/// where the uncertainty is not known. What cannot be below 0 (depths, lengths, areas, volumes, shares,
/// counts) has no interval below 0, a share none above 1.
Figure measured_figure(const FigureSpec& spec, const Measured& measured, std::size_t n, double level);

/// "no visit", "one visit: no estimate", "two visits: no estimate".
std::string too_few(std::size_t n, std::string_view one, std::string_view many);

} // namespace wetspell
