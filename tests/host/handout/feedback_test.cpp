// A handout in an office that does not have the extension, and after a way through .xlsx.

#include "base/text.hpp"
#include "handout/handout_season.hpp"
#include "harness/host.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/sheet/XConditionalFormats.hpp>
#include <gmock/gmock.h>

namespace wetspell::host {
namespace {

using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using ::testing::HasSubstr;
using ::testing::Not;

driver::Office& bare() {
  static driver::Office office(withoutExtension());
  return office;
}

void begin(const driver::Document& document) {
  document.setText(visit::pool, "P2");
  document.type(visit::date, "2026-04-18");
}

std::string feedback(const driver::Document& document) {
  return document.read(visit::feedback).text;
}

TEST(HandoutFeedback, IsBlankUntilSomethingIsTyped) {
  const auto document = handoutIn(bare(), handoutSeason());
  EXPECT_EQ(feedback(document), "");
  EXPECT_EQ(document.read(visit::person).text, "");
  document.setText(visit::pool, "P2");
  EXPECT_EQ(feedback(document), "Which day?");
  EXPECT_EQ(document.read(visit::person).text, "RW");
  document.type(visit::date, "2026-04-18");
  EXPECT_EQ(feedback(document), "");
  document.setText(visit::pool, "");
  EXPECT_EQ(feedback(document), "Which pool?");
  EXPECT_EQ(document.read(visit::person).text, "RW") << "or nobody could be asked";
  document.type(visit::date, "");
  EXPECT_EQ(document.read(visit::person).text, "");
}

TEST(HandoutFeedback, SaysMeanSpreadAndArea) {
  const auto document = handoutIn(bare(), handoutSeason());
  begin(document);
  document.type(visit::first, "52.5");
  EXPECT_EQ(feedback(document), "Mean 52.5 °F.");
  document.type(visit::middle, "51");
  document.type(visit::other, "53");
  EXPECT_EQ(feedback(document), "Mean 52.2 °F, apart by 2 °F."); // (52.5 + 51 + 53) / 3 = 52.1667
  document.type(visit::other, "11.5 °C");
  EXPECT_EQ(feedback(document), "") << "a mean of two of three would be another number";
  document.type(visit::other, "");
  document.type(visit::middle, "");
  document.type(visit::first, "");
  document.type(visit::length, "60");
  document.type(visit::width, "30");
  EXPECT_EQ(feedback(document), "Area about 1414 ft²."); // pi / 4 * 60 * 30 = 1413.7
  document.setText(visit::sizeBy, "paces");
  document.type(visit::length, "12");
  document.type(visit::width, "6");
  EXPECT_EQ(feedback(document), "Area about 1414 ft² by your paces.") << "a pace of 5 ft";
}

TEST(HandoutFeedback, CountsStepsAsHalfPaces) {
  const auto document = handoutIn(bare(), handoutSeason("US customary", "steps"));
  EXPECT_NEAR(document.read("You.I4").value, 5, 1e-12) << "100 ft in 40 steps";
  begin(document);
  document.setText(visit::sizeBy, "paces");
  document.type(visit::length, "24");
  document.type(visit::width, "12");
  EXPECT_EQ(feedback(document), "Area about 1414 ft² by your paces.");
  document.type("You.D4", "");
  EXPECT_EQ(feedback(document), "How long is your pace? Walk a taped course (sheet You).");
}

TEST(HandoutFeedback, AsksAtOnceAboutWhatIsDoubtful) {
  const auto document = handoutIn(bare(), handoutSeason());
  begin(document);
  const auto asks = [&](const char* cell, const std::string& typed, const std::string& words) {
    const std::string before = document.read(cell).formula;
    document.type(cell, typed);
    EXPECT_THAT(feedback(document), HasSubstr(words)) << cell << ": " << typed;
    document.type(cell, before);
    EXPECT_THAT(feedback(document), Not(HasSubstr(words))) << cell << ": " << before;
  };
  asks(visit::date, "2090-04-18", "A day to come?");
  asks(visit::date, "2025-04-18", "Another year than 2026?");
  document.type(visit::start, "10:00");
  document.type(visit::end, "10:40");
  asks(visit::end, "9:40", "Done before you began?");
  document.type(visit::first, "52");
  document.type(visit::middle, "52");
  asks(visit::middle, "57", "Temperatures more than 4.5 °F apart: read again?"); // 2.5 °C
  asks(visit::middle, "88", "read in the other unit?");
  asks(visit::depth, "200", "Depth is more than the limit of 196.9 in: read again?"); // 5 m
  asks(visit::depth, "48", "Deeper than 47.2 in is rare: is it right?");              // 1.2 m
  asks(visit::depth, "37", "Do not wade deeper than 36 in.");
  asks(visit::water, "no standing water", "No standing water, yet readings of it?");
  document.type(visit::length, "60");
  document.type(visit::width, "30");
  asks(visit::width, "70", "Wider than long: the other way round?");
  asks(visit::length, "900", "Longer than 820.21 ft: read again?"); // 250 m
  document.setText(visit::isolated, "yes");
  document.setText(visit::joined, "nothing");
  asks(visit::joined, "a stream", "Isolated, yet joined to other water?");
  EXPECT_THAT(feedback(document), Not(HasSubstr("?")));
}

TEST(HandoutFeedback, WorksInMetricUnits) {
  const auto document = handoutIn(bare(), handoutSeason("metric"));
  EXPECT_EQ(document.read("Visits.K3").text, "Depth (cm)");
  EXPECT_NEAR(document.read("You.I4").value, 1.524, 1e-4) << "5 ft";
  begin(document);
  document.type(visit::first, "10");
  document.type(visit::middle, "13");
  document.type(visit::depth, "100");
  document.type(visit::length, "20");
  document.type(visit::width, "10");
  EXPECT_EQ(feedback(document),
            "Temperatures more than 2.5 °C apart: read again? Do not wade deeper than 91.4 cm. "
            "Mean 11.5 °C, apart by 3 °C. Area about 157.1 m²."); // pi / 4 * 200 = 157.08
}

TEST(HandoutFeedback, ChecksCountsOfLife) {
  const auto document = handoutIn(bare(), handoutSeason());
  document.setText("Life.B4", "P2");
  EXPECT_EQ(document.read("Life.A4").text, "Which day? Which animal? How many? (0: looked for and not seen)");
  document.type("Life.C4", "2026-04-18");
  document.setText("Life.F4", "wood frog");
  document.type("Life.H4", "0");
  EXPECT_EQ(document.read("Life.A4").text, "");
  document.type("Life.H4", "14");
  document.type("Life.I4", "11");
  document.type("Life.J4", "12");
  EXPECT_THAT(document.read("Life.A4").text, HasSubstr("cannot be more than the smaller count"));
}

TEST(HandoutFeedback, IsTheSameAfterAWayThroughXlsx) {
  const auto stored = reopened(handoutIn(bare(), handoutSeason()), ".xlsx", bare());
  begin(stored);
  stored.type(visit::first, "52.5");
  stored.type(visit::middle, "60");
  EXPECT_EQ(stored.read(visit::person).text, "RW");
  EXPECT_EQ(feedback(stored),
            "Temperatures more than 4.5 °F apart: read again? Mean 56.3 °F, apart by 7.5 °F.");
}

/// Whether the first visit's feedback has the look of a doubt.
bool looksDoubtful(const driver::Document& document) {
  const auto sheets = document.model()->getSheets();
  const Reference<css::beans::XPropertySet> visits(
      Reference<css::container::XNameAccess>(sheets, UNO_QUERY_THROW)->getByName("Visits"), UNO_QUERY_THROW);
  const Reference<css::sheet::XConditionalFormats> looks(visits->getPropertyValue("ConditionalFormats"),
                                                         UNO_QUERY_THROW);
  const auto all = looks->getConditionalFormats();
  const Reference<css::container::XIndexAccess> entries(all[0], UNO_QUERY_THROW);
  const Reference<css::beans::XPropertySet> rule(entries->getByIndex(0), UNO_QUERY_THROW);
  rtl::OUString formula;
  rule->getPropertyValue("Formula1") >>= formula;
  document.type("Visits.AZ4", "=" + addin::fromOffice(formula)); // it is told as a person would type it
  EXPECT_EQ(document.read("Visits.AZ4").error, 0);
  return document.read("Visits.AZ4").value != 0;
}

TEST(HandoutFeedback, LooksDoubtfulOnlyWhereItAsks) {
  for (const char* format : {".ods", ".xlsx"}) {
    const auto stored = reopened(handoutIn(bare(), handoutSeason()), format, bare());
    begin(stored);
    stored.type(visit::first, "52.5");
    EXPECT_EQ(feedback(stored), "Mean 52.5 °F.");
    EXPECT_FALSE(looksDoubtful(stored)) << format;
    stored.type(visit::middle, "60");
    EXPECT_THAT(feedback(stored), HasSubstr("read again?"));
    EXPECT_TRUE(looksDoubtful(stored)) << format;
  }
}

} // namespace
} // namespace wetspell::host
