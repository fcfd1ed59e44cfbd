// Fixtures of rules: small seasons as text, with the findings that one rule must (and must not) have in them.
// The format is described in tests/data/check/README.md.
#pragma once

#include "check/check.hpp"
#include "quantity/calendar.hpp"

#include <algorithm>
#include <fstream>
#include <stdexcept>
#include <string>
#include <vector>

namespace wetspell::test {

struct ExpectedFinding {
  std::string field; ///< name in the field catalogue
  std::size_t row = 0;
  std::string text; ///< must stand in the message
  std::vector<std::pair<std::string, std::string>> replacements;
};

struct FixtureSection {
  std::string kind; ///< holds, fails, undecided
  int line = 0;
  std::vector<Table> tables;
  std::vector<ExpectedFinding> expected;
};

inline std::string trimmed(const std::string& text) {
  const auto first = text.find_first_not_of(" \t\r");
  return first == std::string::npos ? std::string()
                                    : text.substr(first, text.find_last_not_of(" \t\r") - first + 1);
}

inline std::vector<std::string> split_row(const std::string& line) {
  std::vector<std::string> cells;
  std::size_t from = 0;
  for (;;) {
    const auto bar = line.find('|', from);
    cells.push_back(trimmed(line.substr(from, bar == std::string::npos ? bar : bar - from)));
    if (bar == std::string::npos)
      return cells;
    from = bar + 1;
  }
}

/// Numbers, dates and errors as a sheet would hold them; in double quotes: text whatever it looks like.
inline Cell fixture_cell(const std::string& text) {
  const auto digits = [&](std::size_t from, std::size_t count) {
    return text.size() >= from + count &&
           std::all_of(text.begin() + static_cast<std::ptrdiff_t>(from),
                       text.begin() + static_cast<std::ptrdiff_t>(from + count),
                       [](char c) { return c >= '0' && c <= '9'; });
  };
  if (text.size() >= 2 && text.front() == '"' && text.back() == '"')
    return Cell::of_text(text.substr(1, text.size() - 2));
  if (text.size() > 1 && text.front() == '#')
    return Cell::of_error(text);
  if (text.size() == 10 && digits(0, 4) && text[4] == '-' && digits(5, 2) && text[7] == '-' && digits(8, 2))
    if (const auto serial =
            serial_of({std::stoi(text.substr(0, 4)), static_cast<unsigned>(std::stoi(text.substr(5, 2))),
                       static_cast<unsigned>(std::stoi(text.substr(8, 2)))}))
      return Cell::of_date(*serial);
  const bool number = !text.empty() && text.find_first_not_of("-.0123456789") == std::string::npos &&
                      text.find_first_of("0123456789") != std::string::npos && text.rfind('-') + 1 <= 1 &&
                      std::count(text.begin(), text.end(), '.') <= 1 &&
                      !(text.size() > 1 && text[0] == '0' && text[1] != '.');
  return number ? Cell::of_number(std::stod(text)) : Cell::of_text(text);
}

/// A heading may be given by the field's name, with a unit in brackets behind it.
inline std::string fixture_heading(TableKind kind, const std::string& text) {
  const auto bracket = text.find_first_of("([");
  const auto name = trimmed(text.substr(0, bracket));
  const auto field = field_named(kind, name);
  if (!field)
    throw std::runtime_error("no field \"" + name + "\" in " + std::string(spec(kind).name));
  return std::string(spec(*field).heading) +
         (bracket == std::string::npos ? std::string() : " " + text.substr(bracket));
}

inline Table fixture_table(TableKind kind, const std::vector<std::vector<std::string>>& rows) {
  if (rows.empty())
    throw std::runtime_error("a table without headings");
  Table table(Place{std::string(spec(kind).sheet), 1, 0}, rows.size(), rows.front().size());
  for (std::size_t r = 0; r < rows.size(); ++r) {
    if (rows[r].size() != rows.front().size())
      throw std::runtime_error("row " + std::to_string(r) + " of " + std::string(spec(kind).name) + " has " +
                               std::to_string(rows[r].size()) + " cells, its headings " +
                               std::to_string(rows.front().size()));
    for (std::size_t c = 0; c < rows[r].size(); ++c)
      table.at(r, c) = r == 0 ? Cell::of_text(fixture_heading(kind, rows[0][c])) : fixture_cell(rows[r][c]);
  }
  return table;
}

inline TableKind fixture_kind(const std::string& name) {
  for (const TableSpec& table : tables())
    if (table.name == name)
      return table.table;
  throw std::runtime_error("no table \"" + name + "\"");
}

inline ExpectedFinding expected_finding(const std::string& rest) {
  const auto first = rest.find(' '), second = rest.find(' ', first + 1), quote = rest.find('"', second);
  if (first == std::string::npos || second == std::string::npos || quote == std::string::npos ||
      rest.back() != '"')
    throw std::runtime_error("expected: > finding FIELD ROW \"TEXT\"");
  return {rest.substr(0, first),
          std::stoul(rest.substr(first + 1, second - first)),
          rest.substr(quote + 1, rest.size() - quote - 2),
          {}};
}

inline std::vector<FixtureSection> load_fixture(const std::string& path) {
  std::ifstream file(path);
  if (!file)
    throw std::runtime_error("no fixture " + path);
  std::vector<FixtureSection> sections;
  std::string table;
  std::vector<std::vector<std::string>> rows;
  int number = 0;
  try {
    const auto end_table = [&] {
      if (!table.empty())
        sections.back().tables.push_back(fixture_table(fixture_kind(table), rows));
      table.clear();
      rows.clear();
    };
    for (std::string raw; std::getline(file, raw);) {
      ++number;
      const std::string line = trimmed(raw);
      if (line.empty() || line.starts_with("# "))
        continue;
      if (line.starts_with("== ")) {
        end_table();
        sections.push_back({trimmed(line.substr(3)), number, {}, {}});
      } else if (sections.empty()) {
        throw std::runtime_error("a section must begin first");
      } else if (line.front() == '[' && line.back() == ']') {
        end_table();
        table = line.substr(1, line.size() - 2);
      } else if (line.starts_with("> finding ")) {
        end_table();
        sections.back().expected.push_back(expected_finding(line.substr(10)));
      } else if (line.starts_with("> replace ")) {
        const std::string rest = line.substr(10);
        const auto blank = rest.find(' ');
        if (sections.back().expected.empty() || blank == std::string::npos)
          throw std::runtime_error("expected: > replace FIELD CONTENT, below a finding");
        sections.back().expected.back().replacements.emplace_back(rest.substr(0, blank),
                                                                  trimmed(rest.substr(blank + 1)));
      } else if (!table.empty()) {
        rows.push_back(split_row(line));
      } else {
        throw std::runtime_error("cannot be understood: " + line);
      }
    }
    end_table();
  } catch (const std::exception& problem) {
    throw std::runtime_error(path + ":" + std::to_string(number) + ": " + problem.what());
  }
  return sections;
}

inline std::string fixture_path(std::string_view rule) {
  return std::string(WETSPELL_TESTS_DIR) + "/data/check/" + std::string(rule) + ".txt";
}

/// The day on which the fixtures are checked unless their settings name another.
inline double fixture_today() {
  return serial_of({2026, 11, 24}).value();
}

} // namespace wetspell::test
