#pragma once
// The sheet 'Programme this season': in words what it rests on, the programme's figures, what was left out,
// charts.

#include "estimate/summary.hpp"
#include "summary/numbers.hpp"

#include <com/sun/star/uno/XComponentContext.hpp>

namespace wetspell::addin {

void writeProgramme(const css::uno::Reference<css::uno::XComponentContext>& context,
                    const SheetDocument& document, const SeasonHistory& history, const SeasonSummary& summary,
                    const Numbers& numbers);

} // namespace wetspell::addin
