#pragma once
// The sheet 'Page of B07': what is known of one pool, on one printed page.

#include "estimate/summary.hpp"
#include "sheet/sheets.hpp"

#include <com/sun/star/uno/XComponentContext.hpp>

#include <cstdint>
#include <string>

namespace wetspell::addin {

/// Writes the page in place of an older one of the same pool; gives the sheet's name.
std::string writePoolPage(const css::uno::Reference<css::uno::XComponentContext>& context,
                          const SheetDocument& document, const SeasonHistory& history,
                          const CheckReport& report, const PoolSummary& summary);

} // namespace wetspell::addin
