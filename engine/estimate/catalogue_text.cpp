#include "estimate/catalogue_text.hpp"

#include "estimate/figure.hpp"

#include <fmt/format.h>

namespace wetspell {

std::string figures_markdown() {
  std::string page =
      "# Figures\n\nEvery figure of a season's summary, in the order of the sheets. Each comes with its "
      "value in the "
      "workbook's unit, its interval (at 95 % unless the note says otherwise, or bounds that hold for "
      "certain), n, "
      "the readings behind it, and a word where there is too little to say anything. A reading with an open "
      "`fix` "
      "finding is in none of them.\n\n| figure | name | what it says | source |\n|---|---|---|---|\n";
  for (const FigureSpec* figure : figure_catalogue())
    page +=
        fmt::format("| {} | `{}` | {} | {} |\n", figure->title, figure->name, figure->help, figure->source);
  return page;
}

} // namespace wetspell
