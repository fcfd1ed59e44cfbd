// The page to read before going out: how to fill in, how to measure, what to take care of.
#include "cautions.hpp"
#include "handout_plan.hpp"
#include "record_sheet.hpp"

#include "quantity/print.hpp"

#include <fmt/format.h>

namespace wetspell::workbook::handout {
namespace {

constexpr std::size_t text = 2; // column

class Page {
public:
  explicit Page(Sheet& sheet) : sheet_(sheet) {}

  void section(std::string title) {
    row(0.35, {}, {});
    row(0.8, text_cell(Look::section, std::move(title)), text_cell(Look::section, {}));
  }
  void line(std::string title, std::string words) {
    row(0, text_cell(Look::step, std::move(title)), text_cell(Look::step_text, std::move(words)));
  }
  void caution(std::string_view about, std::string_view words) {
    row(0, text_cell(Look::caution_head, std::string(about)), text_cell(Look::caution, std::string(words)));
  }
  void row(double height, SheetCell first, SheetCell second) {
    sheet_.rows.push_back(SheetRow{height, {SheetCell{}, std::move(first), std::move(second)}, 1});
  }

private:
  Sheet& sheet_;
};

std::string whose(const HandoutPlan& plan) {
  const Settings& settings = plan.season.settings;
  std::string words = fmt::format("For {}", plan.who().name.empty() ? plan.who().code : plan.who().name);
  if (!settings.programme.empty())
    words += " · " + settings.programme;
  if (settings.season_year)
    words += fmt::format(" · season {}", *settings.season_year);
  return words;
}

void fill_in(Page& page, const HandoutPlan& plan) {
  const Settings& s = plan.season.settings;
  page.section("How to fill it in");
  page.line(
      "1  Type",
      fmt::format("On the sheet Visits, one row a visit; on the sheet Life, one row for each animal and "
                  "form. Numbers alone are taken in {}, {} and {}; write any other unit behind the "
                  "number. A blank means: not read. Your code ({}) appears by itself.",
                  symbol(s.temperature), symbol(s.depth), symbol(s.length), plan.who().code));
  page.line("2  Look",
            "The column Feedback says at once what is worked out and what is doubtful. Read again while "
            "you are there; if it is right, leave it and write in the notes what you saw.");
  const std::size_t n = plan.questions.size();
  page.line("3  Answer",
            n == 0   ? std::string("The sheet Questions is empty: nothing is asked of you at the moment.")
            : n == 1 ? std::string("There is one question for you on the sheet Questions.")
                     : fmt::format("There are {} questions for you on the sheet Questions.", n));
  page.line("4  Send back",
            "Save the file in the format in which you got it, with its sheets and headings as they "
            "are, and send it to your coordinator. Keep a copy until you are told that it arrived.");
}

/// Common practice (no published source), in round numbers of the workbook's units.
void measure(Page& page, const HandoutPlan& plan) {
  const bool metric = plan.season.settings.units == UnitSystem::metric;
  const char* in_from_edge = metric ? "2 to 3 m" : "6 to 10 ft";
  const char* below = metric ? "15 to 20 cm" : "6 to 8 in";
  page.section("How to measure");
  page.line(
      "Temperature",
      fmt::format("Three readings: near one end, in the middle, near the other end; the end ones {} in from "
                  "the edge. Hold the thermometer {} below the surface for two minutes, in the shade of "
                  "your body, and read it in the water.",
                  in_from_edge, below));
  page.line("Depth",
            "At the deepest point that you can reach safely: the stick upright until it stands on firm "
            "ground, not pressed into mud. Not measured: leave it blank, and judge its class.");
  page.line("Full", "How much of what the basin can hold, in per cent, when water stands to its highest mark "
                    "(stained leaves and trunks show it).");
  page.line("Size",
            "Length of the water along its longest line, width at its widest across that line; by tape or "
            "by your paces. One pace is two steps: count each time the same foot comes down.");
  const auto& pace = plan.season.paces[plan.person];
  page.line("Your pace",
            pace ? fmt::format("{}, from {} {} over the taped course (sheet You).",
                               print(pace->pace.value, plan.season.settings.length), pace->runs,
                               pace->runs == 1 ? "walk" : "walks")
                 : std::string("Not known yet. To measure by paces, walk a taped course twice or more "
                               "and write course and counts on the sheet You."));
  page.line("Joined",
            "Go round as far as you can and say how much of the edge you saw: isolated is certain only "
            "when it was all of it.");
  page.line("Life",
            "Count what you see without moving anything. A second person counts alone, without looking at "
            "the first count; then match the two on the spot.");
}

} // namespace

Sheet read_first_sheet(const HandoutPlan& plan) {
  Sheet sheet;
  sheet.name = read_first_name;
  sheet.tab_colour = colour::deep_water;
  sheet.page = PageLook::letter;
  sheet.columns = {{0.5}, {3.2}, {15.8}};
  Page page(sheet);
  page.row(1.3, text_cell(Look::title, "Visits to seasonal pools"), {});
  page.row(0.8, text_cell(Look::subtitle, whose(plan)), {});
  fill_in(page, plan);
  measure(page, plan);
  page.row(0.35, {}, {});
  page.row(0.8, text_cell(Look::caution_head, "Take care"), text_cell(Look::caution_head, {}));
  page.caution("Deep water", deep_water_caution(
                                 print(plan.season.limits[Limit::depth_wading], plan.season.settings.depth)));
  for (const Caution& caution : cautions)
    page.caution(caution.about, caution.text);
  sheet.print = Range{0, 0, text, sheet.rows.size() - 1};
  return sheet;
}

} // namespace wetspell::workbook::handout
