// Long loops in parts, each on a processor of its own.
#pragma once

#include <algorithm>
#include <cstddef>
#include <future>
#include <thread>
#include <vector>

namespace wetspell {

/// Into how many parts a loop over `count` is worth being cut: one a processor, none shorter than `least`.
inline std::size_t parts_of(std::size_t count, std::size_t least) {
  static const std::size_t processors = std::max(1U, std::thread::hardware_concurrency()); // asks the system
  return std::clamp<std::size_t>(count / least, 1, processors);
}

/// From first up to, not including, end.
struct Range {
  std::size_t first, end;
};
/// What belongs to a part of a loop over `count`.
inline Range range_of(std::size_t part, std::size_t parts, std::size_t count) {
  return {part * count / parts, (part + 1) * count / parts};
}

/// Calls work(part) for 0 to parts - 1, the first of them on the calling thread, and waits for all. What one
/// throws is thrown again here.
template <class Work> void in_parts(std::size_t parts, const Work& work) {
  std::vector<std::future<void>> others; // each waits in its destructor, also when another throws
  for (std::size_t part = 1; part < parts; ++part)
    others.push_back(std::async(std::launch::async, [&work, part] { work(part); }));
  work(std::size_t{0});
  for (std::future<void>& other : others)
    other.get();
}

/// Calls work(first, end) for the parts of a loop over `count`, none shorter than `least`.
template <class Work> void in_ranges(std::size_t count, std::size_t least, const Work& work) {
  const std::size_t parts = parts_of(count, least);
  in_parts(parts, [&](std::size_t part) {
    const auto [first, end] = range_of(part, parts, count);
    work(first, end);
  });
}

} // namespace wetspell
