#include "gather/file_names.hpp"

#include <algorithm>
#include <set>

namespace wetspell {

namespace {

bool plain(char c) {
  return (c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
}

std::string without_capitals(std::string text) {
  for (char& c : text)
    if (c >= 'A' && c <= 'Z')
      c = static_cast<char>(c - 'A' + 'a');
  return text;
}

} // namespace

std::vector<std::string> file_names(std::span<const std::string> codes) {
  std::vector<std::string> names;
  std::set<std::string> taken;
  for (const std::string& code : codes) {
    std::string name = code.empty() ? "nobody" : code;
    std::replace_if(
        name.begin(), name.end(), [](char c) { return !plain(c); }, '-');
    std::string free = name;
    for (int number = 2; !taken.insert(without_capitals(free)).second; ++number)
      free = name + "-" + std::to_string(number);
    names.push_back(std::move(free));
  }
  return names;
}

} // namespace wetspell
