// Memory for long arrays.
#pragma once

#include <cstddef>
#include <cstdlib>
#include <memory>
#include <new>

#ifdef __linux__
#include <sys/mman.h>
#endif

namespace wetspell {

/// `size` zero bytes, to be given back with std::free. What is long is asked for in large pages: where the
/// system has much to do for each new page of 4 KB, a third of an audit's time went there. A wish; where it
/// is not granted the pages stay small. Throws std::bad_alloc.
inline void* long_room(std::size_t size) {
  void* room = std::calloc(1, size);
  if (room == nullptr && size > 0)
    throw std::bad_alloc();
#ifdef __linux__
  constexpr std::size_t page = 1 << 21;
  constexpr std::size_t least = 4 * page;
  void* first = room;
  std::size_t left = size;
  if (size >= least && std::align(page, page, first, left) != nullptr)
    madvise(first, left / page * page, MADV_HUGEPAGE);
#endif
  return room;
}

} // namespace wetspell
