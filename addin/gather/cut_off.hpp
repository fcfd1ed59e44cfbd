#pragma once
// The text of a workbook's part with everything left out that reaches outside: formulas that refer to other
// files or to the net (the results that were stored with them stay), pictures and links that lie elsewhere.

#include <optional>
#include <string>
#include <string_view>

namespace wetspell::addin {

/// A part of an OpenDocument workbook (content.xml, or a whole .fods); nothing when it reaches nowhere.
std::optional<std::string> cut_off_open_document(std::string_view xml);

/// A sheet of an Office Open XML workbook; nothing when it reaches nowhere.
std::optional<std::string> cut_off_sheet(std::string_view xml);
/// What a sheet or a drawing of such a workbook has beside it (a .rels); nothing when all of it is inside.
std::optional<std::string> cut_off_relations(std::string_view xml);

} // namespace wetspell::addin
