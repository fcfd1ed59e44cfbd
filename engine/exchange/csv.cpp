#include "exchange/csv.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <optional>
#include <vector>

namespace wetspell {

namespace {

struct Field {
  std::string text;
  bool quoted = false;
};
using Row = std::vector<Field>;

bool is_utf8(std::string_view text) {
  for (std::size_t i = 0; i < text.size();) {
    const auto lead = static_cast<unsigned char>(text[i]);
    const std::size_t length = lead < 0x80         ? 1
                               : lead >> 5 == 0x6  ? 2
                               : lead >> 4 == 0xE  ? 3
                               : lead >> 3 == 0x1E ? 4
                                                   : 0;
    if (length == 0 || i + length > text.size())
      return false;
    for (std::size_t k = 1; k < length; ++k)
      if (static_cast<unsigned char>(text[i + k]) >> 6 != 0x2)
        return false;
    i += length;
  }
  return true;
}

/// The delimiter that stands most often in the first line, outside quotes.
char delimiter_of(std::string_view text) {
  constexpr std::array candidates{',', ';', '\t'};
  std::array<std::size_t, candidates.size()> count{};
  bool quoted = false;
  for (const char c : text) {
    if (c == '"')
      quoted = !quoted;
    else if (!quoted && (c == '\n' || c == '\r'))
      break;
    else if (!quoted)
      for (std::size_t i = 0; i < candidates.size(); ++i)
        count[i] += c == candidates[i] ? 1 : 0;
  }
  return candidates[static_cast<std::size_t>(std::max_element(count.begin(), count.end()) - count.begin())];
}

Result<std::vector<Row>> rows_of(std::string_view text, char delimiter, const std::string& sheet) {
  std::vector<Row> rows;
  Row row;
  Field field;
  bool in_quotes = false;
  std::size_t line = 1;
  std::size_t quote_line = 0;
  const auto end_field = [&] {
    row.push_back(std::move(field));
    field = {};
  };
  const auto end_row = [&] {
    end_field();
    rows.push_back(std::move(row));
    row = {};
  };
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    line += c == '\n' ? 1 : 0;
    if (in_quotes) {
      if (c != '"') {
        field.text += c;
      } else if (i + 1 < text.size() && text[i + 1] == '"') {
        field.text += c;
        ++i;
      } else {
        in_quotes = false;
      }
    } else if (c == '"' && field.text.empty() && !field.quoted) {
      in_quotes = field.quoted = true;
      quote_line = line;
    } else if (c == delimiter) {
      end_field();
    } else if (c == '\n' || c == '\r') {
      if (c == '\r' && i + 1 < text.size() && text[i + 1] == '\n') {
        ++i;
        ++line;
      }
      end_row();
    } else {
      field.text += c;
    }
  }
  if (in_quotes)
    return Problem{
        ProblemKind::bad_argument,
        fmt::format("{}: the quotation mark that opens on line {} never closes.", sheet, quote_line)};
  if (!row.empty() || !field.text.empty() || field.quoted)
    end_row();
  return rows;
}

/// A plain number, written whole: no signs or words around it, a point as decimal sign.
std::optional<double> plain_number(std::string_view text) {
  double value = 0;
  const auto [end, error] =
      std::from_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed);
  if (error != std::errc{} || end != text.data() + text.size() || !std::isfinite(value))
    return std::nullopt;
  return value;
}

/// Codes such as 007 are words: as a number they would lose their zeros.
bool is_code(std::string_view text) {
  return text.size() > 1 && text[0] == '0' && text[1] != '.';
}

Cell cell_of(Field&& field) {
  if (!field.quoted && !is_code(field.text))
    if (const auto number = plain_number(field.text))
      return Cell::of_number(*number);
  return Cell::of_text(std::move(field.text));
}

std::string harmless(const Cell& cell) {
  std::string text = to_text(cell);
  constexpr std::string_view starts = "=+-@\t\r";
  if (cell.kind == CellKind::text && starts.find(text.front()) != std::string_view::npos &&
      !plain_number(text))
    text.insert(text.begin(), '\'');
  return text;
}

} // namespace

Result<Table> table_from_csv(std::string_view text, std::string sheet) {
  constexpr std::string_view mark = "\xEF\xBB\xBF";
  if (text.substr(0, mark.size()) == mark)
    text.remove_prefix(mark.size());
  if (!is_utf8(text))
    return Problem{ProblemKind::bad_argument,
                   fmt::format("{}: the text is not UTF-8; save the file again as UTF-8.", sheet)};
  auto rows = rows_of(text, delimiter_of(text), sheet);
  if (!rows)
    return rows.error();
  std::size_t columns = 0;
  for (const Row& row : rows.value())
    columns = std::max(columns, row.size());
  Table table(Place{std::move(sheet), 1, 0}, rows.value().size(), columns);
  for (std::size_t r = 0; r < rows.value().size(); ++r)
    for (std::size_t c = 0; c < rows.value()[r].size(); ++c)
      table.at(r, c) = cell_of(std::move(rows.value()[r][c]));
  return table;
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
      const bool quote = (cell.kind == CellKind::text && plain_number(text) && !is_code(text)) ||
                         text.find_first_of(",\"\r\n;\t") != std::string::npos;
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
