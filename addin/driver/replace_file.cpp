#include "driver/replace_file.hpp"

#include "driver/failure.hpp"
#include "driver/files.hpp"
#include "gather/workbook_bytes.hpp"

#include <fmt/format.h>
#include <osl/file.hxx>

namespace wetspell::driver {

namespace {

namespace fs = std::filesystem;

/// A folder beside the file, removed with all it holds: an office that is killed leaves files of its own
/// beside what it was writing.
class DraftFolder {
public:
  explicit DraftFolder(const fs::path& beside) : path_(beside / uniqueName(".wetspell-")) {
    if (std::error_code error; !fs::create_directory(path_, error))
      throw Failure(
          fmt::format("nothing can be written in the folder {}: {}", beside.string(), error.message()));
  }
  ~DraftFolder() {
    std::error_code ignored;
    fs::remove_all(path_, ignored);
  }
  DraftFolder(const DraftFolder&) = delete;
  DraftFolder& operator=(const DraftFolder&) = delete;
  [[nodiscard]] const fs::path& path() const { return path_; }

private:
  fs::path path_;
};

/// The office says little of a full disk.
std::string whyNot(const fs::path& folder, const std::string& said) {
  std::error_code error;
  const auto space = fs::space(folder, error);
  constexpr std::uintmax_t little = 1U << 20; // less than any season takes
  if (!error && space.available < little)
    return fmt::format("there is no room on the disk: {} KB are free", space.available >> 10U);
  return said;
}

/// To the disk itself, so that a power cut after the renaming finds the whole file.
bool bringToDisk(const fs::path& path) {
  osl::File file(urlOf(path));
  return file.open(osl_File_OpenFlag_Write) == osl::FileBase::E_None && file.sync() == osl::FileBase::E_None;
}

/// Gives the file what the document holds; whatever is wrong is thrown, in words.
void replaceWhole(const Document& document, const fs::path& file) {
  std::error_code error;
  const auto old = fs::status(file, error);
  if (fs::exists(old) && (old.permissions() & fs::perms::owner_write) == fs::perms::none)
    throw Failure("it may only be read");
  const DraftFolder folder(file.parent_path());
  const fs::path draft = folder.path() / file.filename();
  try {
    document.store(draft);
  } catch (const Failure& failure) {
    throw Failure(whyNot(folder.path(), failure.what()));
  }
  if (const auto whole = written_whole(draft); !whole)
    throw Failure("the office did not write the new one whole: " + whole.error().text);
  if (!bringToDisk(draft))
    throw Failure(whyNot(folder.path(), "the new one could not be brought to the disk"));
  if (fs::exists(old))
    fs::permissions(draft, old.permissions(), error);
  fs::rename(draft, file, error);
  if (error)
    throw Failure(error.message());
}

} // namespace

void replaceFile(const Document& document, const fs::path& given) {
  std::error_code error;
  const fs::path known = fs::canonical(given, error);
  const fs::path file = error ? fs::absolute(given) : known;
  try {
    replaceWhole(document, file);
  } catch (const Failure& failure) {
    throw Failure(fmt::format("{} was not written and is as it was: {}", file.string(), failure.what()));
  }
}

} // namespace wetspell::driver
