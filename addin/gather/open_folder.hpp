#pragma once
// The files of a folder that came back, opened one after another in this office: hidden, for reading only,
// without their macros, without fetching what they link to.

#include "base/result.hpp"
#include "sheet/sheets.hpp"

#include <com/sun/star/uno/XComponentContext.hpp>

#include <filesystem>
#include <functional>
#include <string>
#include <vector>

namespace wetspell::addin {

/// A folder as macros and dialogs name it: an address ("file:///spring") or a path of the system.
std::filesystem::path folderNamed(const std::string& words);

/// Told every file in the order of names: its name, and its sheets or why there are none.
using TakeFile = std::function<void(const std::string& name, Result<std::vector<Table>> sheets)>;

/// Reads the files that lie in the folder itself; what programs leave beside open documents is passed over,
/// and so is the season's own document, whose address is `season`. `progress` is told the share done; false
/// ends it. Gives whether it came to the end. Refuses in words when the folder cannot be read.
bool openFolder(const css::uno::Reference<css::uno::XComponentContext>& context,
                const std::filesystem::path& folder, const std::string& season, const TakeFile& take,
                const std::function<bool(double)>& progress = {});

} // namespace wetspell::addin
