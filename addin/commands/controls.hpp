#pragma once
// Small windows made of the office's own controls.

#include "base/css.hpp"

#include <com/sun/star/awt/XUnoControlDialog.hpp>
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/frame/XFrame.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>

#include <initializer_list>
#include <utility>

namespace wetspell::addin {

struct Box {
  sal_Int32 x, y, width, height; ///< in the office's units for dialogs
};

/// The model of an empty window of this size, called Wetspell.
css::uno::Reference<css::beans::XPropertySet>
windowModel(const css::uno::Reference<css::uno::XComponentContext>& context, sal_Int32 width,
            sal_Int32 height);

void addControl(const css::uno::Reference<css::uno::XInterface>& model, const char* service, const char* name,
                const Box& box, std::initializer_list<std::pair<const char*, css::uno::Any>> properties);

/// The window over the frame, not yet shown.
css::uno::Reference<css::awt::XUnoControlDialog>
windowOver(const css::uno::Reference<css::uno::XComponentContext>& context,
           const css::uno::Reference<css::frame::XFrame>& frame,
           const css::uno::Reference<css::beans::XPropertySet>& model);

} // namespace wetspell::addin
