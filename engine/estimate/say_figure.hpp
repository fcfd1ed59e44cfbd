// Short ways to make a figure.
#pragma once

#include "estimate/figure.hpp"
#include "measure/measured.hpp"

#include <cstddef>
#include <optional>
#include <string>

namespace wetspell {

/// A figure without a value and the word why.
Figure cannot_say(const FigureSpec& spec, std::string why, std::size_t n = 0);

/// A number of things that were counted without error.
Figure counted_figure(const FigureSpec& spec, std::size_t count);

/// A value without an interval.
Figure plain_figure(const FigureSpec& spec, double si, std::size_t n);

/// A measured value with the interval of its standard uncertainty at `level` (normal, GUM 6.3.3); without one
/// where the uncertainty is not known; else as interval_figure().
Figure measured_figure(const FigureSpec& spec, const Measured& measured, std::size_t n, double level);

/// A value with an interval of its own making. What cannot be below 0 (depths, lengths, areas, volumes,
/// shares, counts) has no interval below 0, a share none above 1.
Figure interval_figure(const FigureSpec& spec, double si, std::optional<double> low,
                       std::optional<double> high, std::size_t n, double level);

/// A figure for which the reason stands beside the value.
Figure with_note(Figure figure, std::string note);

/// "no visit", "one visit: no estimate", "two visits: no estimate".
std::string too_few(std::size_t n, std::string_view one, std::string_view many);

} // namespace wetspell
