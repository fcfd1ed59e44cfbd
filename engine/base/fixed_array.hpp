// A long array of small records that several processors fill side by side.
#pragma once

#include "base/long_room.hpp"

#include <cstddef>
#include <cstdlib>
#include <memory>
#include <stdexcept>
#include <type_traits>
#include <utility>

namespace wetspell {

/// As many elements as it was made for. They do not exist until make() is called for each, once, by whoever
/// fills the array: a vector would write all of them first, on one processor.
template <class Element> class FixedArray {
  static_assert(std::is_trivially_destructible_v<Element>);
  static_assert(alignof(Element) <= alignof(std::max_align_t));

public:
  FixedArray() = default;
  explicit FixedArray(std::size_t size)
      : elements_(static_cast<Element*>(long_room(size * sizeof(Element)))), size_(size) {}
  FixedArray(FixedArray&& other) noexcept { swap(other); }
  FixedArray& operator=(FixedArray&& other) noexcept {
    swap(other);
    return *this;
  }

  template <class... From> Element& make(std::size_t at, From&&... from) {
    return *std::construct_at(data() + at, std::forward<From>(from)...);
  }

  [[nodiscard]] std::size_t size() const { return size_; }
  [[nodiscard]] bool empty() const { return size_ == 0; }
  [[nodiscard]] Element* data() { return elements_.get(); }
  [[nodiscard]] const Element* data() const { return elements_.get(); }
  [[nodiscard]] Element& operator[](std::size_t at) { return data()[at]; }
  [[nodiscard]] const Element& operator[](std::size_t at) const { return data()[at]; }
  [[nodiscard]] Element* begin() { return data(); }
  [[nodiscard]] Element* end() { return data() + size_; }
  [[nodiscard]] const Element* begin() const { return data(); }
  [[nodiscard]] const Element* end() const { return data() + size_; }
  /// Throws std::out_of_range.
  [[nodiscard]] const Element& at(std::size_t place) const {
    if (place >= size_)
      throw std::out_of_range("no such element");
    return data()[place];
  }

private:
  struct Room {
    void operator()(Element* elements) const { std::free(elements); }
  };
  void swap(FixedArray& other) noexcept {
    std::swap(elements_, other.elements_);
    std::swap(size_, other.size_);
  }

  std::unique_ptr<Element, Room> elements_;
  std::size_t size_ = 0;
};

} // namespace wetspell
