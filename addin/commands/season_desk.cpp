// org.wetspell.SeasonDesk: the check and all that can be done with its findings, for macros and programs.

#include "base/service_info.hpp"
#include "base/text.hpp"
#include "check/findings_table.hpp"
#include "commands/desk.hpp"
#include "commands/handouts.hpp"
#include "commands/window.hpp"
#include "exchange/audit_report.hpp"
#include "exchange/gather_report.hpp"
#include "exchange/report.hpp"
#include "exchange/summary_report.hpp"
#include "gather/gather.hpp"
#include "gather/open_folder.hpp"

#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/lang/XServiceInfo.hpp>
#include <cppuhelper/implbase2.hxx>
#include <org/wetspell/XSeasonDesk.hpp>

#include <algorithm>
#include <atomic>
#include <exception>

namespace wetspell::addin {
namespace {

using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using Model = Reference<css::frame::XModel>;

constexpr char implementationName[] = "org.wetspell.impl.SeasonDesk";

/// The engine throws nothing for what a person did; what is left (memory, mostly) must reach the office as
/// its own.
template <class Work> auto guarded(Work work) {
  try {
    return work();
  } catch (const std::exception& error) {
    refuse(error.what());
  }
}

std::string rendered(const Summarised& summed, std::string_view format, const std::string& file) {
  if (format == "json")
    return summary_json(summed.checked.season, summed.summary, file);
  if (format == "csv")
    return summary_csv(summed.checked.season, summed.summary);
  if (format == "text")
    return summary_text(summed.checked.season, summed.summary, file);
  refuse("A summary's format is text, csv or json, not '" + std::string(format) + "'.");
}

std::string rendered(const Checked& checked, std::string_view format, const std::string& file) {
  if (format == "json")
    return report_json(checked.season, checked.report, file);
  if (format == "csv")
    return report_csv(checked.season, checked.report);
  if (format == "text")
    return report_text(checked.season, checked.report, file);
  refuse("A report's format is text, csv or json, not '" + std::string(format) + "'.");
}

std::string rendered(const Audit& audit, std::string_view format) {
  const std::span<const Audit> one(&audit, 1);
  if (format == "json")
    return audit_json(one);
  if (format == "csv")
    return audit_csv(one);
  if (format == "text")
    return audit_text(audit);
  refuse("An audit's format is text, csv or json, not '" + std::string(format) + "'.");
}

Any contentOf(const Cell& cell) {
  if (cell.kind() == CellKind::number || cell.kind() == CellKind::date)
    return Any(cell.number());
  return Any(toOffice(cell.text()));
}

Sequence<Sequence<Any>> tableOf(const Checked& checked) {
  const auto columns = fields(TableKind::findings);
  const Table body = findings_table(checked.season, checked.report, Place{});
  Sequence<Sequence<Any>> table(static_cast<sal_Int32>(body.rows()) + 1);
  Sequence<Any>* lines = table.getArray();
  for (sal_Int32 r = 0; r < table.getLength(); ++r) {
    lines[r].realloc(static_cast<sal_Int32>(columns.size()));
    for (std::size_t c = 0; c < columns.size(); ++c)
      lines[r].getArray()[c] =
          r == 0 ? Any(toOffice(columns[c].heading)) : contentOf(body.at(static_cast<std::size_t>(r) - 1, c));
  }
  return table;
}

class SeasonDesk
    : public WithServiceInfo<implementationName,
                             cppu::WeakImplHelper2<org::wetspell::XSeasonDesk, css::lang::XServiceInfo>> {
public:
  explicit SeasonDesk(const Context& context) : context_(context) {}

  rtl::OUString SAL_CALL check(const Model& document) override {
    return guarded([&] {
      cancelled_ = false;
      const Checked checked = checkSeason(spreadsheet(document), [this](double) { return !cancelled_; });
      return toOffice(rendered(checked, "json", fileNameOf(document)));
    });
  }
  rtl::OUString SAL_CALL report(const Model& document, const rtl::OUString& format,
                                const rtl::OUString& name) override {
    return guarded([&] {
      return toOffice(rendered(look(spreadsheet(document)), fromOffice(format), fromOffice(name)));
    });
  }
  sal_Int32 SAL_CALL open(const Model& document, const rtl::OUString& level) override {
    return guarded([&] {
      const Level wanted = levelNamed(fromOffice(level));
      const Checked checked = look(spreadsheet(document));
      const auto& findings = checked.report.findings;
      return static_cast<sal_Int32>(
          std::count_if(findings.begin(), findings.end(), [&](const Finding& finding) {
            return finding.open() && finding.rule->level == wanted;
          }));
    });
  }
  Sequence<Sequence<Any>> SAL_CALL findings(const Model& document) override {
    return guarded([&] { return tableOf(look(spreadsheet(document))); });
  }
  sal_Bool SAL_CALL apply(const Model& document, const rtl::OUString& mark) override {
    return guarded([&] { return applyMarked(spreadsheet(document), {fromOffice(mark)}) > 0; });
  }
  sal_Int32 SAL_CALL applyAll(const Model& document, const rtl::OUString& level) override {
    return guarded(
        [&] { return static_cast<sal_Int32>(applyLevel(spreadsheet(document), fromOffice(level))); });
  }
  rtl::OUString SAL_CALL cellOf(const Model& document, const rtl::OUString& mark) override {
    return guarded([&] {
      const Checked checked = look(spreadsheet(document));
      const Finding* finding = findingMarked(checked, fromOffice(mark));
      return finding == nullptr ? rtl::OUString() : toOffice(to_text(finding->place));
    });
  }
  void SAL_CALL makeRoom(const Model& document, sal_Int32 rows) override {
    guarded([&] {
      addin::makeRoom(spreadsheet(document), TableKind::visits,
                      static_cast<std::size_t>(std::max<sal_Int32>(rows, 0)));
    });
  }
  void SAL_CALL clearFindings(const Model& document) override {
    guarded([&] { clearSeason(spreadsheet(document)); });
  }
  void SAL_CALL cancel() override { cancelled_ = true; }
  rtl::OUString SAL_CALL summarise(const Model& document) override {
    return guarded([&] {
      cancelled_ = false;
      const Summarised summed =
          summariseSeason(context_, spreadsheet(document), [this](double) { return !cancelled_; });
      return toOffice(rendered(summed, "json", fileNameOf(document)));
    });
  }
  rtl::OUString SAL_CALL summary(const Model& document, const rtl::OUString& format,
                                 const rtl::OUString& name) override {
    return guarded([&] {
      cancelled_ = false;
      const Summarised summed = sumUp(spreadsheet(document), [this](double) { return !cancelled_; });
      return toOffice(rendered(summed, fromOffice(format), fromOffice(name)));
    });
  }
  rtl::OUString SAL_CALL gather(const Model& document, const rtl::OUString& folder) override {
    return guarded([&] {
      cancelled_ = false;
      return toOffice(
          gathering_json(gatherFolder(context_, spreadsheet(document), folderNamed(fromOffice(folder)),
                                      [this](double) { return !cancelled_; })));
    });
  }
  rtl::OUString SAL_CALL poolPage(const Model& document, const rtl::OUString& code) override {
    return guarded([&] {
      cancelled_ = false;
      return toOffice(pageOfPool(context_, spreadsheet(document), fromOffice(code),
                                 [this](double) { return !cancelled_; }));
    });
  }
  rtl::OUString SAL_CALL audit(const Model& document) override {
    return guarded([&] {
      cancelled_ = false;
      const Audit audit =
          auditDocument(spreadsheet(document), fileNameOf(document), [this](double) { return !cancelled_; });
      return toOffice(rendered(audit, "json"));
    });
  }
  rtl::OUString SAL_CALL auditReport(const Model& document, const rtl::OUString& format,
                                     const rtl::OUString& name) override {
    return guarded([&] {
      cancelled_ = false;
      const Audit audit =
          auditSheets(spreadsheet(document), fromOffice(name), [this](double) { return !cancelled_; });
      return toOffice(rendered(audit, fromOffice(format)));
    });
  }
  Sequence<rtl::OUString> SAL_CALL handout(const Model& document, const rtl::OUString& person,
                                           const rtl::OUString& folder) override {
    return guarded([&] {
      const auto files = handOut(context_, spreadsheet(document), fromOffice(person), fromOffice(folder));
      Sequence<rtl::OUString> addresses(static_cast<sal_Int32>(files.size()));
      std::transform(files.begin(), files.end(), addresses.getArray(),
                     [](const std::string& file) { return toOffice(file); });
      return addresses;
    });
  }

  sal_Int32 SAL_CALL askList(const Model& document) override {
    return guarded([&] {
      cancelled_ = false;
      return static_cast<sal_Int32>(askListOf(spreadsheet(document), [this](double) { return !cancelled_; }));
    });
  }

private:
  Context context_;
  std::atomic<bool> cancelled_ = false;
};

Reference<css::uno::XInterface> SAL_CALL create(const Context& context) {
  return static_cast<cppu::OWeakObject*>(new SeasonDesk(context));
}

const Registration registration{
    {implementationName, {"org.wetspell.SeasonDesk"}, Lifetime::OneForAll, &create}};

} // namespace
} // namespace wetspell::addin
