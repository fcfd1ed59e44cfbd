#pragma once
// What a component tells the office of itself (XServiceInfo), from its registration.

#include "base/registry.hpp"
#include "base/text.hpp"

#include <cppuhelper/supportsservice.hxx>

namespace wetspell::addin {

/// To derive a component from. `Helper`: the cppu::WeakImplHelper of its interfaces, XServiceInfo among them.
template <const char* ImplementationName, class Helper> class WithServiceInfo : public Helper {
public:
  rtl::OUString SAL_CALL getImplementationName() override { return toOffice(ImplementationName); }
  sal_Bool SAL_CALL supportsService(const rtl::OUString& name) override {
    return cppu::supportsService(this, name);
  }
  css::uno::Sequence<rtl::OUString> SAL_CALL getSupportedServiceNames() override {
    return servicesOf(ImplementationName);
  }
};

} // namespace wetspell::addin
