// What a file that came back is, by its first and last bytes, before an office is asked to open it. An office
// takes a file of no bytes for an empty workbook, repairs what it can of a broken archive, and opens a text
// under any name: none of that is what the person sent.
#pragma once

#include "base/result.hpp"

#include <cstdint>
#include <filesystem>
#include <string_view>

namespace wetspell {

/// No workbook of a volunteer is as large: as it is kept, and unpacked.
inline constexpr std::uintmax_t most_bytes = 64U << 20;
inline constexpr std::uintmax_t most_bytes_unpacked = 256U << 20;
/// Nor does a full sheet of visits, which an old workbook may have, take more unpacked.
inline constexpr std::uintmax_t most_bytes_of_old = std::uintmax_t{4096} << 20U;

/// Whether files with this ending are gathered (".ods", ".xlsx", ".xls", ".fods", ".csv" and their like,
/// capitals or not).
bool may_be_workbook(const std::filesystem::path& path);

/// Whether the file is one that programs leave beside an open document ("~$form.xlsx", ".~lock.form.ods#"),
/// or that a system keeps for itself (".DS_Store").
bool is_left_behind(const std::filesystem::path& path);

/// Whether an office may be asked to open the bytes of a file with this ending; the Problem says why not.
/// `most`: bytes that it may have unpacked.
Result<void> openable(std::string_view ending, std::string_view bytes,
                      std::uintmax_t most = most_bytes_unpacked);

/// The same for a file on the disk.
Result<void> openable(const std::filesystem::path& path);

/// Whether a file that an office wrote is all there, however large it is.
Result<void> written_whole(const std::filesystem::path& path);

} // namespace wetspell
