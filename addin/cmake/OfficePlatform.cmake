# Everything that depends on the operating system or the processor, in one place. A new platform is one
# more row; C++ code asks for nothing of this kind.
#
#   WETSPELL_PLATFORM           how description.xml names the platform an extension is for
#   WETSPELL_PLATFORM_LIBRARY   how the manifest names it in the media type of a component
#   WETSPELL_PLATFORM_DEFINES   what the office's own headers want to be told
#   WETSPELL_UNO_ENVIRONMENT    name of the C++ binding in a .components file
#   WETSPELL_UNO_LIBRARIES      file names of the three UNO libraries to link
#   WETSPELL_OFFICE_BINARY      the office's process, without a starter around it
#   WETSPELL_LIBRARY_PATH       environment variable through which the SDK's tools find their libraries
#   WETSPELL_NEEDED             what the extension's library may need, besides the UNO libraries
#   wetspell_export_only(target symbol)   lets a shared library show one symbol and bring its own C++ runtime
#
# Only Linux on x86-64 is built and tested. The other rows follow the office's sources and are untried.

string(TOLOWER "${CMAKE_SYSTEM_NAME}_${CMAKE_SYSTEM_PROCESSOR}" wetspell_system)

if(wetspell_system MATCHES "^linux_(x86_64|aarch64)$")
  set(WETSPELL_PLATFORM ${wetspell_system})
  set(WETSPELL_PLATFORM_LIBRARY Linux_${CMAKE_SYSTEM_PROCESSOR})
  string(REPLACE "aarch64" "AARCH64" WETSPELL_PLATFORM_LIBRARY ${WETSPELL_PLATFORM_LIBRARY})
  set(WETSPELL_PLATFORM_DEFINES UNX GCC LINUX CPPU_ENV=gcc3)
  set(WETSPELL_UNO_ENVIRONMENT gcc3)
  set(WETSPELL_UNO_LIBRARIES libuno_cppu.so.3 libuno_cppuhelpergcc3.so.3 libuno_sal.so.3)
  set(WETSPELL_OFFICE_BINARY soffice.bin)
  set(WETSPELL_LIBRARY_PATH LD_LIBRARY_PATH)
  set(WETSPELL_NEEDED libc.so.6 libm.so.6 ld-linux-x86-64.so.2 ld-linux-aarch64.so.1)
elseif(wetspell_system MATCHES "^darwin_(x86_64|arm64)$")
  set(WETSPELL_PLATFORM macosx_${CMAKE_SYSTEM_PROCESSOR})
  set(WETSPELL_PLATFORM_LIBRARY MacOSX_${CMAKE_SYSTEM_PROCESSOR})
  string(REPLACE "arm64" "aarch64" WETSPELL_PLATFORM ${WETSPELL_PLATFORM})
  string(REPLACE "arm64" "AARCH64" WETSPELL_PLATFORM_LIBRARY ${WETSPELL_PLATFORM_LIBRARY})
  set(WETSPELL_PLATFORM_DEFINES UNX GCC MACOSX CPPU_ENV=gcc3)
  set(WETSPELL_UNO_ENVIRONMENT gcc3)
  set(WETSPELL_UNO_LIBRARIES libuno_cppu.dylib.3 libuno_cppuhelpergcc3.dylib.3 libuno_sal.dylib.3)
  set(WETSPELL_OFFICE_BINARY soffice)
  set(WETSPELL_LIBRARY_PATH DYLD_LIBRARY_PATH)
  set(WETSPELL_NEEDED libSystem.B.dylib libc++.1.dylib)
elseif(wetspell_system STREQUAL "windows_amd64")
  set(WETSPELL_PLATFORM windows_x86_64)
  set(WETSPELL_PLATFORM_LIBRARY Windows_X86_64)
  set(WETSPELL_PLATFORM_DEFINES WNT CPPU_ENV=mscx)
  set(WETSPELL_UNO_ENVIRONMENT mscx)
  set(WETSPELL_UNO_LIBRARIES icppu.lib icppuhelper.lib isal.lib)
  set(WETSPELL_OFFICE_BINARY soffice.exe)
  set(WETSPELL_LIBRARY_PATH PATH)
  set(WETSPELL_NEEDED)
else()
  message(FATAL_ERROR "No row for ${wetspell_system} in addin/cmake/OfficePlatform.cmake. "
                      "Add one, or build without the office: -DWETSPELL_OFFICE=OFF")
endif()

function(wetspell_export_only target symbol)
  if(CMAKE_SYSTEM_NAME STREQUAL "Linux")
    set(script ${CMAKE_CURRENT_BINARY_DIR}/${target}.map)
    file(CONFIGURE OUTPUT ${script} CONTENT "{ global: ${symbol}; local: *; };\n")
    target_link_options(${target} PRIVATE -static-libstdc++ -static-libgcc -Wl,-z,defs -Wl,--gc-sections
                                          -Wl,--version-script=${script})
    set_property(TARGET ${target} APPEND PROPERTY LINK_DEPENDS ${script})
  elseif(APPLE)
    target_link_options(${target} PRIVATE -Wl,-exported_symbol,_${symbol})
  endif()
endfunction()
