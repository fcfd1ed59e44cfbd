#pragma once
// The sheet 'Headings': what every heading was taken for, to be corrected with drop-downs.

#include "audit/headings_sheet.hpp"
#include "sheet/sheets.hpp"

namespace wetspell::addin {

/// What a person corrected there; nothing where there is no such sheet. Refuses in words what cannot be
/// understood.
Corrections correctionsIn(const SheetDocument& document);

void writeHeadingsPage(const SheetDocument& document, const Audit& audit, const Corrections& corrections);

} // namespace wetspell::addin
