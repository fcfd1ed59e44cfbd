#include "driver/process.hpp"

#include "base/text.hpp"
#include "driver/failure.hpp"
#include "driver/files.hpp"

#include <fmt/format.h>

namespace wetspell::driver {

namespace {

TimeValue timeValue(std::chrono::milliseconds time) {
  const auto seconds = std::chrono::duration_cast<std::chrono::seconds>(time);
  const std::chrono::nanoseconds rest = time - seconds;
  return {static_cast<sal_uInt32>(seconds.count()), static_cast<sal_uInt32>(rest.count())};
}

} // namespace

Process::Process(const std::filesystem::path& program, const std::vector<std::string>& arguments) {
  std::vector<rtl::OUString> texts;
  std::vector<rtl_uString*> pointers;
  for (const std::string& one : arguments) {
    texts.push_back(addin::toOffice(one));
  }
  for (const rtl::OUString& one : texts) {
    pointers.push_back(one.pData);
  }
  const oslProcessError error =
      osl_executeProcess(urlOf(program).pData, pointers.data(), static_cast<sal_uInt32>(pointers.size()),
                         osl_Process_HIDDEN, nullptr, nullptr, nullptr, 0, &handle_);
  if (error != osl_Process_E_None) {
    throw Failure(fmt::format("the program {} could not be started", program.string()));
  }
}

Process::~Process() {
  if (!wait(std::chrono::milliseconds(0))) {
    kill();
    wait(std::chrono::seconds(30));
  }
  osl_freeProcessHandle(handle_);
}

std::optional<int> Process::wait(std::chrono::milliseconds atMost) {
  const TimeValue limit = timeValue(atMost);
  if (osl_joinProcessWithTimeout(handle_, &limit) != osl_Process_E_None) {
    return std::nullopt;
  }
  oslProcessInfo info = {};
  info.Size = sizeof info;
  if (osl_getProcessInfo(handle_, osl_Process_EXITCODE, &info) != osl_Process_E_None) {
    return std::nullopt;
  }
  return static_cast<int>(info.Code);
}

void Process::kill() {
  osl_terminateProcess(handle_);
}

} // namespace wetspell::driver
