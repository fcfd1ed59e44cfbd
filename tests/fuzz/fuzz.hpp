// What every fuzzer shares: a claim that must hold whatever the bytes are, and a sheet made of bytes.
#pragma once

#include "table/table.hpp"

#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string_view>

namespace wetspell::fuzz {

/// Ends the run with these words when the claim does not hold, so that the fuzzer keeps the bytes.
inline void expect(bool claim, const char* words) {
  if (claim)
    return;
  std::fprintf(stderr, "does not hold: %s\n", words);
  std::abort();
}

inline std::string_view text_of(const std::uint8_t* bytes, std::size_t size) {
  return {reinterpret_cast<const char*>(bytes), size};
}

/// Lines are rows, tabs part cells; what is a plain number is one, '@45000' a date, '#NAME?' an error.
Table sheet_of(std::string_view bytes);

} // namespace wetspell::fuzz

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size);
