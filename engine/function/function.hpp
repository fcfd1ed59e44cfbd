// The cell functions: each declared once, with its texts, its parameters, its examples and what it does.
// The wizard's texts, the IDL, the C++ glue, the reference pages and the tests all come from here.
#pragma once

#include "base/result.hpp"
#include "quantity/unit.hpp"
#include "table/cell.hpp"

#include <cstddef>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace wetspell {

/// What a parameter takes. Readings come by reference to their cells and in no other way, because a sheet
/// hands a blank cell to anything else as zero.
enum class Takes : std::uint8_t {
  reading,  ///< a cell that somebody typed into; over a range the function answers cell by cell
  readings, ///< the cells of one set of readings, blanks among them
  measure,  ///< what cannot be zero, in a cell or in the formula itself: zero is taken for blank
  rows,     ///< a rectangle of cells
  formula,  ///< a cell that holds a formula
  unit,     ///< optional word for a unit of `kind`
  word,     ///< a word
  table,    ///< optional rectangle of at least two cells
  tables,   ///< the last parameter, any number of times: rectangles and words
  values,   ///< the last parameter, any number of times: typed values, texts, rectangles
};

struct ParameterSpec {
  std::string_view name; ///< "result unit": as the wizard shows it
  Takes takes = Takes::reading;
  Kind kind = Kind::depth;     ///< of readings and units
  std::string_view help;       ///< what to give, without a full stop
  std::string_view standard{}; ///< what is taken when it is left out, in words; empty: required

  [[nodiscard]] bool optional() const { return !standard.empty(); }
};

/// Looks up cells of the sheet a formula stands in.
class CellSource {
public:
  virtual ~CellSource() = default;
  /// A rectangle of cells by its address or name ("A1", "$Visits.B2:D2", "my_range").
  struct Block {
    std::size_t rows = 0;
    std::size_t columns = 0;
    std::vector<Cell> cells; ///< row by row
    std::string formula;     ///< of a single cell that holds one
  };
  [[nodiscard]] virtual std::optional<Block> find(std::string_view reference) const = 0;
};

/// One argument of a call, as it came from the sheet.
struct Argument {
  bool given = false;
  std::size_t rows = 0;
  std::size_t columns = 0;
  std::vector<Cell> cells; ///< row by row
  std::string formula;     ///< Takes::formula: the formula's text; empty when the cell has none
  std::shared_ptr<const CellSource> source; ///< Takes::formula: where the formula's references lead

  static Argument of(Cell cell) {
    Argument argument{.given = true, .rows = 1, .columns = 1, .cells = {}, .formula = {}, .source = {}};
    argument.cells.push_back(std::move(cell));
    return argument;
  }
  [[nodiscard]] bool single() const { return rows == 1 && columns == 1; }
  /// Left out, or one blank cell.
  [[nodiscard]] bool blank() const { return !given || (cells.size() == 1 && cells.front().empty()); }
};

/// What a call gives: one cell, or a rectangle of cells. In a rectangle a refusal is an error cell.
struct Value {
  std::size_t rows = 1;
  std::size_t columns = 1;
  std::vector<Cell> cells; ///< row by row

  Value() : cells(1) {}
  Value(Cell cell) { cells.push_back(std::move(cell)); } // NOLINT: a cell is the usual value
  Value(std::size_t row_count, std::size_t column_count)
      : rows(row_count), columns(column_count), cells(row_count * column_count) {}
};

/// A cell of an example as somebody would type it: "62.5" is a number, "25 in" a text.
struct ExampleCell {
  std::string_view address; ///< "A1"
  std::string_view content;
};

struct Example {
  std::vector<ExampleCell> cells;
  std::string_view formula; ///< with the display name and semicolons, without the equals sign
  /// The cell's text, number or error value. Numbers to as many decimals as are given; the cells of a
  /// rectangle separated by " | ", its rows by " // ".
  std::string_view result;
  std::string_view shows{}; ///< what the example is about
};

struct ErrorSpec {
  ProblemKind kind = ProblemKind::bad_argument;
  std::string_view when;
};

struct FunctionSpec {
  std::string_view name;   ///< "POOL.DEPTHCLASS": as people see and type it
  std::string_view method; ///< "depthClass": part of the name that documents keep; never changed
  std::string_view category;
  std::string_view summary; ///< one line, without a full stop
  std::vector<ParameterSpec> parameters;
  std::string_view blanks; ///< what blanks do
  std::vector<ErrorSpec> errors;
  std::vector<Example> examples;
  std::vector<std::string_view> see_also;
  /// The arguments have been checked: required ones are there, units fit, readings are one cell each.
  Result<Value> (*evaluate)(std::span<const Argument>) = nullptr;
};

/// All functions, in the order of the reference.
std::span<const FunctionSpec> functions();

/// By display name, by the name documents keep, or without the prefix; capitals do not matter.
const FunctionSpec* function_named(std::string_view name);

/// The name that documents keep: "ORG.WETSPELL.POOL.DEPTHCLASS".
std::string document_name(const FunctionSpec& function);

/// The parameter's name as a programming language takes it: "resultUnit".
std::string identifier(const ParameterSpec& parameter);

/// Checks the arguments against the parameters and evaluates. Problems name the function.
Result<Value> run(const FunctionSpec& function, std::span<const Argument> arguments);

/// As a sheet shows it: "Err:502", "#N/A", "#NUM!", "Err:523".
std::string_view error_value(ProblemKind kind);

/// The service in which the functions stand, and its module's prefix of names in documents.
inline constexpr std::string_view function_service = "org.wetspell.Pool";

} // namespace wetspell
