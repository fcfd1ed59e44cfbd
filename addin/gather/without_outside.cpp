#include "gather/without_outside.hpp"

#include "base/text.hpp"
#include "gather/cut_off.hpp"
#include "gather/cut_off_records.hpp"
#include "measure/refuse.hpp"

#include <com/sun/star/beans/NamedValue.hpp>
#include <com/sun/star/container/XHierarchicalNameAccess.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/embed/OLESimpleStorage.hpp>
#include <com/sun/star/io/SequenceInputStream.hpp>
#include <com/sun/star/io/TempFile.hpp>
#include <com/sun/star/lang/DisposedException.hpp>
#include <com/sun/star/lang/XMultiComponentFactory.hpp>
#include <com/sun/star/packages/XDataSinkEncrSupport.hpp>
#include <com/sun/star/util/XChangesBatch.hpp>

#include <algorithm>
#include <array>
#include <fstream>
#include <functional>
#include <vector>

namespace wetspell::addin {

namespace {

using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;
using Context = Reference<css::uno::XComponentContext>;
using Stream = Reference<css::io::XInputStream>;

/// Gives bytes piece by piece, at the end an empty one.
using Source = std::function<std::string()>;
constexpr std::size_t at_once = std::size_t{1} << 20U;

Source bytesOf(const std::filesystem::path& file) {
  return [stream = std::make_shared<std::ifstream>(file, std::ios::binary)] {
    std::string piece(at_once, '\0');
    stream->read(piece.data(), static_cast<std::streamsize>(piece.size()));
    piece.resize(static_cast<std::size_t>(stream->gcount()));
    return piece;
  };
}

Source bytesOf(const Stream& stream) {
  return [stream] {
    Sequence<sal_Int8> some;
    stream->readBytes(some, at_once);
    return std::string(reinterpret_cast<const char*>(some.getConstArray()), // NOLINT: a stream of bytes
                       static_cast<std::size_t>(some.getLength()));
  };
}

/// A file of the office's own, which goes with the last who holds it.
class Copy {
public:
  explicit Copy(const Context& context) : file_(css::io::TempFile::create(context)) {}
  void add(std::string_view bytes) {
    for (; !bytes.empty(); bytes.remove_prefix(std::min(at_once, bytes.size()))) {
      const std::string_view some = bytes.substr(0, at_once);
      file_->getOutputStream()->writeBytes(
          {reinterpret_cast<const sal_Int8*>(some.data()), // NOLINT: a stream of bytes
           static_cast<sal_Int32>(some.size())});
    }
  }
  void add(const Source& source) {
    for (std::string piece = source(); !piece.empty(); piece = source())
      add(piece);
  }
  Reference<css::io::XStream> whole() {
    file_->getOutputStream()->flush();
    file_->seek(0);
    return {file_, UNO_QUERY_THROW};
  }

private:
  Reference<css::io::XTempFile> file_;
};

/// How many bytes a workbook may still have unpacked.
class Allowance {
public:
  explicit Allowance(std::uintmax_t most) : most_(most) {}
  Result<void> take(std::size_t bytes) {
    taken_ += bytes;
    if (taken_ > most_)
      return bad_argument(fmt::format("unpacked it takes more than {} MB; no workbook of visits is larger. "
                                      "It was not opened.",
                                      most_ >> 20U));
    return boost::outcome_v2::success();
  }

private:
  std::uintmax_t most_, taken_ = 0;
};

/// A part looked through.
struct Seen {
  bool cut = false;
  std::string root; ///< the outermost element's name; empty when the part is no XML
};

/// Looks through a part; what may stay of it goes into the copy, if there is one.
Result<Seen> look(const Source& source, const std::string& name, Allowance& allowance, Copy* copy) {
  CutOffMarkup markup;
  std::string piece = source();
  if (!is_markup(piece))
    return Seen{};
  for (; !piece.empty(); piece = source()) {
    if (auto enough = allowance.take(piece.size()); !enough)
      return enough.error();
    const auto kept = markup.next(piece);
    if (!kept)
      return bad_argument(
          fmt::format("{} {}, as no spreadsheet program writes it. It was not opened; ask for "
                      "it again, saved as .ods or .xlsx.",
                      name, kept.error().text));
    if (copy != nullptr)
      copy->add(kept.value());
  }
  if (copy != nullptr)
    copy->add(markup.rest());
  return Seen{markup.cut(), markup.root()};
}

/// Whether a part says nothing of cells: what other programs keep beside them, and pictures, which they write
/// in ways of their own.
bool isBeside(std::string_view name) {
  return name.starts_with("customXml/") || name.starts_with("docProps/") || name.ends_with(".svg");
}

/// The parts of an archive.
class Archive {
public:
  Archive(const Context& context, Copy& bytes, std::uintmax_t most)
      : context_(context), most_(most), allowance_(most) {
    const css::beans::NamedValue format("StorageFormat", Any(rtl::OUString("ZipFormat")));
    const std::array how{Any(bytes.whole()), Any(format)};
    parts_.set(
        context_->getServiceManager()->createInstanceWithArgumentsAndContext(
            "com.sun.star.packages.Package", {how.data(), static_cast<sal_Int32>(how.size())}, context_),
        UNO_QUERY_THROW);
  }
  /// Any part may be a sheet or refer to a picture, whatever its name: the parts say so of each other.
  Result<void> cutAll() {
    using Folder = Reference<css::container::XNameAccess>;
    std::vector<std::pair<std::string, Folder>> folders{
        {"", Folder(parts_->getByHierarchicalName("/"), UNO_QUERY_THROW)}};
    while (!folders.empty()) {
      const auto [path, folder] = std::move(folders.back());
      folders.pop_back();
      for (const rtl::OUString& name : folder->getElementNames()) {
        const Any part = folder->getByName(name);
        const std::string where = path + fromOffice(name);
        if (const Folder inner{part, UNO_QUERY}; inner.is())
          folders.emplace_back(where + "/", inner);
        else if (auto done = cut({part, UNO_QUERY_THROW}, where); !done)
          return done;
      }
    }
    return boost::outcome_v2::success();
  }
  [[nodiscard]] bool isOpenDocument() const { return parts_->hasByHierarchicalName("content.xml"); }
  /// Writes what was changed into the bytes; whether anything was.
  [[nodiscard]] bool write() const {
    if (changed_)
      Reference<css::util::XChangesBatch>(parts_, UNO_QUERY_THROW)->commitChanges();
    return changed_;
  }

private:
  Result<void> cut(const Reference<css::packages::XDataSinkEncrSupport>& part, const std::string& name) {
    const std::string words = "its part " + name;
    const auto seen = look(bytesOf(part->getDataStream()), words, allowance_, nullptr);
    if (!seen && !isBeside(name))
      return seen.error();
    if (seen && !seen.value().cut)
      return boost::outcome_v2::success();
    Copy kept(context_); // stays empty when it cannot be looked through
    Allowance again(most_);
    if (seen)
      if (auto done = look(bytesOf(part->getDataStream()), words, again, &kept); !done)
        return done.error();
    part->setDataStream(kept.whole()->getInputStream());
    changed_ = true;
    return boost::outcome_v2::success();
  }

