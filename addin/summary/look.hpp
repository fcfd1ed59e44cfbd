#pragma once
// How the sheets of a summary look: few kinds of cells, told apart by weight and place as well as by colour.

#include "estimate/figure.hpp"
#include "sheet/cells.hpp"

namespace wetspell::addin {

enum class Dress { title, words, section, heading, unit, unit_in_words, text, in_words, link, picture };

void dress(const css::uno::Reference<css::uno::XInterface>& cells, Dress as);

/// A colour of the workbook's palette ("#17424e") as the office takes it.
sal_Int32 colourOf(std::string_view palette);

/// The format of numbers counted so; `whole`: there are none with decimals among them.
sal_Int32 figureFormat(const SheetDocument& document, Figured figured, const Settings& settings, bool whole);
enum class Side { left, right };
void align(const css::uno::Reference<css::uno::XInterface>& cells, Side side);
/// Clear of the number on its left.
void indent(const css::uno::Reference<css::uno::XInterface>& cells);
void wrap(const css::uno::Reference<css::uno::XInterface>& cells);
void setFormat(const css::uno::Reference<css::uno::XInterface>& cells, sal_Int32 format);

/// About as wide as so many signs of text need to be, within bounds.
sal_Int32 widthFor(std::size_t signs, sal_Int32 least, sal_Int32 most);
/// Widths and heights in 1/100 mm.
void setWidth(const Corner& column, sal_Int32 width);
void setHeights(const css::uno::Reference<css::table::XCellRange>& rows, sal_Int32 height);
void findHeights(const css::uno::Reference<css::table::XCellRange>& rows);

enum class PageKind {
  columns_over_pages, ///< columns over several pages
  one_wide,           ///< one page across, any down
  one_page,           ///< all of it on one page
};
/// Landscape, with the sheet's name above and page numbers below.
void setPage(const SheetDocument& document, const css::uno::Reference<css::sheet::XSpreadsheet>& sheet,
             PageKind kind);

/// Keeps what stands left of the cell and above it in view, wherever somebody looks at the document.
void keepInView(const SheetDocument& document, const Corner& cell);

} // namespace wetspell::addin
