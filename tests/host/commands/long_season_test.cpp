// Many visits: the check can be ended from another thread, and the workbook does not work for nothing.

#include "commands/season_in_office.hpp"

#include "base/text.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XCellRangeFormula.hpp>
#include <com/sun/star/sheet/XCellRangeReferrer.hpp>
#include <com/sun/star/sheet/XNamedRange.hpp>
#include <gmock/gmock.h>

#include <algorithm>
#include <array>
#include <atomic>
#include <chrono>
#include <set>
#include <thread>

namespace wetspell::host {
namespace {

using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY_THROW;
using driver::Document;

/// Visits of a lone table without formulas, `every`-th of them with a share over 100 per cent.
Document manyVisits(sal_Int32 rows, sal_Int32 every) {
  Document document = Document::create(office());
  const std::vector<const char*> headings{"Pool",          "Date",          "Person",        "Water",
                                          "Temperature 1", "Temperature 2", "Temperature 3", "Depth (in)",
                                          "Full (%)",      "Length (ft)",   "Width (ft)"};
  Sequence<Sequence<Any>> lines(rows + 1);
  Sequence<Any>* all = lines.getArray();
  all[0].realloc(static_cast<sal_Int32>(headings.size()));
  for (std::size_t c = 0; c < headings.size(); ++c)
    all[0].getArray()[c] <<= rtl::OUString::createFromAscii(headings[c]);
  for (sal_Int32 r = 1; r <= rows; ++r) {
    const sal_Int32 pool = r / 100, visit = r % 100;
    const std::array cells{any("B" + std::to_string(pool)),
                           Any(day(3, 1) + visit),
                           any("P" + std::to_string(pool)),
                           any("standing water"),
                           Any(52.5),
                           Any(51.5),
                           Any(53.0),
                           Any(25.0 - 0.1 * visit),
                           Any(r % every == 0 ? 101.0 + visit : 80.0),
                           Any(62.0),
                           Any(31.0)};
    all[r] = Sequence<Any>(cells.data(), static_cast<sal_Int32>(cells.size()));
  }
  Reference<css::sheet::XCellRangeData>(document.range("A1:K" + std::to_string(rows + 1)), UNO_QUERY_THROW)
      ->setDataArray(lines);
  return document;
}

/// A check that somebody tries to end as soon as it has begun.
void checkImpatiently(const Desk& desk) {
  const auto service = office().service("org.wetspell.SeasonDesk");
  std::atomic<bool> over = false;
  std::thread impatient([&] {
    while (!over) {
      office().call(service, "cancel");
      std::this_thread::sleep_for(std::chrono::milliseconds(5));
    }
  });
  desk.check();
  over = true;
  impatient.join();
}

TEST(LongSeason, IsEndedFromAnotherThreadAndKeepsWhatWasFoundAndAnswered) {
  const Document document = manyVisits(60000, 20);
  const Desk desk(document);
  desk.check();
  const auto all = rowsOnSheet(document);
  ASSERT_GE(all.size(), 3000U);
  const std::string key = all.back().at("key");
  document.setText(cellOnSheet(document, key, "Your answer"), "right as it is");

  checkImpatiently(desk);
  const auto some = rowsOnSheet(document);
  EXPECT_LT(some.size(), 3000U);
  const auto kept =
      std::find_if(some.begin(), some.end(), [&](const auto& row) { return row.at("key") == key; });
  ASSERT_NE(kept, some.end()) << "what somebody answered is not lost";
  EXPECT_EQ(kept->at("answer"), "right as it is");

  desk.check();
  const auto again = rowsOnSheet(document);
  EXPECT_EQ(again.size(), all.size());
  EXPECT_EQ(again.back().at("answer"), "right as it is");
}

/// Volatile cells among what every row is given would have all rows worked out anew at each edit.
TEST(LongSeason, RowsAreGivenNothingThatChangesByItself) {
  const Document document = opened(smallSeason());
  const std::string doubts = document.read(at(Field::visit_doubts, 0)).formula;
  Reference<css::container::XNameAccess> names;
  Reference<css::beans::XPropertySet>(document.model(), UNO_QUERY_THROW)->getPropertyValue("NamedRanges") >>=
      names;
  const auto expectLasting = [](const rtl::OUString& formula, const rtl::OUString& name) {
    for (const char* changing : {"TODAY(", "NOW(", "RAND", "OFFSET(", "INDIRECT("})
      EXPECT_EQ(formula.indexOf(rtl::OUString::createFromAscii(changing)), -1)
          << addin::fromOffice(name) << ": " << addin::fromOffice(formula);
  };
  std::string given = doubts;
  int looked = 0;
  // A name may stand for a formula with further names, which are looked at in their turn.
  std::set<rtl::OUString> known;
  for (bool more = true; more;) {
    more = false;
    for (const rtl::OUString& name : names->getElementNames()) {
      if (given.find(addin::fromOffice(name)) == std::string::npos || !known.insert(name).second)
        continue;
      more = true;
      ++looked;
      const Reference<css::sheet::XNamedRange> named(names->getByName(name), UNO_QUERY_THROW);
      expectLasting(named->getContent(), name);
      given += addin::fromOffice(named->getContent());
      const Reference<css::sheet::XCellRangeReferrer> referrer(named, UNO_QUERY_THROW);
      const Reference<css::sheet::XCellRangeFormula> cells(referrer->getReferredCells(), css::uno::UNO_QUERY);
      if (!cells.is()) // of a formula
        continue;
      for (const auto& row : cells->getFormulaArray())
        for (const rtl::OUString& formula : row)
          expectLasting(formula, name);
    }
  }
  EXPECT_GE(looked, 8) << doubts;
}

} // namespace
} // namespace wetspell::host
