// Files that are not what their name says, or not whole, are refused before an office sees them.
#include "gather/workbook_bytes.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <fstream>
#include <string>

namespace wetspell {
namespace {

using ::testing::HasSubstr;

std::string little(std::uint32_t number, std::size_t count) {
  std::string bytes;
  for (std::size_t i = 0; i < count; ++i)
    bytes += static_cast<char>(number >> 8U * i & 0xFFU);
  return bytes;
}

/// An archive with one part kept as it is: local header, content, list, end (APPNOTE.TXT 4.3.7, 4.3.12,
/// 4.3.16).
std::string archive(const std::string& name, const std::string& content, std::uint32_t unpacked) {
  const auto size = static_cast<std::uint32_t>(content.size());
  const auto letters = static_cast<std::uint32_t>(name.size());
  const std::string sizes = little(0, 4) + little(size, 4) + little(unpacked, 4);
  const std::string part = "PK\x03\x04" + little(20, 2) + std::string(8, '\0') + sizes + little(letters, 2) +
                           little(0, 2) + name + content;
  const std::string list = "PK\x01\x02" + little(20, 2) + little(20, 2) + std::string(8, '\0') + sizes +
                           little(letters, 2) + std::string(12, '\0') + little(0, 4) + name;
  return part + list + "PK\x05\x06" + std::string(4, '\0') + little(1, 2) + little(1, 2) +
         little(static_cast<std::uint32_t>(list.size()), 4) +
         little(static_cast<std::uint32_t>(part.size()), 4) + little(0, 2);
}

std::string why_not(std::string_view ending, std::string_view bytes) {
  const auto fine = openable(ending, bytes);
  return fine ? std::string() : fine.error().text;
}

const std::string sound = archive("content.xml", "<office/>", 9);

TEST(WorkbookBytes, ASoundArchiveMayBeOpened) {
  EXPECT_EQ(why_not(".ods", sound), "");
  EXPECT_EQ(why_not(".XLSX", sound), "") << "endings in capitals too";
  EXPECT_EQ(why_not(".xls", sound), "") << "programs write new workbooks under the old name";
}

TEST(WorkbookBytes, NoBytesAreNoWorkbook) {
  for (const char* ending : {".ods", ".xlsx", ".xls", ".fods", ".csv"})
    EXPECT_THAT(why_not(ending, ""), HasSubstr("no bytes")) << ending;
}

TEST(WorkbookBytes, EveryCutIsNoticed) {
  for (std::size_t bytes = 4; bytes < sound.size(); ++bytes)
    EXPECT_THAT(why_not(".ods", std::string_view(sound).substr(0, bytes)), HasSubstr("cut short")) << bytes;
}

TEST(WorkbookBytes, APartThatIsNotWholeIsNamed) {
  std::string damaged = sound;
  damaged[1] = 'X';
  EXPECT_THAT(why_not(".ods", "PK\x03\x04" + damaged), HasSubstr("damaged"));
  damaged = sound;
  const std::size_t list = damaged.find("PK\x01\x02");
  damaged[list + 21] = '\x7F'; // the packed size: more than there is
  EXPECT_THAT(why_not(".ods", damaged), HasSubstr("content.xml is not whole"));
}

TEST(WorkbookBytes, AnArchiveThatUnpacksToTooMuchIsNotOpened) {
  const std::string bomb = archive("content.xml", "x", 0xC0000000U); // 3 GB by its own account
  EXPECT_THAT(why_not(".xlsx", bomb), HasSubstr("3072 MB"));
  EXPECT_THAT(why_not(".xlsx", bomb), HasSubstr("256 MB"));
}

TEST(WorkbookBytes, SaysWhatTheFileIsInstead) {
  EXPECT_THAT(why_not(".ods", "%PDF-1.7"), HasSubstr("a PDF"));
  EXPECT_THAT(why_not(".xlsx", "pool,date\nB01,2026-04-18\n"), HasSubstr("text"));
  EXPECT_THAT(why_not(".xls", "<HTML><body>"), HasSubstr("a web page"));
  EXPECT_THAT(why_not(".csv", sound), HasSubstr("an archive"));
  EXPECT_THAT(why_not(".csv", "\xFF\xD8\xFF\xE0"), HasSubstr("a picture"));
  EXPECT_THAT(why_not(".xlsx", "\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1"), HasSubstr("password"));
  EXPECT_THAT(why_not(".docx", sound), HasSubstr(".ods, .xlsx"));
}

TEST(WorkbookBytes, OtherKindsOfWorkbooksMayBeOpened) {
  EXPECT_EQ(why_not(".xls", "\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1"), "");
  EXPECT_EQ(why_not(".fods", "<?xml version=\"1.0\"?><office:document></office:document>\n"), "");
  EXPECT_EQ(why_not(".csv", "pool,date\n"), "");
  EXPECT_EQ(why_not(".csv", std::string_view("\xFF\xFEp\0,\0", 6)), "") << "text in UTF-16";
}

TEST(WorkbookBytes, AFlatWorkbookThatBreaksOffIsNoticed) {
  EXPECT_THAT(why_not(".fods", "<?xml version=\"1.0\"?><office:document><office:body>"),
              HasSubstr("cut short"));
}

TEST(WorkbookBytes, WhatOfficesAndSystemsLeaveBehindIsNoFileOfAPerson) {
  for (const char* name : {".~lock.form.ods#", "~$form.xlsx", ".DS_Store"})
    EXPECT_TRUE(is_left_behind(name)) << name;
  EXPECT_FALSE(is_left_behind("folder/form.ods"));
  EXPECT_TRUE(may_be_workbook("Form.ODS"));
  EXPECT_FALSE(may_be_workbook("form.docx"));
}

TEST(WorkbookBytes, AFileOnTheDiskIsReadWhole) {
  const std::filesystem::path file = std::filesystem::path(testing::TempDir()) / "workbook-bytes.ods";
  std::ofstream(file, std::ios::binary) << sound;
  EXPECT_TRUE(openable(file));
  std::filesystem::resize_file(file, sound.size() - 1);
  EXPECT_FALSE(openable(file));
  EXPECT_FALSE(written_whole(file));
  std::filesystem::resize_file(file, most_bytes + 1);
  EXPECT_THAT(openable(file).error().text, HasSubstr("64 MB"));
  const std::string large = archive("content.xml", std::string(most_bytes, 'x'), 0xF0000000U);
  std::ofstream(file, std::ios::binary | std::ios::trunc) << large;
  EXPECT_FALSE(openable(file));
  EXPECT_TRUE(written_whole(file)) << "a season may be as large as it is";
  std::filesystem::remove(file);
  EXPECT_THAT(openable(file).error().text, HasSubstr("no file"));
}

} // namespace
} // namespace wetspell
