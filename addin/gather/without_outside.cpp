#include "gather/without_outside.hpp"

#include "base/text.hpp"
#include "gather/cut_off.hpp"
#include "gather/workbook_bytes.hpp"

#include <com/sun/star/beans/NamedValue.hpp>
#include <com/sun/star/container/XHierarchicalNameAccess.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/io/SequenceInputStream.hpp>
#include <com/sun/star/io/TempFile.hpp>
#include <com/sun/star/lang/XMultiComponentFactory.hpp>
#include <com/sun/star/packages/XDataSinkEncrSupport.hpp>
#include <com/sun/star/util/XChangesBatch.hpp>

#include <algorithm>
#include <array>
#include <fstream>
#include <sstream>

namespace wetspell::addin {

namespace {

using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;

struct Kept {
  std::string_view ending;
  const char* filter;
};
constexpr Kept flat{".fods", "OpenDocument Spreadsheet Flat XML"};
constexpr std::array archives{Kept{".ods", "calc8"}, Kept{".ots", "calc8_template"},
                              Kept{".xlsx", "Calc MS Excel 2007 XML"},
                              Kept{".xlsm", "Calc MS Excel 2007 VBA XML"}};

std::string endingOf(const std::filesystem::path& file) {
  std::string ending = file.extension().string();
  std::transform(ending.begin(), ending.end(), ending.begin(),
                 [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
  return ending;
}

std::string bytesOf(const std::filesystem::path& file) {
  std::ostringstream bytes;
  bytes << std::ifstream(file, std::ios::binary).rdbuf();
  return std::move(bytes).str();
}

Sequence<sal_Int8> sequence(std::string_view bytes) {
  return {reinterpret_cast<const sal_Int8*>(bytes.data()), // NOLINT: a stream of bytes
          static_cast<sal_Int32>(bytes.size())};
}

/// The text of a part; one that is too long is refused.
std::string textOf(const Reference<css::io::XInputStream>& stream) {
  std::string text;
  Sequence<sal_Int8> some;
  constexpr sal_Int32 at_once = 1 << 20;
  while (stream->readBytes(some, at_once) > 0) {
    text.append(reinterpret_cast<const char*>(some.getConstArray()), // NOLINT: a stream of bytes
                static_cast<std::size_t>(some.getLength()));
    if (text.size() > most_bytes_unpacked)
      throw css::uno::RuntimeException("The part is too long.");
  }
  return text;
}

using CutPart = std::optional<std::string> (*)(std::string_view);

Reference<css::io::XInputStream> streamOf(const Reference<css::uno::XComponentContext>& context,
                                          std::string_view bytes) {
  return {css::io::SequenceInputStream::createStreamFromSequence(context, sequence(bytes)), UNO_QUERY_THROW};
}

/// The parts of an archive, by their paths.
class Archive {
public:
  Archive(Reference<css::uno::XComponentContext> context, const Reference<css::io::XStream>& bytes)
      : context_(std::move(context)) {
    const css::beans::NamedValue format("StorageFormat", Any(rtl::OUString("ZipFormat")));
    const std::array how{Any(bytes), Any(format)};
    parts_.set(
        context_->getServiceManager()->createInstanceWithArgumentsAndContext(
            "com.sun.star.packages.Package", {how.data(), static_cast<sal_Int32>(how.size())}, context_),
        UNO_QUERY_THROW);
  }
  void cut(const rtl::OUString& path, CutPart part) {
    const Reference<css::packages::XDataSinkEncrSupport> stream(
        parts_->hasByHierarchicalName(path) ? parts_->getByHierarchicalName(path) : Any(), UNO_QUERY);
    if (!stream.is())
      return;
    if (const auto text = part(textOf(stream->getDataStream()))) {
      stream->setDataStream(streamOf(context_, *text));
      changed_ = true;
    }
  }
  void cutAllIn(const rtl::OUString& folder, CutPart part) {
    const Reference<css::container::XNameAccess> names(
        parts_->hasByHierarchicalName(folder) ? parts_->getByHierarchicalName(folder) : Any(), UNO_QUERY);
    if (!names.is())
      return;
    for (const rtl::OUString& name : names->getElementNames())
      cut(folder + "/" + name, part);
  }
  /// Writes what was changed into the bytes; whether anything was.
  [[nodiscard]] bool write() const {
    if (changed_)
      Reference<css::util::XChangesBatch>(parts_, UNO_QUERY_THROW)->commitChanges();
    return changed_;
  }

private:
  Reference<css::uno::XComponentContext> context_;
  Reference<css::container::XHierarchicalNameAccess> parts_;
  bool changed_ = false;
};

/// The archive in a file of the office's own, which goes with the last who holds it.
CutOff cutArchive(const Reference<css::uno::XComponentContext>& context, const std::filesystem::path& file,
                  const char* filter) {
  const auto copy = css::io::TempFile::create(context);
  copy->getOutputStream()->writeBytes(sequence(bytesOf(file)));
  copy->getOutputStream()->flush();
  copy->seek(0);
  Archive archive(context, {copy, UNO_QUERY_THROW});
  for (const char* part : {"content.xml", "styles.xml"})
    archive.cut(rtl::OUString::createFromAscii(part), cut_off_open_document);
  archive.cutAllIn("xl/worksheets", cut_off_sheet);
  for (const char* folder : {"xl/worksheets/_rels", "xl/drawings/_rels"})
    archive.cutAllIn(rtl::OUString::createFromAscii(folder), cut_off_relations);
  if (!archive.write())
    return {};
  copy->seek(0);
  return {copy->getInputStream(), rtl::OUString::createFromAscii(filter)};
}

CutOff cutFlat(const Reference<css::uno::XComponentContext>& context, const std::filesystem::path& file) {
  const auto text = cut_off_open_document(bytesOf(file));
  if (!text)
    return {};
  return {streamOf(context, *text), rtl::OUString::createFromAscii(flat.filter)};
}

} // namespace

CutOff without_outside(const Reference<css::uno::XComponentContext>& context,
                       const std::filesystem::path& file) {
  const std::string ending = endingOf(file);
  if (ending == flat.ending)
    return cutFlat(context, file);
  for (const Kept& kept : archives)
    if (ending == kept.ending)
      try {
        return cutArchive(context, file, kept.filter);
      } catch (const css::uno::Exception&) { // the office will say what is wrong with it
        return {};
      }
  return {};
}

} // namespace wetspell::addin
