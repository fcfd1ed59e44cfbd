// Every example of the catalogue gives in Calc what the catalogue says. The engine's own test names the
// sources of the numbers (tests/engine/function/examples_test.cpp).

#include "functions/sheet_answers.hpp"

#include "engine/function/example_sheet.hpp"
#include "harness/host.hpp"
#include "table/table.hpp"

#include <algorithm>

namespace wetspell::host {
namespace {

class Example : public HostTest {};

/// The rectangle at H20 that holds an answer of this size.
std::string placeFor(std::string_view result) {
  std::size_t rows = 1;
  std::size_t columns = 1;
  for (std::size_t at = result.find(" // "); at != std::string_view::npos; at = result.find(" // ", at + 1)) {
    ++rows;
  }
  const std::string_view first = result.substr(0, result.find(" // "));
  for (std::size_t at = first.find(" | "); at != std::string_view::npos; at = first.find(" | ", at + 1)) {
    ++columns;
  }
  return fmt::format("H20:{}{}", column_letters(7 + columns - 1), 20 + rows - 1);
}

TEST_F(Example, GivesInCalcWhatTheCatalogueStates) {
  std::size_t run = 0;
  for (const FunctionSpec& function : functions()) {
    for (const wetspell::Example& example : function.examples) {
      const driver::Document sheet = driver::Document::create(office());
      for (const ExampleCell& cell : example.cells) {
        put(sheet, std::string(cell.address), std::string(cell.content));
      }
      const std::string place = placeFor(example.result);
      const std::string formula = "=" + std::string(example.formula);
      if (place == "H20:H20") {
        sheet.setFormula("H20", formula);
      } else {
        putArray(sheet, place, formula);
      }
      const std::string found = answers(sheet, place);
      EXPECT_TRUE(test::agrees(example.result, found))
          << example.formula << "\nstated: " << example.result << "\nfound:  " << found;
      ++run;
    }
  }
  EXPECT_GE(run, functions().size());
}

} // namespace
} // namespace wetspell::host
