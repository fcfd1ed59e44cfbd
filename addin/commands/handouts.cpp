#include "commands/handouts.hpp"

#include "base/text.hpp"
#include "gather/ask_list.hpp"
#include "gather/file_names.hpp"
#include "season/code_index.hpp"
#include "templates/handout.hpp"

#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/frame/Desktop.hpp>
#include <com/sun/star/frame/XStorable.hpp>
#include <com/sun/star/io/IOException.hpp>
#include <com/sun/star/io/SequenceInputStream.hpp>
#include <com/sun/star/ucb/SimpleFileAccess.hpp>
#include <com/sun/star/util/XCloseable.hpp>

#include <array>

namespace wetspell::addin {

using css::beans::PropertyValue;
using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY_THROW;

namespace {

struct Format {
  const char* ending;
  const char* filter; ///< the office's name for it
};
constexpr std::array<Format, 2> formats{{{".ods", "calc8"}, {".xlsx", "Calc MS Excel 2007 XML"}}};

PropertyValue property(const char* name, const Any& value) {
  return {toOffice(name), 0, value, css::beans::PropertyState_DIRECT_VALUE};
}

/// A document that was made from a file's text, without a window; closed when it goes.
class Draft {
public:
  Draft(const Context& context, const std::string& text) {
    const auto stream = css::io::SequenceInputStream::createStreamFromSequence(
        context,
        Sequence<sal_Int8>(reinterpret_cast<const sal_Int8*>(text.data()), // NOLINT: a stream of bytes
                           static_cast<sal_Int32>(text.size())));
    const std::array<PropertyValue, 3> how{
        property("Hidden", Any(true)), property("InputStream", Any(stream)),
        property("FilterName", Any(rtl::OUString("OpenDocument Spreadsheet Flat XML")))};
    document_ = css::frame::Desktop::create(context)->loadComponentFromURL(
        "private:stream", "_blank", 0, {how.data(), static_cast<sal_Int32>(how.size())});
    if (!document_.is())
      refuse("The office did not take the handout; nothing was written.");
  }
  ~Draft() {
    try {
      Reference<css::util::XCloseable>(document_, UNO_QUERY_THROW)->close(true);
    } catch (const css::uno::Exception&) { // whoever stopped it will close it
    }
  }
  Draft(const Draft&) = delete;
  Draft& operator=(const Draft&) = delete;

  void store(const rtl::OUString& address, const char* filter) const {
    const PropertyValue how = property("FilterName", Any(toOffice(filter)));
    try {
      Reference<css::frame::XStorable>(document_, UNO_QUERY_THROW)->storeToURL(address, {&how, 1});
    } catch (const css::io::IOException&) {
      refuse(fromOffice(address) + " cannot be written: is the folder there, and may you write into it?");
    }
  }

private:
  Reference<css::lang::XComponent> document_;
};

std::size_t personNamed(const Season& season, const std::string& code) {
  CodeIndex index;
  for (std::size_t i = 0; i < season.people.size(); ++i)
    index.add_code(season.people[i].code, static_cast<std::int32_t>(i));
  const Ref found = index.find(code);
  if (!found.known())
    refuse("There is no person with the code '" + code + "'.");
  return static_cast<std::size_t>(found.index);
}

std::string fileName(const Season& season, std::size_t person) {
  std::vector<std::string> codes;
  for (const Person& each : season.people)
    codes.push_back(each.code);
  return "handout-" + file_names(codes)[person];
}

} // namespace

std::vector<std::string> handOut(const Context& context, const SheetDocument& document,
                                 const std::string& code, const std::string& folder) {
  const Checked checked = look(document);
  const std::size_t person = personNamed(checked.season, code);
  const std::string start = folder + (folder.ends_with('/') ? "" : "/") + fileName(checked.season, person);
  const auto files = css::ucb::SimpleFileAccess::create(context);
  std::vector<std::string> addresses;
  for (const Format& format : formats) {
    addresses.push_back(start + format.ending);
    if (files->exists(toOffice(addresses.back())))
      refuse(addresses.back() + " is there already and may have been filled in; nothing was written. Choose "
                                "another folder, or move it away.");
  }
  const auto lists = ask_lists(checked.season, checked.report);
  const Draft draft(context, workbook::handout_workbook(checked.season, person, questions_to(lists, person)));
  for (std::size_t i = 0; i < formats.size(); ++i)
    draft.store(toOffice(addresses[i]), formats[i].filter);
  return addresses;
}

std::string personOfRow(const Season& season, const std::string& sheet, std::size_t row) {
  const auto stands = [&](TableKind kind, std::uint32_t record) {
    const Located& where = season.where(kind);
    return where.found() && where.table->sheet() == sheet && where.table->sheet_row(record) == row;
  };
  const auto codeOf = [&](const Ref& person) {
    return person.known() ? season.people[static_cast<std::size_t>(person.index)].code : std::string();
  };
  for (const Person& person : season.people)
    if (stands(TableKind::people, person.row))
      return person.code;
  for (const Visit& visit : season.visits)
    if (stands(TableKind::visits, visit.row))
      return codeOf(visit.person);
  for (const LifeCount& count : season.life)
    if (stands(TableKind::life, count.row))
      return codeOf(count.person);
  return {};
}

} // namespace wetspell::addin
