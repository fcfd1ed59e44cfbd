#include "sheet/as_shown.hpp"

#include "base/text.hpp"
#include "quantity/print.hpp"
#include "quantity/read.hpp"
#include "quantity/unit.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>
#include <com/sun/star/sheet/XUniqueCellFormatRangesSupplier.hpp>
#include <com/sun/star/text/XTextRange.hpp>
#include <com/sun/star/util/NumberFormat.hpp>

#include <algorithm>
#include <cmath>
#include <string_view>

namespace wetspell::addin {

using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

namespace {

enum class Shows { number, percent, more };

struct Format {
  Shows shows = Shows::number;
  double scale = 1; ///< what the number is divided by before it is shown
};

/// What a format for numbers divides them by: 1000 for each comma behind its last place for a digit ("0.0,"
/// shows 12.5 for 12500). Its first part counts, that of numbers above zero.
double scaleOf(std::string_view code) {
  std::string places;
  for (std::size_t at = 0; at < code.size() && code[at] != ';'; ++at)
    if (code[at] == '\\')
      ++at;
    else if (code[at] == '"' || code[at] == '[')
      at = std::min(code.find(code[at] == '"' ? '"' : ']', at + 1), code.size());
    else
      places += code[at];
  double scale = 1;
  const std::size_t last = places.find_last_of("0#?");
  for (std::size_t at = last + 1; last != std::string::npos && at < places.size() && places[at] == ','; ++at)
    scale *= 1000;
  return scale;
}

/// Whether a format may show words or signs beside the digits; "0'" and "0°C" do without quotes.
bool holdsWords(std::string_view code) {
  return std::any_of(code.begin(), code.end(), [](char c) {
    return c == '"' || c == '\\' || c == '\'' || static_cast<unsigned char>(c) >= 0x80;
  });
}

Format formatOf(const Reference<css::beans::XPropertySet>& format) {
  sal_Int16 type = 0;
  format->getPropertyValue("Type") >>= type;
  if ((type & css::util::NumberFormat::PERCENT) != 0)
    return {Shows::percent};
  if ((type & (css::util::NumberFormat::NUMBER | css::util::NumberFormat::DEFINED)) == 0 ||
      (type & css::util::NumberFormat::DATETIME) != 0)
    return {};
  rtl::OUString code;
  format->getPropertyValue("FormatString") >>= code;
  const double scale = scaleOf(fromOffice(code));
  const bool more = holdsWords(fromOffice(code)) || code.startsWith("00") || scale > 1;
  return {more ? Shows::more : Shows::number, scale};
}

std::string_view trimmed(std::string_view text) {
  const std::size_t first = text.find_first_not_of(' ');
  if (first == std::string_view::npos)
    return {};
  return text.substr(first, text.find_last_not_of(' ') - first + 1);
}

/// Words behind a number that begin with its unit ("cm deep"). "in" may be no unit: only with words that are
/// understood.
bool beginsWithUnit(double number, std::string_view words) {
  const std::string_view first = words.substr(0, words.find_first_of(" (,;"));
  if (first == words || !unit_named(first))
    return false;
  return first != "in" || read(plain(number) + " " + std::string(words), {.kind = Kind::depth}).has_value();
}

/// The text for a number that is shown with words around it; empty: it is a number like others.
std::string withWords(double number, const std::string& shown) {
  constexpr std::string_view digits = "0123456789";
  const std::size_t first = shown.find_first_of(digits);
  if (first == std::string::npos)
    return {};
  const std::size_t last = shown.find_last_of(digits);
  const std::string_view before = trimmed(std::string_view(shown).substr(0, first));
  const std::string_view after = trimmed(std::string_view(shown).substr(last + 1));
  if (!after.empty() && (unit_named(after) || beginsWithUnit(number, after))) {
    const bool bare = before.empty() || before == "-";
    return (bare ? plain(number) : std::string(before) + " " + plain(number)) + " " + std::string(after);
  }
  if (!before.empty() && before.find_first_not_of("<>=~") == std::string_view::npos)
    return std::string(before) + plain(number) + std::string(after);
  const std::string whole = plain(std::abs(number));
  const std::string_view middle = std::string_view(shown).substr(first, last + 1 - first);
  const bool padded = middle.size() > whole.size() && middle.ends_with(whole) &&
                      middle.find_first_not_of('0') >= middle.size() - whole.size();
  const bool code = number >= 0 && number == std::floor(number) && after.empty() &&
                    before.find(' ') == std::string_view::npos && // words and a number are no code
                    (padded || (!before.empty() && middle == whole));
  return code ? shown : std::string();
}

} // namespace

void takeAsShown(Table& table, const Reference<css::table::XCellRange>& range,
                 const Reference<css::util::XNumberFormats>& formats) {
  const Reference<css::sheet::XUniqueCellFormatRangesSupplier> supplier(range, UNO_QUERY_THROW);
  const Reference<css::container::XIndexAccess> groups = supplier->getUniqueCellFormatRanges();
  for (sal_Int32 i = 0; i < groups->getCount(); ++i) {
    const Reference<css::sheet::XSheetCellRanges> group(groups->getByIndex(i), UNO_QUERY_THROW);
    sal_Int32 key = 0;
    Reference<css::beans::XPropertySet>(group, UNO_QUERY_THROW)->getPropertyValue("NumberFormat") >>= key;
    const Format format = formatOf(formats->getByKey(key));
    if (format.shows == Shows::number)
      continue;
    for (const css::table::CellRangeAddress& part : group->getRangeAddresses())
      for (sal_Int32 row = part.StartRow; row <= part.EndRow; ++row)
        for (sal_Int32 column = part.StartColumn; column <= part.EndColumn; ++column) {
          Cell& cell = table.at(static_cast<std::size_t>(row), static_cast<std::size_t>(column));
          if (cell.kind() != CellKind::number)
            continue;
          if (format.shows == Shows::percent) {
            cell = Cell::of_text(plain(cell.number() * 100) + "%");
            continue;
          }
          const Reference<css::text::XTextRange> shown(range->getCellByPosition(column, row),
                                                       UNO_QUERY_THROW);
          const std::string words = fromOffice(shown->getString());
          const double number = cell.number() / format.scale;
          if (std::string text = withWords(number, words); !text.empty())
            cell = Cell::of_text(std::move(text));
          else if (format.scale > 1)
            cell = Cell::of_number(number);
        }
  }
}

} // namespace wetspell::addin
