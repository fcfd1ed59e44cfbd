// A closed vocabulary: words to meanings, hashed when compiled, searched without allocation.
#pragma once

#include <array>
#include <bit>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <stdexcept>
#include <string_view>

namespace wetspell {

template <class Meaning> struct WordMeaning {
  std::string_view word;
  Meaning meaning;
};

template <class Meaning, std::size_t N> class Vocabulary {
public:
  /// A word that stands in the list twice stops the compilation.
  consteval explicit Vocabulary(const std::array<WordMeaning<Meaning>, N>& words) : words_(words) {
    for (std::size_t i = 0; i < N; ++i) {
      std::size_t at = hash(words[i].word) % size;
      for (; slots_[at] != 0; at = (at + 1) % size)
        if (words[slots_[at] - 1U].word == words[i].word)
          throw std::logic_error("word listed twice");
      slots_[at] = static_cast<std::uint16_t>(i + 1);
    }
  }

  [[nodiscard]] constexpr std::optional<Meaning> find(std::string_view word) const {
    for (std::size_t at = hash(word) % size; slots_[at] != 0; at = (at + 1) % size)
      if (words_[slots_[at] - 1U].word == word)
        return words_[slots_[at] - 1U].meaning;
    return std::nullopt;
  }

  [[nodiscard]] constexpr const std::array<WordMeaning<Meaning>, N>& words() const { return words_; }

private:
  static constexpr std::size_t size = std::bit_ceil(N * 3);

  static constexpr std::size_t hash(std::string_view word) {
    std::uint32_t h = 2166136261U; // FNV-1a
    for (const char c : word)
      h = (h ^ static_cast<unsigned char>(c)) * 16777619U;
    return h ^ (h >> 15U);
  }

  std::array<WordMeaning<Meaning>, N> words_;
  std::array<std::uint16_t, size> slots_{};
};

template <class Meaning, std::size_t N> consteval auto vocabulary(const WordMeaning<Meaning> (&words)[N]) {
  return Vocabulary<Meaning, N>(std::to_array(words));
}

} // namespace wetspell
