// A check of many visits: it can be ended from another thread, and writing does not take long.

#include "commands/season_in_office.hpp"

#include "base/text.hpp"

#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <gmock/gmock.h>

#include <array>
#include <atomic>
#include <chrono>
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

TEST(LongSeason, IsEndedFromAnotherThreadAndKeepsWhatWasFound) {
  const Document document = manyVisits(60000, 20);
  const Desk desk(document);
  const auto service = office().service("org.wetspell.SeasonDesk");
  std::atomic<bool> over = false;
  std::thread impatient([&] {
    while (!over) {
      office().call(service, "cancel");
      std::this_thread::sleep_for(std::chrono::milliseconds(5));
    }
  });
  const std::string report = desk.check();
  over = true;
  impatient.join();
  const auto found = rowsOnSheet(document).size();
  EXPECT_LT(found, 3000U);
  desk.check();
  EXPECT_GE(rowsOnSheet(document).size(), 3000U);
}

} // namespace
} // namespace wetspell::host
