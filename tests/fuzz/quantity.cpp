// The quantity reader: the first byte chooses the kind, the second the unit of bare numbers, the rest is
// typed.
#include "fuzz/fuzz.hpp"
#include "quantity/print.hpp"
#include "quantity/read.hpp"

#include <cmath>

int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
  using namespace wetspell;
  using fuzz::expect;
  if (size < 2)
    return 0;
  ReadOptions options;
  options.kind = static_cast<Kind>(bytes[0] % kinds_of_quantity);
  options.date_order = static_cast<DateOrder>(bytes[1] % 3);
  options.assume = usual_unit(options.kind);
  const Quantity said = read(fuzz::text_of(bytes + 2, size - 2), options);
  if (said.has_value()) {
    expect(std::isfinite(said.si), "a value is a number");
    expect(said.si_high == said.si, "one value has no upper end of its own");
    expect(said.resolution >= 0, "the step of the last digit is none or more");
    print(said.si, said.unit == Unit::none ? usual_unit(options.kind) : said.unit);
  }
  if (said.status == Status::range)
    expect(said.si <= said.si_high, "a range goes upwards");
  expect(said.status != Status::bad || !text(said.reason).empty(),
         "what cannot be read has a reason in words");
  const Quantity again = read(fuzz::text_of(bytes + 2, size - 2), options);
  expect(again.status == said.status && again.reason == said.reason, "reading twice says the same");
  return 0;
}
