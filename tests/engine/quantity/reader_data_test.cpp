// What is understood and what is refused, line by line from the tables that the documentation shows too.
#include "reader_data.hpp"

#include "quantity/answer.hpp"
#include "quantity/read.hpp"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <charconv>
#include <cstddef>
#include <fstream>
#include <utility>

namespace wetspell::testing {

namespace {

std::vector<std::string> fields_of(const std::string& line) {
  std::vector<std::string> fields(1);
  for (const char c : line) {
    if (c == '\t')
      fields.emplace_back();
    else
      fields.back() += c;
  }
  return fields;
}

std::string bytes_of(const std::string& text) {
  std::string bytes;
  for (std::size_t i = 0; i < text.size(); ++i) {
    unsigned code = 0;
    if (text.compare(i, 2, "\\x") == 0 &&
        std::from_chars(text.data() + i + 2, text.data() + i + 4, code, 16).ec == std::errc{}) {
      bytes += static_cast<char>(code);
      i += 3;
    } else {
      bytes += text[i];
    }
  }
  return bytes;
}

void expect_value(const std::string& expected, const AnswerValue& value, const char* field) {
  if (expected.empty()) {
    EXPECT_TRUE(std::holds_alternative<std::monostate>(value)) << field;
  } else if (const auto* words = std::get_if<std::string>(&value)) {
    EXPECT_EQ(*words, expected) << field;
  } else if (const auto* number = std::get_if<double>(&value)) {
    EXPECT_DOUBLE_EQ(*number, std::stod(expected)) << field;
  } else {
    ADD_FAILURE() << field << " is missing, expected " << expected;
  }
}

void expect_line(const ReaderLine& line) {
  SCOPED_TRACE(fmt::format("line {}: {} '{}'", line.line, line.kind, line.text));
  const auto kind = kind_named(line.kind);
  ASSERT_TRUE(kind.has_value());
  ReadOptions options{*kind};
  if (!line.assume.empty()) {
    const auto unit = unit_named(line.assume);
    ASSERT_TRUE(unit.has_value());
    options.assume = *unit;
  }
  const Answer a = answer(line.text, read(std::string_view{line.text}, options), *kind);
  EXPECT_EQ(a.text, line.text);
  EXPECT_EQ(a.status, line.status);
  EXPECT_EQ(a.unit, line.unit);
  // An unknown unit is told with the word itself behind the reason.
  EXPECT_EQ(a.reason.substr(0, a.reason.find(" '")), line.reason);
  expect_value(line.si, a.si, "si");
  expect_value(line.si_high, a.si_high, "si_high");
  expect_value(line.count, a.count, "count");
}

} // namespace

std::vector<ReaderLine> reader_lines(const std::string& file) {
  std::ifstream in(std::string(WETSPELL_TESTS_DIR) + "/data/quantity/" + file);
  std::vector<ReaderLine> lines;
  std::string text;
  bool heading = true;
  for (int number = 1; std::getline(in, text); ++number) {
    if (text.starts_with('#'))
      continue;
    if (std::exchange(heading, false))
      continue;
    const auto f = fields_of(text);
    if (f.size() != 9)
      ADD_FAILURE() << file << " line " << number << " has " << f.size() << " columns";
    else
      lines.push_back({number, f[0], f[1], bytes_of(f[2]), f[3], f[4], f[5], f[6], f[7], f[8]});
  }
  return lines;
}

TEST(ReaderData, WhatIsUnderstood) {
  const auto lines = reader_lines("legal.tsv");
  EXPECT_GT(lines.size(), 500U);
  for (const auto& line : lines)
    expect_line(line);
}

TEST(ReaderData, WhatIsRefused) {
  const auto lines = reader_lines("illegal.tsv");
  EXPECT_GT(lines.size(), 250U);
  for (const auto& line : lines) {
    EXPECT_EQ(line.status, "bad") << line.line;
    expect_line(line);
  }
}

} // namespace wetspell::testing
