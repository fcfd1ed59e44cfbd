#include "driver/failure.hpp"

#include "base/text.hpp"

#include <com/sun/star/deployment/DeploymentException.hpp>
#include <com/sun/star/lang/WrappedTargetException.hpp>
#include <com/sun/star/lang/WrappedTargetRuntimeException.hpp>
#include <com/sun/star/reflection/InvocationTargetException.hpp>
#include <cppuhelper/exc_hlp.hxx>

namespace wetspell::driver {

using addin::fromOffice;

namespace {

css::uno::Any causeOf(const css::uno::Any& exception) {
  // InvocationTargetException is a WrappedTargetException, so it needs no case of its own.
  css::lang::WrappedTargetException wrapped;
  css::lang::WrappedTargetRuntimeException wrappedRuntime;
  css::deployment::DeploymentException deployment;
  if (exception >>= wrapped) {
    return wrapped.TargetException;
  }
  if (exception >>= wrappedRuntime) {
    return wrappedRuntime.TargetException;
  }
  if (exception >>= deployment) {
    return deployment.Cause;
  }
  return {};
}

} // namespace

std::string wordsOf(const css::uno::Any& exception) {
  std::string words;
  // A chain has an end; the bound is for an office that hands over something else.
  css::uno::Any now = exception;
  for (int depth = 0; depth < 8 && now.hasValue(); ++depth) {
    css::uno::Exception plain;
    if (!(now >>= plain)) {
      break;
    }
    std::string message = fromOffice(plain.Message);
    if (message.empty()) {
      message = fromOffice(now.getValueTypeName());
    }
    words += words.empty() ? message : ": " + message;
    now = causeOf(now);
  }
  return words.empty() ? "the office gave no reason" : words;
}

std::string wordsOfCurrent() {
  try {
    throw;
  } catch (const css::uno::Exception&) {
    return wordsOf(cppu::getCaughtException());
  } catch (const std::exception& other) {
    return other.what();
  }
}

} // namespace wetspell::driver
