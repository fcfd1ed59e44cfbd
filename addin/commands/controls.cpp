#include "commands/controls.hpp"

#include "base/text.hpp"

#include <com/sun/star/awt/Toolkit.hpp>
#include <com/sun/star/awt/UnoControlDialog.hpp>
#include <com/sun/star/awt/XControlModel.hpp>
#include <com/sun/star/container/XNameContainer.hpp>
#include <com/sun/star/lang/XMultiComponentFactory.hpp>
#include <com/sun/star/lang/XMultiServiceFactory.hpp>

namespace wetspell::addin {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;

Reference<css::beans::XPropertySet> windowModel(const Reference<css::uno::XComponentContext>& context,
                                                sal_Int32 width, sal_Int32 height) {
  const Reference<css::beans::XPropertySet> model(context->getServiceManager()->createInstanceWithContext(
                                                      "com.sun.star.awt.UnoControlDialogModel", context),
                                                  UNO_QUERY_THROW);
  model->setPropertyValue("Title", Any(rtl::OUString("Wetspell")));
  model->setPropertyValue("Width", Any(width));
  model->setPropertyValue("Height", Any(height));
  return model;
}

void addControl(const Reference<css::uno::XInterface>& dialog, const char* service, const char* name,
                const Box& box, std::initializer_list<std::pair<const char*, Any>> properties) {
  const Reference<css::lang::XMultiServiceFactory> factory(dialog, UNO_QUERY_THROW);
  const Reference<css::beans::XPropertySet> model(factory->createInstance(toOffice(service)),
                                                  UNO_QUERY_THROW);
  model->setPropertyValue("PositionX", Any(box.x));
  model->setPropertyValue("PositionY", Any(box.y));
  model->setPropertyValue("Width", Any(box.width));
  model->setPropertyValue("Height", Any(box.height));
  for (const auto& [property, value] : properties)
    model->setPropertyValue(toOffice(property), value);
  Reference<css::container::XNameContainer>(dialog, UNO_QUERY_THROW)
      ->insertByName(toOffice(name), Any(model));
}

Reference<css::awt::XUnoControlDialog> windowOver(const Reference<css::uno::XComponentContext>& context,
                                                  const Reference<css::frame::XFrame>& frame,
                                                  const Reference<css::beans::XPropertySet>& model) {
  const Reference<css::awt::XUnoControlDialog> dialog = css::awt::UnoControlDialog::create(context);
  dialog->setModel(Reference<css::awt::XControlModel>(model, UNO_QUERY_THROW));
  dialog->createPeer(Reference<css::awt::XToolkit>(css::awt::Toolkit::create(context), UNO_QUERY_THROW),
                     Reference<css::awt::XWindowPeer>(frame->getContainerWindow(), UNO_QUERY));
  return dialog;
}

} // namespace wetspell::addin
