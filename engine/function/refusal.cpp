#include "function/refusal.hpp"

#include <fmt/format.h>

namespace wetspell::refusal {

namespace {

Problem bad(std::string text) {
  return {ProblemKind::bad_argument, std::move(text)};
}

/// What was typed, in quotes, shortened where it is long.
std::string quoted(const Cell& cell) {
  constexpr std::size_t longest = 40;
  std::string text = to_text(cell);
  if (text.size() > longest) {
    std::size_t end = longest;
    while ((static_cast<unsigned char>(text[end]) & 0xC0) == 0x80) { // not inside a character
      --end;
    }
    text.resize(end);
    text += "…";
  }
  return fmt::format("\"{}\"", text);
}

std::string size_of(const Argument& argument) {
  return fmt::format("{} by {}", argument.rows, argument.columns);
}

/// Units that serve as examples in messages: those of everyday field work.
std::string_view usual_units(Kind kind) {
  switch (kind) {
  case Kind::temperature:
    return "°F, °C";
  case Kind::depth:
    return "in, cm, ft, m";
  case Kind::length:
    return "ft, m, yd";
  case Kind::area:
    return "sq ft, sq m, acre, ha";
  case Kind::volume:
    return "cu ft, m3";
  case Kind::percent:
    return "%";
  case Kind::count:
  case Kind::date:
  case Kind::time:
  case Kind::truth:
    break;
  }
  return "none, because this has no unit";
}

} // namespace

Problem needed(const ParameterSpec& parameter) {
  return bad(fmt::format("\"{}\" is missing: {}.", parameter.name, parameter.help));
}

Problem too_many(std::size_t taken, std::size_t given) {
  return bad(fmt::format("takes at most {} argument{}, got {}.", taken, taken == 1 ? "" : "s", given));
}

Problem one_cell_expected(const ParameterSpec& parameter, const Argument& argument) {
  return bad(fmt::format("\"{}\" must be one cell, got {} cells.", parameter.name, size_of(argument)));
}

Problem ranges_differ(const ParameterSpec& one, const Argument& first, const ParameterSpec& other,
                      const Argument& second) {
  return bad(fmt::format("\"{}\" has {} cells and \"{}\" {}: ranges must be of one size, or one of them a "
                         "single cell.",
                         one.name, size_of(first), other.name, size_of(second)));
}

Problem error_in_cell(const ParameterSpec& parameter, const Cell& cell) {
  return bad(fmt::format("\"{}\" shows the error {}; mend that cell first.", parameter.name, to_text(cell)));
}

Problem not_a_unit(const ParameterSpec& parameter, const Cell& cell) {
  return bad(fmt::format("\"{}\" must be a unit of {} ({}), got {}.", parameter.name, name(parameter.kind),
                         usual_units(parameter.kind), quoted(cell)));
}

Problem not_a_word(const ParameterSpec& parameter, const Cell& cell, std::string_view allowed) {
  return bad(fmt::format("\"{}\" must be one of these: {}; got {}.", parameter.name, allowed, quoted(cell)));
}

Problem too_large(const ParameterSpec& parameter, const Cell& cell, double limit) {
  return bad(fmt::format("\"{}\" reads {}; it must be below {}, and so large a number may be a date.",
                         parameter.name, quoted(cell), limit));
}

Problem no_plain_number(const ParameterSpec& parameter, const Cell& cell) {
  return bad(fmt::format("\"{}\" reads {}, which is not a number alone.", parameter.name, quoted(cell)));
}

Problem not_a_table(const ParameterSpec& parameter) {
  return bad(fmt::format("\"{}\" must be a range of cells: {}.", parameter.name, parameter.help));
}

Problem not_one_number(const ParameterSpec& parameter, const Cell& cell, const Quantity& quantity,
                       Kind kind) {
  const std::string read = fmt::format("\"{}\" reads {}", parameter.name, quoted(cell));
  switch (quantity.status) {
  case Status::over:
    return bad(fmt::format("{}: more than a number, but how much more is not said.", read));
  case Status::under:
    return bad(fmt::format("{}: less than a number, but how much less is not said.", read));
  case Status::range:
    return bad(fmt::format("{}: between two numbers, where one is needed.", read));
  case Status::paces:
  case Status::steps:
    return bad(fmt::format("{}: a count of {}; POOL.PACEDLENGTH makes it a length.", read,
                           quantity.status == Status::paces ? "paces" : "steps"));
  case Status::blank:
  case Status::missing:
    return {ProblemKind::not_enough, fmt::format("\"{}\" is not there: the cell says {}.", parameter.name,
                                                 cell.empty() ? std::string("nothing") : quoted(cell))};
  case Status::value:
  case Status::about:
  case Status::bad:
    break;
  }
  return bad(fmt::format("{}, which is no {}: {}.", read, name(kind), text(quantity.reason)));
}

} // namespace wetspell::refusal
