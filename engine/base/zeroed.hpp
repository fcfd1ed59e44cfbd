// Storage that begins as zero bytes.
#pragma once

#include "base/long_room.hpp"

#include <cstddef>
#include <cstdlib>
#include <limits>
#include <memory>
#include <new>
#include <utility>

namespace wetspell {

/// For a vector that is made once, in full length, of elements that are zero bytes when nothing was given to
/// them. The system hands out pages of zeros at the first touch; so those who fill a long vector side by side
/// share that work, instead of one processor writing all elements first.
template <class Element> struct Zeroed {
  using value_type = Element;

  Zeroed() = default;
  template <class Other> explicit Zeroed(const Zeroed<Other>&) {}

  Element* allocate(std::size_t count) {
    if (count > std::numeric_limits<std::size_t>::max() / sizeof(Element))
      throw std::bad_array_new_length();
    return static_cast<Element*>(long_room(count * sizeof(Element)));
  }
  void deallocate(Element* elements, std::size_t) { std::free(elements); }

  template <class Made> void construct(Made*) {}
  template <class Made, class... From> void construct(Made* at, From&&... from) {
    std::construct_at(at, std::forward<From>(from)...);
  }
  bool operator==(const Zeroed&) const = default;
};

} // namespace wetspell
