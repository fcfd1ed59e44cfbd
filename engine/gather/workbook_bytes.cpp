#include "gather/workbook_bytes.hpp"

#include "measure/refuse.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <fstream>
#include <limits>
#include <sstream>
#include <string>

namespace wetspell {

namespace {

namespace fs = std::filesystem;

/// How files of an ending are kept.
enum class Container : std::uint8_t { archive, compound, markup, text };

struct Ending {
  std::string_view ending;
  Container container;
};
constexpr std::array endings{Ending{".ods", Container::archive},  Ending{".ots", Container::archive},
                             Ending{".xlsx", Container::archive}, Ending{".xlsm", Container::archive},
                             Ending{".xls", Container::compound}, Ending{".fods", Container::markup},
                             Ending{".csv", Container::text},     Ending{".tsv", Container::text},
                             Ending{".txt", Container::text}};

std::string lower(std::string text) {
  std::transform(text.begin(), text.end(), text.begin(),
                 [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  return text;
}

const Ending* ending_named(std::string_view ending) {
  const std::string word = lower(std::string(ending));
  const auto found =
      std::find_if(endings.begin(), endings.end(), [&](const Ending& each) { return each.ending == word; });
  return found == endings.end() ? nullptr : &*found;
}

std::uint32_t little(std::string_view bytes, std::size_t at, std::size_t count) {
  std::uint32_t number = 0;
  for (std::size_t i = count; i-- > 0;)
    number = number << 8U | static_cast<unsigned char>(bytes[at + i]);
  return number;
}

constexpr std::string_view archive_begins{"PK\x03\x04", 4};
constexpr std::string_view list_entry{"PK\x01\x02", 4};
constexpr std::string_view list_ends{"PK\x05\x06", 4};
constexpr std::string_view compound_begins{"\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1", 8};

/// Numbers too large for their place stand elsewhere, in the archive's longer form (4.3.14, 4.5.3), which a
/// workbook does not need; the office reads it.
constexpr std::uint32_t elsewhere = 0xFFFFFFFFU;

/// Where the list of an archive's parts begins, from the record at its end (APPNOTE.TXT 4.3.16); nothing when
/// there is no whole list.
struct PartList {
  std::size_t begin = 0;
  std::size_t parts = 0;
};
Result<PartList> part_list(std::string_view bytes) {
  constexpr std::size_t end_size = 22;
  const std::size_t end = bytes.rfind(list_ends);
  if (end == std::string_view::npos || bytes.size() - end < end_size)
    return bad_argument(
        "the file is cut short: the list of its parts is missing at its end. Ask for it again.");
  const PartList list{little(bytes, end + 16, 4), little(bytes, end + 10, 2)};
  if (list.begin != elsewhere &&
      (list.begin >= end || bytes.compare(list.begin, list_entry.size(), list_entry) != 0))
    return bad_argument(
        "the file is damaged: the list of its parts is not where it should be. Ask for it again.");
  return list;
}

/// Walks through the list of parts (APPNOTE.TXT 4.3.12): each stands where the list says, and all of them
/// unpacked are no more than `most` bytes.
Result<void> sound_archive(std::string_view bytes, std::uintmax_t most) {
  constexpr std::size_t entry_size = 46;
  const auto list = part_list(bytes);
  if (!list)
    return list.error();
  std::uintmax_t unpacked = 0;
  std::size_t at = list.value().begin;
  if (at == elsewhere)
    return boost::outcome_v2::success();
  for (std::size_t part = 0; part < list.value().parts; ++part) {
    if (at + entry_size > bytes.size() || bytes.compare(at, list_entry.size(), list_entry) != 0)
      return bad_argument("the file is damaged: the list of its parts is broken off. Ask for it again.");
    const std::size_t stands = little(bytes, at + 42, 4), packed = little(bytes, at + 20, 4);
    const std::string_view name = bytes.substr(at + entry_size, little(bytes, at + 28, 2));
    if (stands == elsewhere || packed == elsewhere)
      return boost::outcome_v2::success();
    if (stands >= list.value().begin || packed > list.value().begin - stands ||
        bytes.compare(stands, archive_begins.size(), archive_begins) != 0)
      return bad_argument(
          fmt::format("the file is damaged: its part {} is not whole. Ask for it again.", name));
    unpacked += little(bytes, at + 24, 4);
    at += entry_size + little(bytes, at + 28, 2) + little(bytes, at + 30, 2) + little(bytes, at + 32, 2);
  }
  if (unpacked > most)
    return bad_argument(
        fmt::format("unpacked it would take {} MB; no workbook of visits is larger than {} MB. "
                    "It was not opened.",
                    unpacked >> 20U, most >> 20U));
  return boost::outcome_v2::success();
}

/// What files of other kinds begin with, in words.
std::string_view kind_of(std::string_view bytes) {
  if (bytes.starts_with("%PDF"))
    return "a PDF, pages without cells";
  if (bytes.starts_with("\xFF\xD8\xFF") || bytes.starts_with("\x89PNG") || bytes.starts_with("GIF8"))
    return "a picture";
  if (bytes.starts_with(archive_begins))
    return "an archive";
  if (bytes.starts_with(compound_begins))
    return "an old workbook or one with a password";
  const std::string_view head = bytes.substr(0, 512);
  if (lower(std::string(head)).find("<html") != std::string::npos)
    return "a web page";
  return std::none_of(head.begin(), head.end(), [](char c) { return c == '\0'; }) ? "text" : "something else";
}

Problem not_what_it_says(std::string_view ending, std::string_view bytes) {
  return bad_argument(fmt::format("its name ends in {}, but what it holds is {}.", ending, kind_of(bytes)));
}

Result<void> openable_archive(std::string_view ending, std::string_view bytes, std::uintmax_t most) {
  if (bytes.starts_with(compound_begins)) // the container of a workbook with a password, and of .xls
    return bad_argument(
        "it is kept under a password, or is an old workbook (.xls) under another name. Ask for it "
        "without a password.");
  if (!bytes.starts_with(archive_begins))
    return not_what_it_says(ending, bytes);
  return sound_archive(bytes, most);
}

/// Whether the bytes are what the ending says, and all there.
Result<void> sound(std::string_view ending, std::string_view bytes, std::uintmax_t most) {
  const Ending* const known = ending_named(ending);
  if (known == nullptr)
    return bad_argument("it is no workbook: workbooks end in .ods, .xlsx, .xls, .fods or .csv.");
  if (bytes.empty())
    return not_enough("the file is empty: it has no bytes at all. Ask for it again.");
  switch (known->container) {
  case Container::archive:
    return openable_archive(ending, bytes, most);
  case Container::compound: // programs also write other kinds under this name, and the office knows them
    if (bytes.starts_with(archive_begins))
      return sound_archive(bytes, most);
    if (!bytes.starts_with(compound_begins) && !bytes.starts_with("<?xml"))
      return not_what_it_says(ending, bytes);
    break;
  case Container::markup:
    if (bytes.substr(0, 4096).find("office:document") == std::string_view::npos)
      return not_what_it_says(ending, bytes);
    if (const auto last = bytes.find_last_not_of(" \r\n\t");
        !bytes.substr(0, last + 1).ends_with("</office:document>"))
      return bad_argument("the file is cut short: its last mark is missing. Ask for it again.");
    break;
  case Container::text:
    if (kind_of(bytes) != "text" && !bytes.starts_with("\xFF\xFE") && !bytes.starts_with("\xFE\xFF"))
      return not_what_it_says(ending, bytes);
    break;
  }
  return boost::outcome_v2::success();
}

Result<std::string> bytes_of(const fs::path& path) {
  std::ifstream file(path, std::ios::binary);
  std::ostringstream bytes;
  if (file && file.peek() != std::ifstream::traits_type::eof())
    bytes << file.rdbuf();
  if (file.bad() || !bytes || !file.is_open())
    return bad_argument("it cannot be read: the system does not allow it, or the disk fails.");
  return std::move(bytes).str();
}

} // namespace

bool may_be_workbook(const fs::path& path) {
  return ending_named(path.extension().string()) != nullptr;
}

bool is_left_behind(const fs::path& path) {
  const std::string name = path.filename().string();
  return name.starts_with(".") || name.starts_with("~$");
}

Result<void> openable(std::string_view ending, std::string_view bytes, std::uintmax_t most) {
  return sound(ending, bytes, most);
}

Result<void> openable(const fs::path& path) {
  std::error_code error;
  if (!fs::is_regular_file(path, error))
    return bad_argument("it is no file.");
  const std::string ending = path.extension().string();
  if (!may_be_workbook(path))
    return openable(ending, {});
  const std::uintmax_t size = fs::file_size(path, error);
  if (!error && size > most_bytes)
    return bad_argument(
        fmt::format("it has {} MB; no workbook of visits is larger than {} MB. It was not opened.",
                    size >> 20U, most_bytes >> 20U));
  const auto bytes = bytes_of(path);
  return bytes ? openable(ending, bytes.value()) : Result<void>(bytes.error());
}

Result<void> written_whole(const fs::path& path) {
  const auto bytes = bytes_of(path);
  if (!bytes)
    return bytes.error();
  return sound(path.extension().string(), bytes.value(), std::numeric_limits<std::uintmax_t>::max());
}

} // namespace wetspell
