// Fills handouts in as their people do, in an office, and notes what was put in.
//   fill_handouts HANDOUTS OUT PUT_IN.json [SEED]
#include "demo/returns.hpp"
#include "driver/document.hpp"
#include "table/table.hpp"

#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeMovement.hpp>
#include <com/sun/star/sheet/XSheetCellCursor.hpp>
#include <com/sun/star/sheet/XUsedAreaCursor.hpp>
#include <com/sun/star/table/CellAddress.hpp>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <cstdio>
#include <fstream>
#include <map>

namespace {

namespace fs = std::filesystem;
using namespace wetspell;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using driver::Document;
using nlohmann::json;

constexpr std::size_t heading_row = 3; // of every sheet of a handout
constexpr std::size_t columns_looked_at = 60;
constexpr std::size_t most_questions = 100;

/// The letters of the columns by their headings, units aside.
using Columns = std::map<std::string, std::string, std::less<>>;

Columns columns_of(const Document& handout, const std::string& sheet) {
  Columns columns;
  for (std::size_t column = 0; column < columns_looked_at; ++column) {
    const std::string letters = column_letters(column);
    const std::string text = handout.read(fmt::format("{}.{}{}", sheet, letters, heading_row)).text;
    if (!text.empty())
      columns.emplace(text.substr(0, text.find(" (")), letters);
  }
  return columns;
}

/// Types the rows below the headings; gives what was typed, by the fields' names. A handout has no columns
/// for some fields.
json fill(const Document& handout, const std::string& sheet, const std::vector<demo::SheetRow>& rows) {
  const Columns columns = columns_of(handout, sheet);
  json visits = json::array();
  for (std::size_t row = 0; row < rows.size(); ++row) {
    json typed = json::object();
    for (const auto& [field, cell] : rows[row]) {
      const auto column = columns.find(spec(field).heading);
      if (column == columns.end())
        continue;
      const std::string at = fmt::format("{}.{}{}", sheet, column->second, heading_row + 1 + row);
      if (cell.kind() == CellKind::text)
        handout.setText(at, std::string(cell.text()));
      else
        handout.setValue(at, cell.number());
      typed[std::string(spec(field).name)] = to_text(cell);
    }
    visits.push_back(std::move(typed));
  }
  return visits;
}

/// The first question is answered with a word of the list, the others as people do.
json answer(const Document& handout) {
  const Columns columns = columns_of(handout, "Questions");
  const std::string key = columns.at("Key"), to = columns.at("Answer");
  json answers = json::array();
  for (std::size_t row = heading_row + 1; row < heading_row + most_questions; ++row) {
    const std::string asked = handout.read(fmt::format("Questions.{}{}", key, row)).text;
    if (asked.empty())
      break;
    const std::string words = answers.empty() ? "right as it is" : "do not remember";
    handout.setText(fmt::format("Questions.{}{}", to, row), words);
    answers.push_back({{"key", asked}, {"answer", words}});
  }
  return answers;
}

/// Cut and pasted behind the last column, as people do to have it out of the way.
void move_behind(const Document& handout, const std::string& sheet, Field field) {
  const auto on = handout.sheet(sheet);
  const auto cursor = on->createCursor();
  Reference<css::sheet::XUsedAreaCursor>(cursor, UNO_QUERY_THROW)->gotoEndOfUsedArea(false);
  const auto end = Reference<css::sheet::XCellRangeAddressable>(cursor, UNO_QUERY_THROW)->getRangeAddress();
  const std::string letters = columns_of(handout, sheet).at(std::string(spec(field).heading));
  auto column = Reference<css::sheet::XCellRangeAddressable>(
                    handout.range(fmt::format("{}.{}{}", sheet, letters, heading_row)), UNO_QUERY_THROW)
                    ->getRangeAddress();
  column.EndRow = end.EndRow;
  Reference<css::sheet::XCellRangeMovement>(on, UNO_QUERY_THROW)
      ->moveRange({column.Sheet, end.EndColumn + 1, column.StartRow}, column);
}

void fill_all(const fs::path& handouts, const fs::path& out, const fs::path& put_in, std::uint64_t seed) {
  demo::Chance chance(seed);
  const demo::Programme programme = demo::invent_programme(chance);
  driver::Office office;
  json files = json::array();
  for (const demo::Returned& returned : demo::invent_returns(programme, chance)) {
    const Document handout =
        Document::open(office, handouts / ("handout-" + returned.person + returned.ending));
    const std::string sheet = "Visits";
    json file{{"file", returned.file}, {"person", returned.person}};
    file["visits"] = fill(handout, sheet, returned.visits);
    file["answers"] = returned.answers ? answer(handout) : json::array();
    if (returned.moved)
      move_behind(handout, sheet, *returned.moved);
    if (!returned.sheet.empty())
      Reference<css::container::XNamed>(handout.sheet(sheet), UNO_QUERY_THROW)
          ->setName(rtl::OUString::createFromAscii(returned.sheet.c_str()));
    handout.store(out / returned.file);
    files.push_back(std::move(file));
  }
  std::ofstream(put_in, std::ios::binary) << files.dump(2) << "\n";
}

} // namespace

int main(int count, char** words) try {
  if (count < 4) {
    fmt::print(stderr, "fill_handouts HANDOUTS OUT PUT_IN.json [SEED]\n");
    return 2;
  }
  fs::create_directories(words[2]);
  fill_all(words[1], words[2], words[3], count > 4 ? std::stoull(words[4]) : 2026);
  return 0;
} catch (const std::exception& error) {
  std::fputs(error.what(), stderr);
  return 2;
}
