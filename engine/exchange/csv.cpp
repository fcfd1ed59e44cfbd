#include "exchange/csv.hpp"

#include "base/in_parts.hpp"
#include "exchange/decode.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <cstdint>
#include <map>
#include <optional>
#include <vector>

namespace wetspell {

namespace {

constexpr std::size_t most_columns = 16'384; // as many as a sheet has

/// How often each candidate stands in a line outside quotes. Of two that do equally well the first is taken:
/// a comma is also a decimal sign.
constexpr std::array candidates{'\t', ';', '|', ','};
using Counts = std::array<std::size_t, candidates.size()>;

std::vector<Counts> first_lines(std::string_view text) {
  constexpr std::size_t looked_at = 50;
  std::vector<Counts> lines(1);
  bool quoted = false;
  bool anything = false;
  for (const char c : text) {
    if (c == '"') {
      quoted = !quoted;
    } else if (!quoted && (c == '\n' || c == '\r')) {
      if (anything && lines.size() == looked_at)
        break;
      if (anything)
        lines.emplace_back();
      anything = false;
      continue;
    } else if (!quoted) {
      for (std::size_t i = 0; i < candidates.size(); ++i)
        lines.back()[i] += c == candidates[i] ? 1 : 0;
    }
    anything = true;
  }
  if (!anything && lines.size() > 1)
    lines.pop_back();
  return lines;
}

/// The delimiter that stands in the most lines, equally often from line to line; a title above or a comma in
/// numbers decides nothing.
char delimiter_of(std::string_view text) {
  const auto lines = first_lines(text);
  std::size_t best = 0;
  std::array<std::size_t, 3> best_score{};
  for (std::size_t i = 0; i < candidates.size(); ++i) {
    std::map<std::size_t, std::size_t> alike; // how many lines have so many
    std::size_t with = 0;
    for (const Counts& line : lines) {
      with += line[i] > 0;
      if (line[i] > 0)
        ++alike[line[i]];
    }
    std::size_t most = 0;
    std::size_t count = 0;
    for (const auto& [times, lines_alike] : alike)
      if (lines_alike >= most) {
        most = lines_alike;
        count = times;
      }
    if (const std::array score{most, with, count}; score > best_score) {
      best = i;
      best_score = score;
    }
  }
  return candidates[best];
}

/// One field as it stands, and whether quotes stood around it.
struct Field {
  std::string_view text;
  bool quoted = false;
};

/// Reads the fields one after another; `sink(field, row, column)` is called for each. Gives the line on which
/// a quotation mark opens that never closes.
template <class Sink>
std::optional<std::size_t> each_field(std::string_view text, char delimiter, Sink sink) {
  std::string unescaped;
  std::size_t row = 0;
  std::size_t column = 0;
  std::size_t line = 1;
  const std::string ends{delimiter, '\n', '\r'};
  std::size_t at = 0;
  while (at < text.size()) {
    Field field;
    if (text[at] == '"') {
      const std::size_t opened = line;
      field.quoted = true;
      unescaped.clear();
      std::size_t from = ++at;
      for (;;) {
        const std::size_t quote = text.find('"', at);
        if (quote == std::string_view::npos)
          return opened;
        line += static_cast<std::size_t>(std::count(text.begin() + static_cast<std::ptrdiff_t>(at),
                                                    text.begin() + static_cast<std::ptrdiff_t>(quote), '\n'));
        if (quote + 1 < text.size() && text[quote + 1] == '"') {
          unescaped += text.substr(from, quote + 1 - from);
          at = from = quote + 2;
          continue;
        }
        field.text = text.substr(from, quote - from);
        at = quote + 1;
        break;
      }
      // What stands behind the closing mark belongs to the field all the same.
      const std::size_t end = std::min(text.find_first_of(ends, at), text.size());
      if (!unescaped.empty() || end > at) {
        unescaped += field.text;
        unescaped += text.substr(at, end - at);
        field.text = unescaped;
      }
      at = end;
    } else {
      const std::size_t from = at;
      while (at < text.size() && text[at] != delimiter && text[at] != '\n' && text[at] != '\r')
        ++at;
      field.text = text.substr(from, at - from);
    }
    sink(field, row, column);
    if (at >= text.size())
      return std::nullopt;
    if (text[at] == delimiter) {
      ++column;
      ++at;
      if (at == text.size())
        sink(Field{}, row, column);
      continue;
    }
    if (text[at] == '\r' && at + 1 < text.size() && text[at + 1] == '\n')
      ++at;
    ++at;
    ++line;
    ++row;
    column = 0;
  }
  return std::nullopt;
}

/// What a short run of digits says, with or without a point among them. Digits and power of ten are both
/// exact, so that their quotient is the double next to the number (Clinger 1990); most numbers are that
/// short.
std::optional<double> short_number(std::string_view digits) {
  constexpr std::size_t most = 15; // digits that a double holds exactly
  if (digits.size() > most)
    return std::nullopt;
  constexpr std::array<double, most + 1> powers{1,   1e1, 1e2,  1e3,  1e4,  1e5,  1e6,  1e7,
                                                1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15};
  std::int64_t value = 0;
  std::size_t point = digits.size();
  for (std::size_t i = 0; i < digits.size(); ++i) {
    if (digits[i] >= '0' && digits[i] <= '9')
      value = value * 10 + (digits[i] - '0');
    else if (digits[i] == '.' && point == digits.size() && i > 0)
      point = i;
    else
      return std::nullopt;
  }
  const std::size_t decimals = digits.size() - std::min(point + 1, digits.size());
  return static_cast<double>(value) / powers[decimals];
}

/// A plain number, written whole: no signs or words around it, a point as decimal sign.
std::optional<double> plain_number(std::string_view text) {
  constexpr std::string_view beginnings = "0123456789.-";
  if (text.empty() || beginnings.find(text.front()) == std::string_view::npos)
    return std::nullopt;
  if (const auto number = short_number(text))
    return number;
  double value = 0;
  const auto [end, error] =
      std::from_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed);
  if (error != std::errc{} || end != text.data() + text.size() || !std::isfinite(value))
    return std::nullopt;
  return value;
}

/// Codes such as 007 and 3.10 are words: as numbers they would lose their zeros, and 3.10 be the same as 3.1.
/// What other programs write for whole numbers (7.0) is a number.
bool is_code(std::string_view text) {
  if (text.size() > 1 && text[0] == '0' && text[1] != '.')
    return true;
  return text.ends_with('0') && text.find('.') < text.find_last_not_of('0');
}

Cell cell_of(const Field& field) {
  if (!field.quoted && !is_code(field.text))
    if (const auto number = plain_number(field.text))
      return Cell::of_number(*number);
  return Cell::of_text(field.text);
}

std::string harmless(const Cell& cell) {
  std::string text = to_text(cell);
  constexpr std::string_view starts = "=+-@\t\r";
  if (cell.kind() == CellKind::text && starts.find(text.front()) != std::string_view::npos &&
      !plain_number(text))
    text.insert(text.begin(), '\'');
  return text;
}

constexpr std::string_view mark = "\xEF\xBB\xBF"; // of the byte order

/// Some programs write the mark once more at every save.
std::string_view without_mark(std::string_view text) {
  while (text.starts_with(mark))
    text.remove_prefix(mark.size());
  return text;
}

/// The text in parts that begin with a line, to be read side by side; whole where a quoted field could reach
/// over a line's end.
std::vector<std::string_view> in_lines(std::string_view text) {
  constexpr std::size_t least = 1 << 20;
  if (text.find('"') != std::string_view::npos)
    return {text};
  std::vector<std::string_view> parts;
  for (std::size_t wanted = parts_of(text.size(), least); wanted > 1; --wanted) {
    const std::size_t end = text.find('\n', text.size() / wanted);
    if (end == std::string_view::npos || end + 1 == text.size())
      break;
    parts.push_back(text.substr(0, end + 1));
    text.remove_prefix(end + 1);
  }
  parts.push_back(text);
  return parts;
}

/// What stands in a part of the text.
struct Extent {
  std::size_t rows = 0;
  std::size_t columns = 0;
  std::optional<std::size_t> open; ///< the line of a quotation mark that never closes
};

Extent extent_of(std::string_view text, char delimiter) {
  Extent extent;
  extent.open = each_field(text, delimiter, [&](const Field&, std::size_t row, std::size_t column) {
    extent.rows = row + 1;
    extent.columns = std::max(extent.columns, column + 1);
  });
  return extent;
}

Result<Table> table_divided_by(char delimiter, std::string_view text, std::string sheet) {
  const auto parts = in_lines(text);
  std::vector<Extent> extents(parts.size());
  in_parts(parts.size(), [&](std::size_t part) { extents[part] = extent_of(parts[part], delimiter); });
  if (const auto& open = extents.front().open) // with a mark there is one part
    return Problem{ProblemKind::bad_argument,
                   fmt::format("{}: the quotation mark that opens on line {} never closes.", sheet, *open)};
  std::size_t rows = 0;
  std::size_t columns = 0;
  std::vector<std::size_t> first_rows;
  for (const Extent& extent : extents) {
    first_rows.push_back(rows);
    rows += extent.rows;
    columns = std::max(columns, extent.columns);
  }
  if (columns > most_columns || rows * columns > most_cells)
    return Problem{
        ProblemKind::bad_argument,
        fmt::format("{}: {} rows of up to {} columns are more than can be read.", sheet, rows, columns)};
  Table table(Place{std::move(sheet), 1, 0}, rows, columns);
  in_parts(parts.size(), [&](std::size_t part) {
    each_field(parts[part], delimiter, [&](const Field& field, std::size_t row, std::size_t column) {
      if (column == 0)
        table.open_row(first_rows[part] + row);
      table.at(first_rows[part] + row, column) = cell_of(field);
    });
  });
  return table;
}

/// Marks at the beginning of a field as signs like any other.
std::string with_plain_marks(std::string_view text, char delimiter) {
  std::string plain;
  plain.reserve(text.size());
  bool field_begins = true;
  for (const char c : text) {
    if (c == '"' && field_begins)
      plain += "\u2033";
    else
      plain += c;
    field_begins = c == delimiter || c == '\n' || c == '\r';
  }
  return plain;
}

} // namespace

