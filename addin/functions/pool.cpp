// org.wetspell.Pool: the service in which Calc finds the cell functions.

#include "base/service_info.hpp"
#include "base/text.hpp"
#include "functions/arguments.hpp"

#include <com/sun/star/lang/IllegalArgumentException.hpp>
#include <com/sun/star/lang/XServiceInfo.hpp>
#include <com/sun/star/sheet/NoConvergenceException.hpp>
#include <cppuhelper/implbase2.hxx>
#include <org/wetspell/XPool.hpp>

#include <exception>

namespace wetspell::addin {
namespace {

constexpr char implementationName[] = "org.wetspell.impl.Pool";

class Pool : public WithServiceInfo<implementationName,
                                    cppu::WeakImplHelper2<org::wetspell::XPool, css::lang::XServiceInfo>> {
public:
#include "pool_methods.inc"

private:
  /// Every method: its arguments to the engine, the engine's answer back.
  template <class... Values> css::uno::Any call(std::size_t index, const Values&... values) {
    try {
      const FunctionSpec& function = wetspell::functions()[index];
      std::vector<Argument> arguments;
      arguments.reserve(sizeof...(values));
      [[maybe_unused]] auto parameter = function.parameters.begin();
      (take(*parameter++, values, arguments), ...);
      return give(run(function, arguments));
    } catch (const css::uno::Exception&) {
      throw;
    } catch (const std::exception& error) { // memory, or a mistake of ours: #VALUE!
      throw css::uno::RuntimeException(toOffice(error.what()));
    }
  }
};

css::uno::Reference<css::uno::XInterface>
    SAL_CALL create(const css::uno::Reference<css::uno::XComponentContext>&) {
  return static_cast<cppu::OWeakObject*>(new Pool);
}

const Registration registration{
    {implementationName, {std::string(function_service)}, Lifetime::OneForAll, &create}};

} // namespace
} // namespace wetspell::addin
