#include "driver/connection.hpp"

#include "base/text.hpp"
#include "driver/failure.hpp"
#include "driver/files.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/bridge/UnoUrlResolver.hpp>
#include <com/sun/star/connection/NoConnectException.hpp>
#include <com/sun/star/lang/XComponent.hpp>
#include <cppuhelper/bootstrap.hxx>
#include <rtl/bootstrap.hxx>

namespace wetspell::driver {

namespace {

using Context = css::uno::Reference<css::uno::XComponentContext>;

/// Our end of the bridge: one for the whole program, taken down in order before the libraries go.
class LocalContext {
public:
  LocalContext() {
    // The office's types; its own process knows them, a program of ours does not.
    rtl::Bootstrap::set("URE_MORE_TYPES", urlOf(WETSPELL_OFFICE_TYPES));
    context_ = cppu::defaultBootstrap_InitialComponentContext();
  }
  ~LocalContext() {
    try {
      const css::uno::Reference<css::lang::XComponent> component(context_, css::uno::UNO_QUERY);
      if (component.is()) {
        component->dispose();
      }
    } catch (const css::uno::Exception&) {
      // The program ends; what could not be taken down ends with it.
    }
  }
  LocalContext(const LocalContext&) = delete;
  LocalContext& operator=(const LocalContext&) = delete;

  const Context& get() const { return context_; }

private:
  Context context_;
};

const Context& localContext() {
  static const LocalContext local;
  return local.get();
}

} // namespace

Context connect(const std::string& pipe) {
  try {
    const auto resolver = css::bridge::UnoUrlResolver::create(localContext());
    const std::string address = "uno:pipe,name=" + pipe + ";urp;StarOffice.ComponentContext";
    return {resolver->resolve(addin::toOffice(address)), css::uno::UNO_QUERY};
  } catch (const css::connection::NoConnectException&) {
    return {};
  } catch (const css::uno::Exception&) {
    throw Failure("no connection to the office: " + wordsOfCurrent());
  }
}

} // namespace wetspell::driver
