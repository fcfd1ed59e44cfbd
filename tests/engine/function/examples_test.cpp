// Every example of the catalogue gives what the catalogue says. Sources of the numbers stand beside them.
//
// 12 paces over 66 ft are 5.5 ft a pace: University of Kentucky Cooperative Extension, FOR-47, chart.
// Ellipse on 20 by 10: area 157.0796 = pi/4 * 200, edge 48.4422 (semi-axes 10, 5) and 25.5270 (5, 3), from
// the complete elliptic integral worked out with mpmath to 30 digits. Class limits: common practice, no
// source. Conversions: exact factors of NIST SP 811 (1 in = 0.0254 m, 1 ft = 0.3048 m, t/°F = 1.8 t/°C + 32).
#include "example_sheet.hpp"

#include <gtest/gtest.h>

namespace wetspell::test {

struct Case {
  const FunctionSpec* function;
  const Example* example;
};

void PrintTo(const Case& one, std::ostream* out) {
  *out << one.example->formula;
}

std::vector<Case> all_examples() {
  std::vector<Case> all;
  for (const FunctionSpec& function : functions()) {
    for (const Example& example : function.examples) {
      all.push_back({&function, &example});
    }
  }
  return all;
}

class Examples : public ::testing::TestWithParam<Case> {};

TEST_P(Examples, give_what_the_catalogue_states) {
  const Example& example = *GetParam().example;
  const std::string found = ExampleSheet(example).shown(example.formula);
  EXPECT_TRUE(agrees(example.result, found)) << "stated: " << example.result << "\nfound:  " << found;
}

INSTANTIATE_TEST_SUITE_P(Catalogue, Examples, ::testing::ValuesIn(all_examples()), [](const auto& one) {
  std::string name(one.param.function->method);
  return name + std::to_string(one.param.example - one.param.function->examples.data());
});

TEST(Agrees, tells_what_differs) {
  EXPECT_TRUE(agrees("157.0796", "157.07963267948966"));
  EXPECT_FALSE(agrees("157.0797", "157.07963267948966"));
  EXPECT_FALSE(agrees("63", "63.2"));
  EXPECT_FALSE(agrees("", "0"));
  EXPECT_TRUE(agrees("1 | dry // | ", "1 | dry // | "));
  EXPECT_FALSE(agrees("1 | dry", "1 // dry"));
}

} // namespace wetspell::test
