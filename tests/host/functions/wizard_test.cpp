// What the function wizard tells about each function, read back from the office, is what the catalogue says.

#include "base/text.hpp"
#include "function/function.hpp"
#include "harness/host.hpp"

#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/sheet/FunctionArgument.hpp>

#include <fmt/format.h>

#include <map>
#include <vector>

namespace wetspell::host {
namespace {

struct Described {
  std::string description;
  sal_Int32 category = 0;
  std::vector<css::sheet::FunctionArgument> arguments;
};

std::multimap<std::string, Described> describedFunctions() {
  const css::uno::Reference<css::container::XIndexAccess> all(
      office().service("com.sun.star.sheet.FunctionDescriptions"), css::uno::UNO_QUERY_THROW);
  std::multimap<std::string, Described> functions;
  for (sal_Int32 i = 0; i < all->getCount(); ++i) {
    css::uno::Sequence<css::beans::PropertyValue> properties;
    all->getByIndex(i) >>= properties;
    rtl::OUString name, description;
    Described one;
    for (const css::beans::PropertyValue& property : properties) {
      css::uno::Sequence<css::sheet::FunctionArgument> arguments;
      if (property.Name == "Name") {
        property.Value >>= name;
      } else if (property.Name == "Description") {
        property.Value >>= description;
      } else if (property.Name == "Category") {
        property.Value >>= one.category;
      } else if (property.Name == "Arguments" && (property.Value >>= arguments)) {
        one.arguments.assign(arguments.begin(), arguments.end());
      }
    }
    one.description = addin::fromOffice(description);
    functions.emplace(addin::fromOffice(name), one);
  }
  return functions;
}

/// A function of Calc's own in the category that the office calls by this name.
const std::map<std::string_view, std::string> builtIn{
    {"Information", "ISBLANK"}, {"Logical", "IF"},          {"Mathematical", "SUM"}, {"Matrix", "MMULT"},
    {"Statistical", "AVERAGE"}, {"Spreadsheet", "VLOOKUP"}, {"Text", "LEN"},         {"Date&Time", "DATE"}};

TEST(Wizard, TellsWhatTheCatalogueSays) {
  const auto described = describedFunctions();
  for (const FunctionSpec& function : functions()) {
    SCOPED_TRACE(function.name);
    ASSERT_EQ(described.count(std::string(function.name)), 1U) << "listed once";
    const Described& one = described.find(std::string(function.name))->second;
    EXPECT_EQ(one.description, function.summary);
    EXPECT_EQ(one.category, described.find(builtIn.at(function.category))->second.category);
    ASSERT_EQ(one.arguments.size(), function.parameters.size());
    for (std::size_t i = 0; i < one.arguments.size(); ++i) {
      const ParameterSpec& parameter = function.parameters[i];
      EXPECT_EQ(addin::fromOffice(one.arguments[i].Name), parameter.name);
      EXPECT_EQ(addin::fromOffice(one.arguments[i].Description),
                parameter.optional()
                    ? fmt::format("{}. When left out: {}", parameter.help, parameter.standard)
                    : std::string(parameter.help));
      EXPECT_TRUE(one.arguments[i].IsOptional || !parameter.optional()) << parameter.name;
    }
  }
}

} // namespace
} // namespace wetspell::host
