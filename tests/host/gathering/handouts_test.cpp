// A handout goes out, is filled in, and comes back.

#include "gathering/came_back.hpp"

#include "base/text.hpp"

#include <gmock/gmock.h>

namespace wetspell::host {
namespace {

using css::uno::Sequence;

constexpr std::size_t held = 6, headings = 3; // visits of the small season; the row of a handout's headings

class Handouts : public CameBack {
protected:
  /// The handout of RW with this ending, opened.
  driver::Document handout(const std::string& ending) const {
    Sequence<rtl::OUString> files;
    desk.call("handout", {any("RW"), css::uno::Any(driver::urlOf(out.path()))}) >>= files;
    for (const auto& entry : std::filesystem::directory_iterator(out.path()))
      if (entry.path().extension() == ending)
        return driver::Document::open(office(), entry.path());
    throw driver::Failure("there is no handout with the ending " + ending);
  }
  /// The cell below a heading (its unit aside).
  static std::string below(const driver::Document& document, const std::string& sheet,
                           const std::string& heading, std::size_t row) {
    for (std::size_t column = 0; column < 60; ++column) {
      const std::string letters = sheet + "." + column_letters(column);
      const std::string text = document.read(letters + std::to_string(headings)).text;
      if (text.substr(0, text.find(" (")) == heading)
        return letters + std::to_string(row);
    }
    ADD_FAILURE() << "no column '" << heading << "' on '" << sheet << "'";
    return sheet + ".A1";
  }
  static std::size_t rowOf(const driver::Document& document, const std::string& key) {
    for (std::size_t row = headings + 1; row < 60; ++row)
      if (document.read(below(document, "Questions", "Key", row)).text == key)
        return row;
    ADD_FAILURE() << "nobody asks about " << key;
    return headings + 1;
  }

  driver::TemporaryFolder out{"wetspell-test-"};
};

class HandoutsOf : public Handouts, public ::testing::WithParamInterface<const char*> {};

TEST_P(HandoutsOf, EitherFormatBringVisitsAndAnswersBack) {
  desk.check();
  const std::string key = only(rowsOnSheet(document), "temperature-decimal-slipped").at("key");
  {
    const driver::Document filled = handout(GetParam());
    filled.setText(below(filled, "Visits", "Pool", headings + 1), "B07");
    filled.type(below(filled, "Visits", "Date", headings + 1), "2026-06-03");
    filled.setText(below(filled, "Visits", "Depth", headings + 1), "a hand deep");
    filled.setText(below(filled, "Questions", "Answer", rowOf(filled, key)), "right as it is");
    filled.store(folder.path() / (std::string("back") + GetParam()));
  }
  const auto told = gather();
  EXPECT_EQ(told["added"]["visits"], 1) << told.dump(2);
  EXPECT_EQ(told["answered"], 1) << told.dump(2);
  EXPECT_TRUE(told["files"][0]["remarks"].empty()) << told.dump(2);
  EXPECT_EQ(cell(Field::visit_pool, held), "B07");
  EXPECT_EQ(cell(Field::visit_person, held), "RW");
  EXPECT_EQ(document.read(at(Field::visit_date, held)).value, day(6, 3));
  EXPECT_EQ(cell(Field::visit_depth, held), "a hand deep");
  EXPECT_EQ(only(rowsOnSheet(document), "temperature-decimal-slipped").at("answer"), "right as it is");
  EXPECT_EQ(gather()["changed"], false);
}

TEST_P(HandoutsOf, AreNoSeasonToGatherInto) {
  send("ada.ods", {{"Pool", "Date", "First person", "Depth"}, {"B07", "2026-06-01", "RW", "12"}});
  const driver::Document mine = handout(GetParam());
  const Desk at{mine};
  const std::string before = snapshot(mine, "");
  EXPECT_THAT(refusal([&] { gather(at); }), ::testing::HasSubstr("This is a handout"));
  EXPECT_TRUE(same(snapshot(mine, ""), before));
}

INSTANTIATE_TEST_SUITE_P(Formats, HandoutsOf, ::testing::Values(".ods", ".xlsx"));

} // namespace
} // namespace wetspell::host
