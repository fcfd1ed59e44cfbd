#pragma once
// The files of a folder that came back, opened one after another in this office: hidden, for reading only,
// without their macros, without fetching what they link to.

#include "base/result.hpp"
#include "sheet/sheets.hpp"

#include <com/sun/star/uno/XComponentContext.hpp>

#include <filesystem>
#include <functional>
#include <map>
#include <string>
#include <vector>

namespace wetspell::addin {

/// A folder as macros and dialogs name it: an address ("file:///spring") or a path of the system.
std::filesystem::path folderNamed(const std::string& words);

/// Told every file in the order of names: its name, and its sheets or why there are none.
using TakeFile = std::function<void(const std::string& name, Result<std::vector<Table>> sheets)>;

/// No folder of one season holds more: 150 people who send four files each are 600.
inline constexpr std::size_t mostFiles = 5000;

struct FolderRead {
  bool whole = true;                                        ///< nobody ended it
  std::size_t folders = 0;                                  ///< inside; what lies in them is not read
  std::map<std::string, std::vector<std::string>> comments; ///< on cells, by file, in sentences
};

/// Reads the files that lie in the folder itself; what programs leave beside open documents is passed over,
/// and so is the season's own document, whose address is `season`. `progress` is told the share done; false
/// ends it. Refuses in words, before any file is opened, when the folder cannot be read or holds more than
/// `mostFiles` workbooks and texts.
FolderRead openFolder(const css::uno::Reference<css::uno::XComponentContext>& context,
                      const std::filesystem::path& folder, const std::string& season, const TakeFile& take,
                      const std::function<bool(double)>& progress = {});

} // namespace wetspell::addin
