#include "base/long_room.hpp"

#include <gtest/gtest.h>

#include <algorithm>

namespace wetspell {
namespace {

TEST(LongRoom, IsOfZerosToItsEnd) {
  for (const std::size_t size :
       {std::size_t{0}, std::size_t{1}, std::size_t{1} << 16U, (std::size_t{1} << 24U) + 5}) {
    auto* room = static_cast<unsigned char*>(long_room(size));
    EXPECT_TRUE(std::all_of(room, room + size, [](unsigned char byte) { return byte == 0; })) << size;
    std::fill(room, room + size, 7);
    std::free(room);
  }
}

} // namespace
} // namespace wetspell
