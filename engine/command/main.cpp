// wetspell: the command line over the engine.
#include "command/command.hpp"
#include "command/options.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <exception>
#include <new>

namespace wetspell::command {

std::span<const CommandSpec> commands() {
  static const std::array all{
      CommandSpec{"check", "check FILE... [--out DIR] [--format text|csv|json]",
                  "Checks seasons: workbooks (.ods, .xlsx, .fods) through a headless office, a folder of CSV "
                  "tables or\n"
                  "one CSV of visits by the engine alone. Leaves 0 when nothing is to be fixed, 1 when "
                  "something is,\n"
                  "2 when a file could not be read.",
                  check},
      CommandSpec{
          "summarise", "summarise SEASON... [--out DIR] [--format text|csv|json] [--by COLUMNS]",
          "What seasons say: figures of every pool and of the programme, each with its interval and the "
          "readings\nbehind it. With --out also the summarised workbook. Several seasons: trends over the "
          "years "
          "too.",
          summarise},
      CommandSpec{"ask", "ask SEASON [--out DIR]",
                  "What to ask whom: for every person with open findings a short text to paste into a mail.",
                  ask},
      CommandSpec{
          "handout", "handout SEASON --person CODE --out DIR",
          "A small workbook for a volunteer, as .ods and .xlsx: their pools, their pace, the columns that "
          "they fill,\nthe questions to them; it needs no extension. --all instead of --person: one for "
          "everybody.",
          handout},
      CommandSpec{
          "gather", "gather FOLDER --into SEASON [--format text|json]",
          "Takes what came back in a folder into the season's workbook: new rows are added, two versions "
          "of one\nrow are set side by side to choose from, answers go to their findings. The file is "
          "replaced only when\nthe new one is written whole. Leaves 0 when all was read, 1 when "
          "something is to be chosen or could not\nbe read, 2 when nothing was done.",
          gather},
      CommandSpec{"pool", "pool SEASON CODE --out DIR", "The page of one pool, as PDF and PNG.", pool},
      CommandSpec{
          "audit", "audit FILE... [--out DIR] [--map FILE] [--format text|csv|json]",
          "Says what can be used of old sheets, whatever their layout: workbooks (.ods, .xlsx, .xls, "
          ".fods) through a\nheadless office, .csv, .tsv and .txt by the engine alone. --map names a table "
          "of headings as a person\ncorrected it. --out takes the audit, the headings and the rows in our "
          "own layout. Leaves 0 when every row\ncan be used as it is, 1 when not, 2 when a file could not "
          "be read.",
          audit},
      CommandSpec{
          "read", "read --kind KIND [--assume UNIT]",
          "Reads quantities, one a line, from standard input and prints how each is understood, one JSON\n"
          "object a line.",
          read},
      CommandSpec{"walk", "walk FILE [--error METRES]",
                  "Area and edge of a pool from a walk round it (GPX, or a list of latitude, longitude), "
                  "beside those of\n"
                  "the ellipse on its longest line and its width.",
                  walk},
      CommandSpec{"new", "new FILE.ods", "Writes a fresh season workbook.", new_workbook},
      CommandSpec{"rules", "rules [--format text|json|markdown]", "Lists the rules of the check.", rules},
      CommandSpec{"functions", "functions [--format text|json|markdown]", "Lists the cell functions.",
                  functions},
      CommandSpec{"fields", "fields [--format text|json|markdown]", "Lists the columns of all tables.",
                  fields},
      CommandSpec{"limits", "limits [--format text|json|markdown]",
                  "Lists the limits that the rules compare with.", limits},
      CommandSpec{"figures", "figures [--format text|json|markdown]", "Lists the figures of a summary.",
                  figures},
  };
  return all;
}

namespace {

void help() {
  fmt::print("Wetspell checks seasons of pool visits.\n\n");
  for (const CommandSpec& each : commands())
    fmt::print("  wetspell {}\n", each.usage);
  fmt::print("  wetspell --version\n\nwetspell COMMAND --help says more about a command.\n");
}

Exit run(const Arguments& words) {
  if (words.empty()) {
    help();
    return Exit::could_not;
  }
  if (words[0] == "--help" || words[0] == "-h") {
    help();
    return Exit::nothing_to_fix;
  }
  if (words[0] == "--version") {
    fmt::print("wetspell {}\n", WETSPELL_VERSION);
    return Exit::nothing_to_fix;
  }
  const auto found = std::find_if(commands().begin(), commands().end(),
                                  [&](const CommandSpec& each) { return each.name == words[0]; });
  if (found == commands().end())
    return refuse(words[0], "there is no such command; see wetspell --help.");
  return found->run(Arguments(words.begin() + 1, words.end()));
}

} // namespace

} // namespace wetspell::command

int main(int count, char** words) {
  try {
    return static_cast<int>(wetspell::command::run({words + 1, words + count}));
  } catch (const std::bad_alloc&) {
    fmt::print(stderr, "wetspell: this needs more memory than there is; give fewer or smaller files.\n");
  } catch (const std::exception& error) { // a broken pipe: nothing a command could answer
    fmt::print(stderr, "wetspell: {}\n", error.what());
  }
  return static_cast<int>(wetspell::command::Exit::could_not);
}
