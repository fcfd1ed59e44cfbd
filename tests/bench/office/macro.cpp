#include "bench/office/macro.hpp"

#include "base/text.hpp"

#include <com/sun/star/container/XNameContainer.hpp>
#include <com/sun/star/script/XLibraryContainer.hpp>
#include <com/sun/star/script/provider/XScriptProvider.hpp>
#include <com/sun/star/script/provider/XScriptProviderFactory.hpp>
#include <com/sun/star/script/provider/theMasterScriptProviderFactory.hpp>

namespace wetspell::bench {

using addin::toOffice;
using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY_THROW;

Macro::Macro(driver::Office& office, const std::string& source) : office_(office) {
  const Reference<css::script::XLibraryContainer> libraries(
      office.service("com.sun.star.script.ApplicationScriptLibraryContainer"), UNO_QUERY_THROW);
  const Reference<css::container::XNameContainer> library =
      libraries->hasByName("Bench")
          ? Reference<css::container::XNameContainer>(libraries->getByName("Bench"), UNO_QUERY_THROW)
          : libraries->createLibrary("Bench");
  const Any module(toOffice(source));
  if (library->hasByName("Rows"))
    library->replaceByName("Rows", module);
  else
    library->insertByName("Rows", module);
}

Any Macro::call(const std::string& procedure, const std::vector<Any>& arguments) const {
  try {
    const auto provider = css::script::provider::theMasterScriptProviderFactory::get(office_.context())
                              ->createScriptProvider(Any(rtl::OUString()));
    const auto script = provider->getScript(
        toOffice("vnd.sun.star.script:Bench.Rows." + procedure + "?language=Basic&location=application"));
    Sequence<sal_Int16> places;
    Sequence<Any> outs;
    return script->invoke({arguments.data(), static_cast<sal_Int32>(arguments.size())}, places, outs);
  } catch (const css::uno::Exception&) {
    throw office_.failed(procedure);
  }
}

} // namespace wetspell::bench
