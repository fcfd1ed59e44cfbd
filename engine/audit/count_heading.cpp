#include "audit/count_heading.hpp"

#include "audit/vocabulary.hpp"
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

/// The form that a word stands for, alone or as one of several: "egg", "clusters".
std::string_view form_of(const std::string& word) {
  for (const ChoiceWord& form : seen_as_words().words) {
    bool named = false;
    const auto look = [&](std::string_view words) {
      const auto parts = words_of(words);
      named = named || std::find(parts.begin(), parts.end(), word) != parts.end();
    };
    look(form.label);
    for_each_part(form.also, look);
    if (named)
      return form.label;
  }
  return {};
}

/// Words that leave a count what it is.
bool says_count(const std::string& word) {
  const auto meaning = heading_word(word);
  return meaning == Word::filler || meaning == Word::count || meaning == Word::code ||
         meaning == Word::seen || meaning == Word::first || meaning == Word::value;
}

/// The form that the words beside the animal's name say, empty where they say none; nothing where they say
/// more than a form: males, a second count, both.
std::optional<std::string_view> form_beside(const std::vector<std::string>& words,
                                            const std::vector<std::string>& name) {
  std::string_view named;
  for (const std::string& word : words) {
    if (std::any_of(name.begin(), name.end(),
                    [&](const std::string& part) { return stands_for(word, part); }))
      continue;
    const std::string_view form = form_of(word);
    if (form.empty() ? !says_count(word) : !named.empty() && named != form)
      return std::nullopt;
    named = form.empty() ? named : form;
  }
  return named;
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
  const auto form = form_beside(words, words_of(found->name));
  if (!form)
    return std::nullopt;
  const auto usual = seen_as_words().words[static_cast<std::size_t>(found->seen_as)].label;
  return CountColumn{std::string(found->name), std::string(form->empty() ? usual : *form)};
}

} // namespace wetspell
