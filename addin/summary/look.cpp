#include "summary/look.hpp"

#include "base/text.hpp"
#include "templates/look.hpp"

#include <com/sun/star/awt/FontSlant.hpp>
#include <com/sun/star/awt/FontWeight.hpp>
#include <com/sun/star/beans/XMultiPropertySet.hpp>
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNameContainer.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/lang/XMultiServiceFactory.hpp>
#include <com/sun/star/sheet/XSpreadsheetView.hpp>
#include <com/sun/star/sheet/XViewFreezable.hpp>
#include <com/sun/star/style/XStyleFamiliesSupplier.hpp>
#include <com/sun/star/table/BorderLine2.hpp>
#include <com/sun/star/table/CellHoriJustify.hpp>
#include <com/sun/star/table/CellVertJustify2.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>

#include <algorithm>
#include <charconv>
#include <map>
#include <vector>

namespace wetspell::addin {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;
namespace colour = workbook::colour;

namespace {

struct Spec {
  float points;
  bool bold, italic, wrap;
  std::string_view ink, ground; ///< no ground: paper
  bool line;                    ///< below
};

Spec specOf(Dress as) {
  switch (as) {
  case Dress::title:
    return {18, true, false, false, colour::deep_water, {}, false};
  case Dress::words:
    return {9.5F, false, false, false, colour::quiet_ink, {}, false};
  case Dress::section:
    return {13, true, false, false, colour::deep_water, {}, false};
  case Dress::heading:
    return {9.5F, true, false, false, colour::paper, colour::deep_water, false};
  case Dress::unit:
  case Dress::unit_in_words:
    return {9, false, true, false, colour::deep_water, colour::mist, true};
  case Dress::text:
  case Dress::in_words:
  case Dress::link:
  case Dress::picture:
    break;
  }
  return {9.5F, false, false, false, colour::ink, {}, true};
}

Reference<css::beans::XPropertySet> properties(const Reference<css::uno::XInterface>& of) {
  return {of, UNO_QUERY_THROW};
}

Reference<css::table::XColumnRowRange> columnsAndRows(const Reference<css::uno::XInterface>& of) {
  return {of, UNO_QUERY_THROW};
}

} // namespace

sal_Int32 colourOf(std::string_view palette) {
  sal_Int32 value = 0;
  std::from_chars(palette.data() + 1, palette.data() + palette.size(), value, 16);
  return value;
}

void align(const Reference<css::uno::XInterface>& cells, Side side) {
  properties(cells)->setPropertyValue(
      "HoriJustify",
      Any(side == Side::left ? css::table::CellHoriJustify_LEFT : css::table::CellHoriJustify_RIGHT));
}

constexpr sal_Int16 clear = 250; // 1/100 mm

void indent(const Reference<css::uno::XInterface>& cells) {
  align(cells, Side::left);
  properties(cells)->setPropertyValue("ParaIndent", Any(clear));
}

void wrap(const Reference<css::uno::XInterface>& cells) {
  properties(cells)->setPropertyValue("IsTextWrapped", Any(true));
}

void dress(const Reference<css::uno::XInterface>& cells, Dress as) {
  const Spec spec = specOf(as);
  css::table::BorderLine2 line;
  constexpr sal_Int16 fine = 18; // 1/100 mm
  line.Color = colourOf(colour::reed);
  line.OuterLineWidth = spec.line ? fine : sal_Int16(0);
  line.LineWidth = spec.line ? fine : 0;
  std::map<rtl::OUString, Any> looks{
      {"CharHeight", Any(spec.points)},
      {"CharWeight", Any(spec.bold ? css::awt::FontWeight::BOLD : css::awt::FontWeight::NORMAL)},
      {"CharPosture", Any(spec.italic ? css::awt::FontSlant_ITALIC : css::awt::FontSlant_NONE)},
      {"CharColor", Any(colourOf(spec.ink))},
      {"CellBackColor", Any(spec.ground.empty() ? sal_Int32(-1) : colourOf(spec.ground))},
      {"VertJustify", Any(css::table::CellVertJustify2::CENTER)},
      {"BottomBorder", Any(line)}};
  if (as == Dress::picture) // its signs stand below each other only where all have one width
    looks["CharFontName"] <<= rtl::OUString("DejaVu Sans Mono");
  if (as == Dress::link)
    looks["CharUnderline"] <<= sal_Int16(1);
  if (as == Dress::in_words || as == Dress::unit_in_words)
    looks["ParaIndent"] <<= clear;
  if (as == Dress::link || looks.count("ParaIndent") > 0)
    looks["HoriJustify"] <<= css::table::CellHoriJustify_LEFT;
  // All at once: one change to undo, and a tenth of the time.
  std::vector<rtl::OUString> names;
  std::vector<Any> values;
  for (const auto& [name, value] : looks) {
    names.push_back(name);
    values.push_back(value);
  }
  Reference<css::beans::XMultiPropertySet>(cells, UNO_QUERY_THROW)
      ->setPropertyValues({names.data(), static_cast<sal_Int32>(names.size())},
                          {values.data(), static_cast<sal_Int32>(values.size())});
}

sal_Int32 figureFormat(const SheetDocument& document, Figured figured, const Settings& settings, bool whole) {
  if (figured == Figured::date)
    return dateFormat(document, false);
  if (figured == Figured::words)
    return textFormat(document);
  const bool counted = figured == Figured::count || figured == Figured::days;
  const int decimals = counted && !whole ? 1 : shown_decimals(figured, settings);
  return numberFormat(document, decimals == 0
                                    ? std::string("#,##0")
                                    : "#,##0." + std::string(static_cast<std::size_t>(decimals), '0'));
}

void setFormat(const Reference<css::uno::XInterface>& cells, sal_Int32 format) {
  properties(cells)->setPropertyValue("NumberFormat", Any(format));
}

void setWidth(const Corner& column, sal_Int32 width) {
  const Reference<css::uno::XInterface> found(
      columnsAndRows(column.sheet)->getColumns()->getByIndex(column.column), UNO_QUERY_THROW);
  properties(found)->setPropertyValue("Width", Any(width));
}

sal_Int32 widthFor(std::size_t signs, sal_Int32 least, sal_Int32 most) {
  constexpr sal_Int32 sign = 165, padding = 500; // 1/100 mm, at nine and a half points
  return std::clamp(static_cast<sal_Int32>(std::min<std::size_t>(signs, 200)) * sign + padding, least, most);
}

void setHeights(const Reference<css::table::XCellRange>& rows, sal_Int32 height) {
  properties(columnsAndRows(rows)->getRows())->setPropertyValue("Height", Any(height));
}

void findHeights(const Reference<css::table::XCellRange>& rows) {
  properties(columnsAndRows(rows)->getRows())->setPropertyValue("OptimalHeight", Any(true));
}

void setPage(const SheetDocument& document, const Reference<css::sheet::XSpreadsheet>& sheet, PageKind kind) {
  const rtl::OUString name(kind == PageKind::one_page   ? rtl::OUString("Wetspell page")
                           : kind == PageKind::one_wide ? rtl::OUString("Wetspell list")
                                                        : rtl::OUString("Wetspell wide list"));
  const Reference<css::container::XNameContainer> styles(
      Reference<css::style::XStyleFamiliesSupplier>(document, UNO_QUERY_THROW)
          ->getStyleFamilies()
          ->getByName("PageStyles"),
      UNO_QUERY_THROW);
  if (!styles->hasByName(name)) {
    const Reference<css::uno::XInterface> made =
        Reference<css::lang::XMultiServiceFactory>(document, UNO_QUERY_THROW)
            ->createInstance("com.sun.star.style.PageStyle");
    styles->insertByName(name, Any(made));
    const auto page = properties(made);
    sal_Int32 width = 0, height = 0;
    page->getPropertyValue("Width") >>= width;
    page->getPropertyValue("Height") >>= height;
    page->setPropertyValue("IsLandscape", Any(true));
    page->setPropertyValue("Width", Any(std::max(width, height)));
    page->setPropertyValue("Height", Any(std::min(width, height)));
    for (const char* side : {"LeftMargin", "RightMargin", "TopMargin", "BottomMargin"})
      page->setPropertyValue(rtl::OUString::createFromAscii(side), Any(sal_Int32(1100)));
    if (kind == PageKind::columns_over_pages) {
      page->setPropertyValue("PageScale", Any(sal_Int16(70)));
    } else {
      page->setPropertyValue("ScaleToPagesX", Any(sal_Int16(1)));
      page->setPropertyValue("ScaleToPagesY", Any(sal_Int16(kind == PageKind::one_page ? 1 : 0)));
    }
  }
  properties(sheet)->setPropertyValue("PageStyle", Any(name));
}

void keepInView(const SheetDocument& document, const Corner& cell) {
  const auto controller = Reference<css::frame::XModel>(document, UNO_QUERY_THROW)->getCurrentController();
  const Reference<css::sheet::XSpreadsheetView> view(controller, UNO_QUERY);
  const Reference<css::sheet::XViewFreezable> frozen(controller, UNO_QUERY);
  if (!view.is() || !frozen.is())
    return;
  const auto before = view->getActiveSheet();
  view->setActiveSheet(cell.sheet);
  if (!frozen->hasFrozenPanes())
    frozen->freezeAtPosition(cell.column, cell.row);
  view->setActiveSheet(before);
}

} // namespace wetspell::addin
