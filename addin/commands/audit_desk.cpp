// The audit of an open workbook.

#include "audit/audit_page.hpp"
#include "audit/blocks.hpp"
#include "audit/headings_page.hpp"
#include "audit/tidy_pages.hpp"
#include "commands/desk.hpp"
#include "sheet/owned.hpp"
#include "sheet/read_sheets.hpp"
#include "sheet/undo_step.hpp"
#include "table/day.hpp"

namespace wetspell::addin {

namespace {

struct Audited {
  Corrections corrections;
  Audit audit;
};

Audited look(const SheetDocument& document, const std::string& name, const Progress& progress) {
  Audited audited{correctionsIn(document), {}};
  AuditOptions options;
  options.given = &audited.corrections.map;
  options.today = serial_of_today();
  options.progress = progress;
  audited.audit = wetspell::audit(name, tablesOf(document), options);
  if (audited.audit.cancelled)
    refuse("The audit was cancelled; nothing was written.");
  return audited;
}

} // namespace

Audit auditSheets(const SheetDocument& document, const std::string& name, const Progress& progress) {
  return look(document, name, progress).audit;
}

Audit auditDocument(const SheetDocument& document, const std::string& name, const Progress& progress) {
  requireChangeable(document);
  for (const std::string block : {auditBlock, headingsBlock})
    if (const auto owned = ownedBlock(document, block))
      requireUnprotected(*owned);
  for (const TableKind kind : tidyKinds)
    if (const auto owned = ownedBlock(document, tidyBlock(kind)))
      requireUnprotected(*owned);
  Audited audited = look(document, name, progress);
  OneUndoStep step(document, "Audit the workbook");
  {
    const UndoPart part(document);
    writeAuditPage(document, audited.audit);
  }
  {
    const UndoPart part(document);
    writeHeadingsPage(document, audited.audit, audited.corrections);
  }
  writeTidyPages(document, audited.audit);
  step.keep();
  return std::move(audited.audit);
}

} // namespace wetspell::addin
