#include "driver/process.hpp"

#include "base/text.hpp"
#include "driver/failure.hpp"
#include "driver/files.hpp"

#include <fmt/format.h>

#include <cstdlib>
#include <fstream>
#include <string_view>

namespace wetspell::driver {

namespace {

TimeValue timeValue(std::chrono::milliseconds time) {
  const auto seconds = std::chrono::duration_cast<std::chrono::seconds>(time);
  const std::chrono::nanoseconds rest = time - seconds;
  return {static_cast<sal_uInt32>(seconds.count()), static_cast<sal_uInt32>(rest.count())};
}

/// Texts as the C interface wants them.
class Texts {
public:
  explicit Texts(const std::vector<std::string>& all) {
    for (const std::string& one : all) {
      texts_.push_back(addin::toOffice(one));
    }
    for (const rtl::OUString& one : texts_) {
      pointers_.push_back(one.pData);
    }
  }
  rtl_uString** data() { return pointers_.data(); }
  sal_uInt32 size() const { return static_cast<sal_uInt32>(pointers_.size()); }

private:
  std::vector<rtl::OUString> texts_;
  std::vector<rtl_uString*> pointers_;
};

} // namespace

Process::Process(const std::filesystem::path& program, const std::vector<std::string>& arguments,
                 const std::vector<std::string>& environment) {
  Texts line(arguments);
  Texts names(environment);
  const oslProcessError error =
      osl_executeProcess(urlOf(program).pData, line.data(), line.size(), osl_Process_HIDDEN, nullptr, nullptr,
                         names.data(), names.size(), &handle_);
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

std::uint64_t Process::memory() const {
  oslProcessInfo info = {};
  info.Size = sizeof info;
  if (osl_getProcessInfo(handle_, osl_Process_IDENTIFIER, &info) != osl_Process_E_None) {
    return 0;
  }
  // The office's own figure ends at four gigabytes. Where there is no such file there is no answer.
  constexpr std::string_view label = "VmRSS:";
  constexpr std::uint64_t kilobyte = 1024;
  std::ifstream status(fmt::format("/proc/{}/status", info.Ident));
  for (std::string line; std::getline(status, line);) {
    if (line.starts_with(label)) {
      return std::strtoull(line.c_str() + label.size(), nullptr, 10) * kilobyte;
    }
  }
  return 0;
}

void Process::kill() {
  osl_terminateProcess(handle_);
}

} // namespace wetspell::driver
