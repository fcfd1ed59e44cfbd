// The reference pages hold every entry of their catalogues, in tables that are well formed.
#include "season/catalogue_text.hpp"
#include "season/field.hpp"
#include "season/limits.hpp"
#include "season/settings.hpp"

#include <gtest/gtest.h>

#include <algorithm>

namespace wetspell {
namespace {

std::size_t bars(std::string_view line) {
  std::size_t count = 0;
  for (std::size_t i = 0; i < line.size(); ++i)
    count += line[i] == '|' && (i == 0 || line[i - 1] != '\\');
  return count;
}

/// Every row of a table has as many cells as the row above it.
void expect_even_tables(std::string_view page) {
  std::size_t above = 0;
  while (!page.empty()) {
    const std::string_view line = page.substr(0, page.find('\n'));
    const std::size_t here = line.starts_with('|') ? bars(line) : 0;
    EXPECT_TRUE(above == 0 || here == 0 || here == above) << line;
    above = here;
    page.remove_prefix(std::min(page.size(), line.size() + 1));
  }
}

TEST(FieldsPage, HoldsEveryFieldAndSetting) {
  const std::string page = fields_markdown();
  for (const FieldSpec& s : fields())
    EXPECT_NE(page.find(s.heading), std::string::npos) << s.heading;
  for (const SettingSpec& s : settings_catalogue())
    EXPECT_NE(page.find(s.label), std::string::npos) << s.label;
  expect_even_tables(page);
  EXPECT_EQ(page.back(), '\n');
}

TEST(LimitsPage, HoldsEveryLimitWithItsSource) {
  const std::string page = limits_markdown();
  for (const LimitSpec& s : limits_catalogue()) {
    EXPECT_NE(page.find(s.name), std::string::npos) << s.name;
    EXPECT_NE(page.find(s.source), std::string::npos) << s.name;
  }
  EXPECT_NE(page.find("| `depth_wading` | 36 in |"), std::string::npos);
  expect_even_tables(page);
}

} // namespace
} // namespace wetspell