Result<Table> table_from_csv(std::string_view text, std::string sheet) {
  text = without_mark(text);
  if (!is_utf8(text))
    return Problem{ProblemKind::bad_argument,
                   fmt::format("{}: the text is not UTF-8; save the file again as UTF-8.", sheet)};
  return table_divided_by(delimiter_of(text), text, std::move(sheet));
}

Result<Table> table_from_any_text(std::string bytes, std::string sheet) {
  const Decoded decoded = decode(std::move(bytes));
  const std::string_view text = without_mark(decoded.text);
  const char delimiter = delimiter_of(text);
  auto table = table_divided_by(delimiter, text, sheet);
  // A lone quotation mark (for "the same as above", or for inches) never closes. The delimiter stays: without
  // the marks another might divide the lines more evenly, and marks would open anew.
  return table ? std::move(table)
               : table_divided_by(delimiter, with_plain_marks(text, delimiter), std::move(sheet));
}

std::string csv_from_table(const Table& table) {
  std::string out;
  for (std::size_t r = 0; r < table.rows(); ++r) {
    for (std::size_t c = 0; c < table.columns(); ++c) {
      if (c > 0)
        out += ',';
      const Cell& cell = table.at(r, c);
      if (cell.empty())
        continue;
      const std::string text = harmless(cell);
      const bool quote = (cell.kind() == CellKind::text && plain_number(text) && !is_code(text)) ||
                         text.find_first_of(",\"\r\n;\t|") != std::string::npos ||
                         text.starts_with(mark); // else it would go with that of the file
      if (!quote) {
        out += text;
        continue;
      }
      out += '"';
      for (const char ch : text) {
        out += ch;
        if (ch == '"')
          out += '"';
      }
      out += '"';
    }
    out += "\r\n";
  }
  return out;
}

} // namespace wetspell
