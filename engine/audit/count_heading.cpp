#include "audit/count_heading.hpp"

#include "season/choice.hpp"
#include "season/species.hpp"
#include "season/words.hpp"

#include <algorithm>

namespace wetspell {

namespace {

/// Whether a typed word stands for a word of the animal's name: the same, its plural, or its beginning.
bool stands_for(const std::string& typed, const std::string& name) {
  if (typed == name || typed == name + "s")
    return true;
  return typed.size() >= 3 && typed.size() < name.size() && name.starts_with(typed);
}

std::string_view form_named(const std::vector<std::string>& words) {
  const auto list = seen_as_words().words;
  for (const ChoiceWord& form : list)
    for (const std::string& word : words) {
      bool same = word == form.label;
      for_each_part(form.also, [&](std::string_view other) { same = same || word == other; });
      if (same)
        return form.label;
    }
  return {};
}

} // namespace

std::optional<CountColumn> count_heading(std::string_view text) {
  const std::vector<std::string> words = words_of(text);
  if (words.size() < 2)
    return std::nullopt;
  const SpeciesSpec* found = nullptr;
  std::size_t longest = 0;
  for (const SpeciesSpec& animal : species_catalogue()) {
    const std::vector<std::string> name = words_of(animal.name);
    const bool named = std::all_of(name.begin(), name.end(), [&](const std::string& part) {
      return std::any_of(words.begin(), words.end(),
                         [&](const std::string& word) { return stands_for(word, part); });
    });
    if (named && name.size() > longest) { // "blue-spotted salamander" before "spotted salamander"
      found = &animal;
      longest = name.size();
    }
  }
  if (found == nullptr || longest < 2)
    return std::nullopt;
  const std::string_view form = form_named(words);
  const auto usual = seen_as_words().words[static_cast<std::size_t>(found->seen_as)].label;
  return CountColumn{std::string(found->name), std::string(form.empty() ? usual : form)};
}

} // namespace wetspell
