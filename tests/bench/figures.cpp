#include "bench/figures.hpp"

#include <fmt/format.h>

#include <fstream>

namespace wetspell::bench {

void add(const std::filesystem::path& file, const Figure& figure) {
  std::ofstream out(file, std::ios::app);
  out << fmt::format("{:<55} | {:<35} | {:<60} | {}\n", figure.what, figure.asked, figure.measured,
                     figure.met ? "met" : "missed");
}

std::string grouped(double number) {
  const std::string digits = fmt::format("{:.0f}", number);
  std::string text;
  for (std::size_t i = 0; i < digits.size(); ++i) {
    if (i > 0 && digits[i - 1] != '-' && (digits.size() - i) % 3 == 0)
      text += ',';
    text += digits[i];
  }
  return text;
}

} // namespace wetspell::bench
