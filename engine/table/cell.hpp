// One cell of a table, as it was typed: empty, number, text, date or error.
#pragma once

#include <array>
#include <bit>
#include <cstdint>
#include <cstring>
#include <string>
#include <string_view>
#include <utility>

namespace wetspell {

enum class CellKind : std::uint8_t { empty, number, text, date, error };

/// A cell's content. A blank is a kind of its own and never the number 0. Sixteen bytes, because sheets have
/// millions of cells: short texts stand in the cell itself, long ones beside it. An empty cell is all zero
/// bytes, for the storage of tables.
class Cell {
public:
  Cell() = default;
  static Cell of_number(double value) { return {CellKind::number, value}; }
  static Cell of_date(double serial) { return {CellKind::date, serial}; }
  /// Text; an empty text is an empty cell.
  static Cell of_text(std::string_view value) { return value.empty() ? Cell{} : Cell{CellKind::text, value}; }
  static Cell of_error(std::string_view value) { return {CellKind::error, value}; }

  Cell(const Cell& other) : content_(other.content_) {
    if (beside())
      put(Beside{new std::string(other.text())});
  }
  Cell(Cell&& other) noexcept : content_(std::exchange(other.content_, {})) {}
  Cell& operator=(const Cell& other) {
    if (compact() && other.compact())
      content_ = other.content_;
    else if (this != &other)
      *this = Cell(other);
    return *this;
  }
  Cell& operator=(Cell&& other) noexcept {
    if (this != &other) {
      let_go();
      content_ = std::exchange(other.content_, {});
    }
    return *this;
  }
  ~Cell() { let_go(); }

  [[nodiscard]] CellKind kind() const { return content_.kind; }
  [[nodiscard]] bool empty() const { return kind() == CellKind::empty; }
  /// Number cells: the number; date cells: days since 1899-12-30, time as fraction; others: 0.
  [[nodiscard]] double number() const { return holds_number() ? get<double>() : 0; }
  /// Text cells: UTF-8; error cells: the error as the sheet shows it; others: empty. Lives as long as the
  /// cell stays as it is.
  [[nodiscard]] std::string_view text() const {
    if (holds_number())
      return {};
    return beside() ? std::string_view(*get<Beside>().text) : std::string_view(content_.bytes, content_.size);
  }

  /// Whether all of the content stands in the cell itself, so that copies are cheap.
  [[nodiscard]] bool compact() const { return !beside(); }
  /// Equal compact cells have equal hashes (but for 0 and -0).
  [[nodiscard]] std::size_t hash() const {
    const auto [low, high] = words();
    constexpr std::uint64_t odd = 0x9E3779B97F4A7C15; // 2^64 by the golden ratio: spreads neighbours
    std::uint64_t mixed = low ^ (high * odd);
    mixed = (mixed ^ (mixed >> 32)) * odd; // all of a product's lower half shows in its upper half
    return static_cast<std::size_t>(mixed >> 32);
  }

  friend bool operator==(const Cell& one, const Cell& other) {
    if (one.kind() != other.kind())
      return false;
    if (one.holds_number())
      return one.number() == other.number();
    return one.compact() && other.compact() ? one.words() == other.words() : one.text() == other.text();
  }

private:
  static constexpr std::uint8_t room = 14;
  static constexpr std::uint8_t stands_beside = room + 1; ///< as size

  struct Content {
    alignas(double) char bytes[room] = {}; ///< zero behind a short text
    std::uint8_t size = 0;                 ///< of a text in the cell itself
    CellKind kind = CellKind::empty;
  };
  struct Beside { ///< a text too long for the cell itself
    std::string* text;
  };

  Cell(CellKind kind, double number) {
    content_.kind = kind;
    put(number);
  }
  Cell(CellKind kind, std::string_view text) {
    content_.kind = kind;
    if (text.size() <= room) {
      std::memcpy(content_.bytes, text.data(), text.size());
      content_.size = static_cast<std::uint8_t>(text.size());
    } else {
      put(Beside{new std::string(text)});
      content_.size = stands_beside;
    }
  }

  [[nodiscard]] bool holds_number() const { return kind() == CellKind::number || kind() == CellKind::date; }
  [[nodiscard]] bool beside() const { return content_.size == stands_beside; }
  [[nodiscard]] std::array<std::uint64_t, 2> words() const {
    return std::bit_cast<std::array<std::uint64_t, 2>>(content_);
  }

  template <class Kept> [[nodiscard]] Kept get() const {
    Kept kept;
    std::memcpy(&kept, content_.bytes, sizeof(Kept));
    return kept;
  }
  template <class Kept> void put(Kept kept) { std::memcpy(content_.bytes, &kept, sizeof(Kept)); }
  void let_go() {
    if (beside())
      delete get<Beside>().text;
  }

  Content content_;
};
static_assert(sizeof(Cell) == 16);

/// The cell as a person would write it: shortest digits that give the number back, dates as 2026-03-21.
std::string to_text(const Cell& cell);

} // namespace wetspell