  Context context_;
  std::uintmax_t most_;
  Allowance allowance_;
  Reference<css::container::XHierarchicalNameAccess> parts_;
  bool changed_ = false;
};

Result<CutOff> cutArchive(const Context& context, const std::filesystem::path& file, std::uintmax_t most) {
  Copy copy(context);
  copy.add(bytesOf(file));
  Archive archive(context, copy, most);
  if (auto done = archive.cutAll(); !done)
    return done.error();
  if (!archive.write())
    return CutOff{};
  return CutOff{copy.whole()->getInputStream(),
                archive.isOpenDocument() ? rtl::OUString("calc8") : rtl::OUString("Calc MS Excel 2007 XML")};
}

Result<CutOff> cutFlat(const Context& context, const std::filesystem::path& file, std::uintmax_t most) {
  constexpr std::array<std::pair<std::string_view, const char*>, 2> roots{
      {{"document", "OpenDocument Spreadsheet Flat XML"}, {"Workbook", "MS Excel 2003 XML Orcus"}}};
  Allowance allowance(most);
  const auto seen = look(bytesOf(file), "it", allowance, nullptr);
  if (!seen)
    return seen.error();
  const auto known = std::find_if(roots.begin(), roots.end(),
                                  [&](const auto& root) { return root.first == seen.value().root; });
  if (known == roots.end())
    return bad_argument("it is no workbook: its outermost element is '" + seen.value().root + "'.");
  CutOff instead{{}, rtl::OUString::createFromAscii(known->second)};
  if (seen.value().cut) {
    Copy copy(context);
    Allowance again(most);
    if (auto done = look(bytesOf(file), "it", again, &copy); !done)
      return done.error();
    instead.stream = copy.whole()->getInputStream();
  }
  return instead;
}

/// An old workbook. Its formulas need no care: where links are not updated, nothing is asked for their sake,
/// and the results that are stored beside a link count.
Result<CutOff> cutCompound(const Context& context, const std::filesystem::path& file) {
  Copy copy(context);
  copy.add(bytesOf(file));
  const Reference<css::io::XStream> bytes = copy.whole();
  const auto streams = css::embed::OLESimpleStorage::createFromStream(context, bytes, false);
  bool known = false, changed = false;
  for (const char* each : {"Workbook", "Book"}) {
    const rtl::OUString name = rtl::OUString::createFromAscii(each);
    if (!streams->hasByName(name))
      continue;
    known = true;
    const Reference<css::io::XStream> stream(streams->getByName(name), UNO_QUERY_THROW);
    const Source source = bytesOf(stream->getInputStream());
    std::string records;
    for (std::string piece = source(); !piece.empty(); piece = source())
      records += piece;
    if (!cut_off_drawings(records))
      continue;
    Copy kept(context);
    kept.add(records);
    streams->removeByName(name);
    streams->commit(); // before that the name is not free
    streams->insertByName(name, Any(kept.whole()));
    streams->commit();
    changed = true;
  }
  if (!known)
    return bad_argument("it is kept under a password, or is no workbook.");
  CutOff instead{{}, "MS Excel 97"};
  if (changed)
    instead.stream = copy.whole()->getInputStream();
  return instead;
}

} // namespace

Result<CutOff> without_outside(const Context& context, const std::filesystem::path& file,
                               std::uintmax_t most) {
  const std::string begins = bytesOf(file)();
  try {
    if (begins.starts_with("PK"))
      return cutArchive(context, file, most);
    if (begins.starts_with("\xD0\xCF\x11\xE0"))
      return cutCompound(context, file);
    if (is_markup(begins))
      return cutFlat(context, file, most);
    return CutOff{};
  } catch (const css::lang::DisposedException&) { // the office itself has gone
    throw;
  } catch (const css::uno::Exception&) {
    return bad_argument("the office cannot open it: it is damaged, or kept under a password.");
  }
}

} // namespace wetspell::addin
