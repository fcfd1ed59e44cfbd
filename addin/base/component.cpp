// The library's only exported symbol: the office asks it, by implementation name, for a factory.

#include "base/registry.hpp"
#include "base/text.hpp"

#include <com/sun/star/lang/XSingleComponentFactory.hpp>
#include <cppuhelper/factory.hxx>

namespace {

using namespace wetspell::addin;

css::uno::Reference<css::lang::XSingleComponentFactory> factoryFor(const Implementation& one) {
  const auto make = one.lifetime == Lifetime::OneForAll ? &cppu::createOneInstanceComponentFactory
                                                        : &cppu::createSingleComponentFactory;
  return make(one.create, toOffice(one.name), servicesOf(one.name), nullptr);
}

} // namespace

extern "C" SAL_DLLPUBLIC_EXPORT void* SAL_CALL wetspell_component_getFactory(const char* name, void*, void*) {
  for (const Implementation& one : implementations()) {
    if (one.name == name) {
      const css::uno::Reference<css::lang::XSingleComponentFactory> factory = factoryFor(one);
      factory->acquire(); // the caller's, without a reference to hold it
      return factory.get();
    }
  }
  return nullptr;
}
