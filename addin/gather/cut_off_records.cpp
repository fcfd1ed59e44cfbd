#include "gather/cut_off_records.hpp"

#include <algorithm>
#include <array>
#include <cstdint>
#include <vector>

namespace wetspell::addin {

namespace {

/// Of a record: its number and its length, both of two bytes ([MS-XLS] 2.1.4). They are not encrypted, where
/// the rest is.
constexpr std::size_t head = 4;

constexpr std::uint32_t bound_sheet = 0x85; ///< begins with the place where a sheet's records stand
/// Obj, ImgData, BkHim, MsoDrawingGroup, MsoDrawing.
constexpr std::array<std::uint32_t, 5> drawings{0x5D, 0x7F, 0xE9, 0xEB, 0xEC};
constexpr std::string_view read_by_nobody{"\xFF\x0F", 2};

std::uint32_t little(const std::string& bytes, std::size_t at, std::size_t count) {
  std::uint32_t number = 0;
  for (std::size_t i = count; i-- > 0;)
    number = number << 8U | static_cast<unsigned char>(bytes[at + i]);
  return number;
}

} // namespace

bool cut_off_drawings(std::string& records) {
  bool any = false;
  // A sheet's records may stand anywhere, also inside of another record.
  std::vector<std::size_t> starts{0};
  std::vector<bool> seen(records.size());
  while (!starts.empty()) {
    std::size_t at = starts.back();
    starts.pop_back();
    while (at + head <= records.size() && !seen[at]) {
      seen[at] = true;
      const std::uint32_t number = little(records, at, 2), length = little(records, at + 2, 2);
      if (number == bound_sheet && at + head + 4 <= records.size())
        starts.push_back(little(records, at + head, 4));
      if (std::find(drawings.begin(), drawings.end(), number) != drawings.end()) {
        records.replace(at, read_by_nobody.size(), read_by_nobody);
        any = true;
      }
      at += head + length;
    }
  }
  return any;
}

} // namespace wetspell::addin
