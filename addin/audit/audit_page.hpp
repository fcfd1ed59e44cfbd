#pragma once
// The sheet 'Audit': in words what can be used, then every doubt and every cell left unread, each leading
// there.

#include "audit/audit.hpp"
#include "sheet/sheets.hpp"

namespace wetspell::addin {

void writeAuditPage(const SheetDocument& document, const Audit& audit);

} // namespace wetspell::addin
