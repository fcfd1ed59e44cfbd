// One cell of a table, as it was typed: empty, number, text, date or error.
#pragma once

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

  Cell(const Cell& other) : Cell() { take_copy(other); }
  Cell(Cell&& other) noexcept { take_over(other); }
  Cell& operator=(const Cell& other) {
    if (this != &other) {
      let_go();
      take_copy(other);
    }
    return *this;
  }
  Cell& operator=(Cell&& other) noexcept {
    if (this != &other) {
      let_go();
      take_over(other);
    }
    return *this;
  }
  ~Cell() { let_go(); }

  [[nodiscard]] CellKind kind() const { return kind_; }
  [[nodiscard]] bool empty() const { return kind_ == CellKind::empty; }
  /// Number cells: the number; date cells: days since 1899-12-30, time as fraction; others: 0.
  [[nodiscard]] double number() const { return holds_number() ? content<double>() : 0; }
  /// Text cells: UTF-8; error cells: the error as the sheet shows it; others: empty. Lives as long as the
  /// cell stays as it is.
  [[nodiscard]] std::string_view text() const {
    if (holds_number())
      return {};
    return beside() ? std::string_view(*content<Beside>().text) : std::string_view(bytes_, size_);
  }

  friend bool operator==(const Cell& one, const Cell& other) {
    if (one.kind_ == CellKind::text && other.kind_ == CellKind::text && !one.beside() && !other.beside())
      return one.size_ == other.size_ && std::memcmp(one.bytes_, other.bytes_, one.size_) == 0;
    return one.kind_ == other.kind_ && one.number() == other.number() && one.text() == other.text();
  }

private:
  static constexpr std::uint8_t room = 14;
  static constexpr std::uint8_t stands_beside = room + 1; ///< as size

  struct Beside { ///< a text too long for the cell itself
    std::string* text;
  };

  Cell(CellKind kind, double number) : kind_(kind) { put(number); }
  Cell(CellKind kind, std::string_view text) : kind_(kind) { put_text(text); }

  [[nodiscard]] bool holds_number() const { return kind_ == CellKind::number || kind_ == CellKind::date; }
  [[nodiscard]] bool beside() const { return size_ == stands_beside; }

  template <class Content> [[nodiscard]] Content content() const {
    Content content;
    std::memcpy(&content, bytes_, sizeof(Content));
    return content;
  }
  template <class Content> void put(Content content) { std::memcpy(bytes_, &content, sizeof(Content)); }
  void put_text(std::string_view text) {
    if (text.size() <= room) {
      std::memcpy(bytes_, text.data(), text.size());
      size_ = static_cast<std::uint8_t>(text.size());
    } else {
      put(Beside{new std::string(text)});
      size_ = stands_beside;
    }
  }
  void take_copy(const Cell& other) {
    if (other.beside())
      put(Beside{new std::string(other.text())});
    else
      std::memcpy(bytes_, other.bytes_, room);
    size_ = other.size_;
    kind_ = other.kind_;
  }
  void let_go() {
    if (beside())
      delete content<Beside>().text;
    size_ = 0;
  }
  /// From a cell that keeps nothing which it would have to let go.
  void take_over(Cell& other) {
    std::memcpy(bytes_, other.bytes_, room);
    size_ = std::exchange(other.size_, std::uint8_t{0});
    kind_ = std::exchange(other.kind_, CellKind::empty);
  }

  alignas(double) char bytes_[room] = {};
  std::uint8_t size_ = 0; ///< of a text in the cell itself
  CellKind kind_ = CellKind::empty;
};
static_assert(sizeof(Cell) == 16);

/// The cell as a person would write it: shortest digits that give the number back, dates as 2026-03-21.
std::string to_text(const Cell& cell);

} // namespace wetspell
