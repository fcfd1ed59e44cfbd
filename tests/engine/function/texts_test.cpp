// The catalogue's texts: whole, in one style, and about what is there.
#include "function/catalogue_text.hpp"
#include "function/function.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <string>

namespace wetspell {

namespace {

/// A text a person reads in the wizard: begins with a capital, a quote or a digit, no stray blanks, no full
/// stop.
void expect_tidy(std::string_view text, std::string_view where, std::size_t longest) {
  SCOPED_TRACE(where);
  SCOPED_TRACE(text);
  ASSERT_FALSE(text.empty());
  EXPECT_FALSE(text.front() >= 'a' && text.front() <= 'z');
  EXPECT_FALSE(text.ends_with('.') || text.ends_with(' ') || text.starts_with(' '));
  EXPECT_EQ(text.find("  "), std::string_view::npos);
  EXPECT_LE(text.size(), longest);
}

bool by_reference(const ParameterSpec& parameter) {
  return parameter.takes == Takes::reading || parameter.takes == Takes::readings ||
         parameter.takes == Takes::rows || parameter.takes == Takes::formula;
}

bool last_only(const ParameterSpec& parameter) {
  return parameter.takes == Takes::tables || parameter.takes == Takes::values;
}

// The names the office's wizard knows; others would end under "Add-in".
const std::set<std::string_view> categories{"Database",    "Date&Time",    "Financial", "Information",
                                            "Logical",     "Mathematical", "Matrix",    "Statistical",
                                            "Spreadsheet", "Text"};

} // namespace

TEST(Texts, functions_are_described) {
  std::set<std::string_view> names, methods, summaries;
  for (const FunctionSpec& function : functions()) {
    SCOPED_TRACE(function.name);
    expect_tidy(function.summary, function.name, 120);
    EXPECT_TRUE(names.insert(function.name).second);
    EXPECT_TRUE(methods.insert(function.method).second);
    EXPECT_TRUE(summaries.insert(function.summary).second);
    EXPECT_TRUE(categories.contains(function.category));
    EXPECT_TRUE(function.blanks.ends_with('.'));
    EXPECT_FALSE(function.examples.empty());
    EXPECT_NE(function.evaluate, nullptr);
  }
}

TEST(Texts, names_follow_from_methods) {
  for (const FunctionSpec& function : functions()) {
    std::string name(function.method);
    std::transform(name.begin(), name.end(), name.begin(),
                   [](char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c; });
    EXPECT_EQ(function.name, "POOL." + name);
    EXPECT_EQ(document_name(function), "ORG.WETSPELL.POOL." + name);
    EXPECT_EQ(function_named(document_name(function)), &function);
    EXPECT_EQ(function_named(function.name), &function);
  }
}

TEST(Texts, parameters_are_described_each_in_its_own_words) {
  for (const FunctionSpec& function : functions()) {
    std::set<std::string_view> names, helps;
    bool optional = false;
    for (const ParameterSpec& parameter : function.parameters) {
      SCOPED_TRACE(std::string(function.name) + ", " + std::string(parameter.name));
      expect_tidy(parameter.help, parameter.name, 110);
      EXPECT_TRUE(names.insert(parameter.name).second);
      EXPECT_TRUE(helps.insert(parameter.help).second);
      EXPECT_FALSE(parameter.standard.ends_with('.'));
      EXPECT_TRUE(parameter.optional() || !optional) << "needed, behind one that may be left out";
      EXPECT_FALSE(parameter.optional() && by_reference(parameter)) << "Calc wants every reference";
      EXPECT_TRUE(!last_only(parameter) || &parameter == &function.parameters.back());
      optional = parameter.optional();
    }
  }
}

TEST(Texts, references_lead_somewhere) {
  for (const FunctionSpec& function : functions()) {
    EXPECT_FALSE(function.see_also.empty()) << function.name;
    for (const std::string_view other : function.see_also) {
      EXPECT_NE(function_named(other), nullptr) << function.name << " refers to " << other;
      EXPECT_NE(other, function.name);
    }
  }
}

TEST(Texts, examples_say_what_they_show_and_no_undeclared_error) {
  for (const FunctionSpec& function : functions()) {
    for (const Example& example : function.examples) {
      EXPECT_FALSE(example.shows.empty()) << example.formula;
      for (const ProblemKind kind : {ProblemKind::bad_argument, ProblemKind::not_enough,
                                     ProblemKind::not_a_number, ProblemKind::no_convergence}) {
        const bool declared = std::any_of(function.errors.begin(), function.errors.end(),
                                          [&](const ErrorSpec& error) { return error.kind == kind; });
        EXPECT_TRUE(example.result != error_value(kind) || declared) << example.formula;
      }
    }
  }
}

TEST(Texts, page_tells_of_every_function_and_argument) {
  const std::string page = functions_markdown();
  for (const FunctionSpec& function : functions()) {
    EXPECT_NE(page.find("## " + std::string(function.name) + "\n"), std::string::npos);
    for (const ParameterSpec& parameter : function.parameters) {
      EXPECT_NE(page.find("| " + std::string(parameter.name) + " | "), std::string::npos) << parameter.name;
    }
  }
  EXPECT_TRUE(page.ends_with("\n") && !page.ends_with("\n\n"));
}

} // namespace wetspell
