// generate_functions FOLDER FOLDER-OF-THE-IDL: from the catalogue of cell functions, everything that the
// office wants to be told about them in its own languages:
//   XPool.idl, Pool.idl    the interface with one method for each function, and the service
//   pool_methods.inc       the methods in C++, each handing its arguments to the one runner
//   CalcAddIns.xcu         names and texts for formulas and the function wizard
//   functions.txt          the names that documents keep, for comparing with addin/frozen/functions.txt

#include "function/function.hpp"

#include <boost/algorithm/string/replace.hpp>
#include <fmt/format.h>

#include <filesystem>
#include <fstream>

namespace {

using namespace wetspell;

struct TypeNames {
  std::string_view idl;
  std::string_view cpp;
};

TypeNames types_of(Takes takes) {
  switch (takes) {
  case Takes::reading:
  case Takes::readings:
  case Takes::rows:
  case Takes::formula:
    return {"com::sun::star::table::XCellRange", "const css::uno::Reference<css::table::XCellRange>&"};
  case Takes::measure:
  case Takes::unit:
  case Takes::word:
  case Takes::table:
    return {"any", "const css::uno::Any&"};
  case Takes::tables:
  case Takes::values:
    return {"sequence<any>", "const css::uno::Sequence<css::uno::Any>&"};
  }
  return {};
}

/// Calls `one(parameter)` for every parameter and joins what it gives.
template <class One> std::string joined(const FunctionSpec& function, std::string_view by, One one) {
  std::string text;
  for (const ParameterSpec& parameter : function.parameters) {
    text += fmt::format("{}{}", text.empty() ? "" : by, one(parameter));
  }
  return text;
}

/// Calc fills in an argument of this type by itself, with the document; people do not see it.
bool wants_document(const ParameterSpec& parameter) {
  return parameter.takes == Takes::formula;
}

std::string_view hidden_idl(const ParameterSpec& parameter) {
  return wants_document(parameter) ? "[in] com::sun::star::beans::XPropertySet document, " : "";
}

std::string_view hidden_cpp(const ParameterSpec& parameter) {
  return wants_document(parameter) ? "const css::uno::Reference<css::beans::XPropertySet>& document, " : "";
}

std::string interface_idl() {
  std::string text =
      "module org { module wetspell {\n\n"
      "/** The cell functions: one method each. Names and parameters are kept in documents and "
      "never change. */\ninterface XPool {\n";
  for (const FunctionSpec& function : functions()) {
    text += fmt::format("    /** {}: {}. */\n    any {}({})\n"
                        "        raises (com::sun::star::lang::IllegalArgumentException,\n"
                        "                com::sun::star::sheet::NoConvergenceException);\n",
                        function.name, function.summary, function.method,
                        joined(function, ", ", [](const ParameterSpec& parameter) {
                          return fmt::format("{}[in] {} {}", hidden_idl(parameter),
                                             types_of(parameter.takes).idl, identifier(parameter));
                        }));
  }
  return text + "};\n\n}; };\n";
}

std::string service_idl() {
  return "module org { module wetspell {\n\n/** The cell functions of Calc. */\nservice Pool : XPool;\n\n}; "
         "};\n";
}

std::string methods_cpp() {
  std::string text = "// Written by generate_functions from the catalogue of cell functions.\n";
  std::size_t index = 0;
  for (const FunctionSpec& function : functions()) {
    const auto declared = joined(function, ", ", [](const ParameterSpec& parameter) {
      return fmt::format("{}{} {}", hidden_cpp(parameter), types_of(parameter.takes).cpp,
                         identifier(parameter));
    });
    const auto handed = joined(function, "", [](const ParameterSpec& parameter) {
      return wants_document(parameter) ? fmt::format(", FormulaCell{{document, {}}}", identifier(parameter))
                                       : ", " + identifier(parameter);
    });
    text += fmt::format("css::uno::Any SAL_CALL {}({}) override {{ return call({}{}); }}\n", function.method,
                        declared, index++, handed);
  }
  return text;
}

std::string in_xml(std::string_view text) {
  std::string result(text);
  boost::replace_all(result, "&", "&amp;");
  boost::replace_all(result, "<", "&lt;");
  boost::replace_all(result, ">", "&gt;");
  return result;
}

std::string property(std::string_view name, std::string_view value) {
  return fmt::format("<prop oor:name=\"{}\"><value xml:lang=\"en\">{}</value></prop>\n", name, in_xml(value));
}

std::string parameter_xcu(const ParameterSpec& parameter) {
  const std::string help = parameter.optional()
                               ? fmt::format("{}. When left out: {}", parameter.help, parameter.standard)
                               : std::string(parameter.help);
  return fmt::format("<node oor:name=\"{}\" oor:op=\"replace\">\n{}{}</node>\n", identifier(parameter),
                     property("DisplayName", parameter.name), property("Description", help));
}

std::string configuration() {
  std::string text = fmt::format("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                                 "<oor:component-data xmlns:oor=\"http://openoffice.org/2001/registry\"\n"
                                 "  xmlns:xs=\"http://www.w3.org/2001/XMLSchema\"\n"
                                 "  oor:name=\"CalcAddIns\" oor:package=\"org.openoffice.Office\">\n"
                                 "<node oor:name=\"AddInInfo\">\n<node oor:name=\"{}\" "
                                 "oor:op=\"replace\">\n<node oor:name=\"AddInFunctions\">\n",
                                 function_service);
  for (const FunctionSpec& function : functions()) {
    text += fmt::format("<node oor:name=\"{}\" oor:op=\"replace\">\n{}{}"
                        "<prop oor:name=\"Category\"><value>{}</value></prop>\n{}"
                        "<node oor:name=\"Parameters\">\n{}</node>\n</node>\n",
                        function.method, property("DisplayName", function.name),
                        property("Description", function.summary), in_xml(function.category),
                        property("CompatibilityName", function.name), joined(function, "", parameter_xcu));
  }
  return text + "</node>\n</node>\n</node>\n</oor:component-data>\n";
}

std::string frozen_names() {
  std::string text;
  for (const FunctionSpec& function : functions()) {
    text += fmt::format("{} {}({})\n", document_name(function), function.name,
                        joined(function, "; ", [](const ParameterSpec& parameter) {
                          return fmt::format("{} {}", types_of(parameter.takes).idl, identifier(parameter));
                        }));
  }
  return text;
}

bool write(const std::filesystem::path& file, const std::string& text) {
  std::ofstream out(file, std::ios::binary);
  out << text;
  out.close();
  if (!out) {
    fmt::print(stderr, "generate_functions: cannot write {}\n", file.string());
  }
  return static_cast<bool>(out);
}

} // namespace

int main(int argc, char** argv) {
  if (argc != 3) {
    fmt::print(stderr, "usage: generate_functions FOLDER FOLDER-OF-THE-IDL\n");
    return 2;
  }
  const std::filesystem::path folder = argv[1];
  const std::filesystem::path idl = argv[2];
  const bool written = write(idl / "XPool.idl", interface_idl()) && write(idl / "Pool.idl", service_idl()) &&
                       write(folder / "pool_methods.inc", methods_cpp()) &&
                       write(folder / "CalcAddIns.xcu", configuration()) &&
                       write(folder / "functions.txt", frozen_names());
  return written ? 0 : 1;
}
