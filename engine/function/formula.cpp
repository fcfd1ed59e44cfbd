#include "function/formula.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>

namespace wetspell {

namespace {

bool is_name(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_' || c == '.';
}

/// Where the quoted part that begins at `at` ends: one behind its closing quote. A doubled quote is one
/// inside.
std::size_t behind_quotes(std::string_view text, std::size_t at) {
  const char quote = text[at];
  for (++at; at < text.size(); ++at) {
    if (text[at] != quote) {
      continue;
    }
    if (at + 1 < text.size() && text[at + 1] == quote) {
      ++at;
      continue;
    }
    return at + 1;
  }
  return text.size();
}

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && (text.front() == ' ' || text.front() == '\n')) {
    text.remove_prefix(1);
  }
  while (!text.empty() && (text.back() == ' ' || text.back() == '\n')) {
    text.remove_suffix(1);
  }
  return text;
}

/// "A1", "$Visits.B2:D2", "'My sheet'.A1", "my_range": nothing but names, quotes and the signs of an address.
bool is_reference(std::string_view text) {
  for (std::size_t at = 0; at < text.size();) {
    if (text[at] == '\'') {
      at = behind_quotes(text, at);
    } else if (is_name(text[at]) || text[at] == '$' || text[at] == ':' || text[at] == '#' ||
               static_cast<unsigned char>(text[at]) >= 0x80) {
      ++at;
    } else {
      return false;
    }
  }
  return !text.empty();
}

std::string unquoted(std::string_view text) {
  std::string content;
  for (std::size_t at = 1; at + 1 < text.size(); ++at) {
    content += text[at];
    if (text[at] == '"') {
      ++at;
    }
  }
  return content;
}

WrittenArgument argument_from(std::string_view text) {
  text = trimmed(text);
  if (text.empty()) {
    return {};
  }
  if (text.front() == '"' && behind_quotes(text, 0) == text.size()) {
    return {.form = Written::text, .number = 0, .text = unquoted(text)};
  }
  double number = 0;
  const auto end = text.data() + text.size();
  if (const auto [stop, error] = std::from_chars(text.data(), end, number);
      error == std::errc{} && stop == end && text.front() != 'i' && text.front() != 'n') {
    return {.form = Written::number, .number = number, .text = std::string(text)};
  }
  return {.form = is_reference(text) ? Written::reference : Written::expression,
          .number = 0,
          .text = std::string(text)};
}

/// The arguments of the call whose opening parenthesis stands at `open`.
std::vector<WrittenArgument> arguments_from(std::string_view formula, std::size_t open) {
  std::vector<WrittenArgument> arguments;
  std::size_t begin = open + 1;
  int depth = 0;
  for (std::size_t at = begin; at < formula.size();) {
    const char c = formula[at];
    if (c == '"' || c == '\'') {
      at = behind_quotes(formula, at);
      continue;
    }
    if (depth == 0 && (c == ';' || c == ')')) {
      const std::string_view text = formula.substr(begin, at - begin);
      if (c == ';' || !arguments.empty() || !trimmed(text).empty()) {
        arguments.push_back(argument_from(text));
      }
      if (c == ')') {
        return arguments;
      }
      begin = at + 1;
    }
    depth += c == '(' || c == '{' ? 1 : 0;
    depth -= c == ')' || c == '}' ? 1 : 0;
    ++at;
  }
  return arguments;
}

bool by_reference(Takes takes) {
  return takes == Takes::reading || takes == Takes::readings || takes == Takes::rows ||
         takes == Takes::formula;
}

} // namespace

std::vector<WrittenCall> calls_in(std::string_view formula) {
  std::vector<WrittenCall> calls;
  for (std::size_t at = 0; at < formula.size();) {
    if (formula[at] == '"' || formula[at] == '\'') {
      at = behind_quotes(formula, at);
      continue;
    }
    if (!is_name(formula[at])) {
      ++at;
      continue;
    }
    const std::size_t begin = at;
    while (at < formula.size() && is_name(formula[at])) {
      ++at;
    }
    const std::string_view name = formula.substr(begin, at - begin);
    if (at < formula.size() && formula[at] == '(' && name.find('.') != std::string_view::npos) {
      if (const FunctionSpec* function = function_named(name)) {
        calls.push_back({function, arguments_from(formula, at)});
      }
    }
  }
  return calls;
}

boost::outcome_v2::checked<std::vector<Argument>, Refused> arguments_of(const WrittenCall& call,
                                                                        const CellSource& source) {
  const auto refuse = [&](bool unseen, std::string text) {
    return Refused{{ProblemKind::bad_argument, fmt::format("{}: {}", call.function->name, text)}, unseen};
  };
  std::vector<Argument> arguments;
  for (std::size_t i = 0; i < call.arguments.size(); ++i) {
    const WrittenArgument& written = call.arguments[i];
    if (call.function->parameters.empty()) {
      return refuse(false, "takes no argument.");
    }
    const ParameterSpec& parameter =
        call.function->parameters[std::min(i, call.function->parameters.size() - 1)];
    const bool cell_needed = by_reference(parameter.takes);
    switch (written.form) {
    case Written::left_out:
      arguments.emplace_back();
      continue;
    case Written::number:
    case Written::text:
    case Written::expression:
      if (cell_needed) {
        return refuse(false, fmt::format("\"{}\" takes a cell and not what stands in the formula itself, {}; "
                                         "write it into a cell, or ask POOL.ASIF.",
                                         parameter.name, written.text));
      }
      if (written.form == Written::expression) {
        return refuse(true,
                      fmt::format("\"{}\" is worked out inside the formula ({}), where nobody can look; "
                                  "put that part into a cell of its own.",
                                  parameter.name, written.text));
      }
      arguments.push_back(Argument::of(written.form == Written::number ? Cell::of_number(written.number)
                                                                       : Cell::of_text(written.text)));
      continue;
    case Written::reference:
      break;
    }
    auto block = source.find(written.text);
    if (!block) {
      return refuse(true,
                    fmt::format("\"{}\" leads to {}, which is not a range of cells that can be looked up "
                                "from here.",
                                parameter.name, written.text));
    }
    Argument argument{.given = true,
                      .rows = block->rows,
                      .columns = block->columns,
                      .cells = std::move(block->cells),
                      .formula = std::move(block->formula),
                      .source = {}};
    if (parameter.takes == Takes::formula) {
      argument.source =
          std::shared_ptr<const CellSource>(std::shared_ptr<void>{}, &source); // not ours to keep
    }
    if (!cell_needed && argument.blank()) {
      argument = Argument::of(Cell::of_number(0));
    }
    arguments.push_back(std::move(argument));
  }
  return arguments;
}

} // namespace wetspell
