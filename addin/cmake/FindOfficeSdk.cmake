# Finds the office's software development kit and the office beside it.
#
#   WETSPELL_OFFICE_SDK   (cache) the kit's directory, the one that holds bin/ and include/
#
# The office's own program directory is looked for beside the kit; WETSPELL_OFFICE_PROGRAM (cache) names it
# when the two were installed apart. Gives
#
#   office_sdk                       target to link: include paths, definitions, UNO libraries
#   OFFICE_TYPES                     the office's type registries, in the order the tools want them
#   office_tool(out name)            the command line for one of the kit's tools
#
# The headers for the office's types are made once, by cppumaker, under the build directory.

include(OfficePlatform)

file(GLOB usual LIST_DIRECTORIES true
  /usr/lib/libreoffice/sdk /usr/lib64/libreoffice/sdk /opt/libreoffice*/sdk /usr/local/lib/libreoffice/sdk
  /snap/libreoffice/current/lib/libreoffice/sdk /Applications/LibreOffice*_SDK
  "C:/Program Files/LibreOffice/sdk")
find_path(WETSPELL_OFFICE_SDK NAMES bin/cppumaker bin/cppumaker.exe PATHS ${usual} NO_DEFAULT_PATH
  DOC "Directory of the LibreOffice SDK (holds bin/ and include/)")

if(NOT WETSPELL_OFFICE_SDK)
  message(FATAL_ERROR
    "The LibreOffice SDK was not found (looked for bin/cppumaker in the usual places). On Debian install "
    "the package libreoffice-dev; elsewhere install the SDK and give its directory: "
    "-DWETSPELL_OFFICE_SDK=<directory with bin/ and include/>. To build the engine and the command line "
    "without an office: -DWETSPELL_OFFICE=OFF")
endif()

set(beside ${WETSPELL_OFFICE_SDK}/.. /Applications/LibreOffice.app/Contents)
find_path(WETSPELL_OFFICE_PROGRAM NAMES ${WETSPELL_OFFICE_BINARY} HINTS ${beside}
  PATH_SUFFIXES program MacOS NO_DEFAULT_PATH DOC "Directory of the office's program files")
find_path(OFFICE_INCLUDE NAMES sal/config.h HINTS ${WETSPELL_OFFICE_SDK}/include NO_DEFAULT_PATH)
find_file(OFFICE_UDK_TYPES NAMES types.rdb HINTS ${WETSPELL_OFFICE_PROGRAM} ${beside}
  PATH_SUFFIXES Resources/ure/share/misc NO_DEFAULT_PATH)
find_file(OFFICE_OFFAPI_TYPES NAMES offapi.rdb HINTS ${WETSPELL_OFFICE_PROGRAM} ${beside}
  PATH_SUFFIXES types Resources/types NO_DEFAULT_PATH)
set(office_required WETSPELL_OFFICE_PROGRAM OFFICE_INCLUDE OFFICE_UDK_TYPES OFFICE_OFFAPI_TYPES)
set(office_libraries)
foreach(library IN LISTS WETSPELL_UNO_LIBRARIES)
  find_file(OFFICE_LIBRARY_${library} NAMES ${library} NO_DEFAULT_PATH
    HINTS ${WETSPELL_OFFICE_PROGRAM} ${WETSPELL_OFFICE_SDK}/lib ${WETSPELL_OFFICE_PROGRAM}/../Frameworks)
  list(APPEND office_required OFFICE_LIBRARY_${library})
  list(APPEND office_libraries ${OFFICE_LIBRARY_${library}})
endforeach()
foreach(piece IN LISTS office_required)
  if(NOT ${piece})
    string(APPEND office_missing "\n  ${piece}")
  endif()
endforeach()
if(office_missing)
  message(FATAL_ERROR "The LibreOffice SDK in ${WETSPELL_OFFICE_SDK} is not complete, or the office itself "
    "(its program directory, WETSPELL_OFFICE_PROGRAM) is not beside it. Not found:${office_missing}")
endif()
mark_as_advanced(${office_required})

set(OFFICE_TYPES ${OFFICE_UDK_TYPES} ${OFFICE_OFFAPI_TYPES})

# The tools need the office's libraries; distributions wrap them so, the kit as downloaded does not.
function(office_tool out name)
  set(${out} ${CMAKE_COMMAND} -E env ${WETSPELL_LIBRARY_PATH}=${WETSPELL_OFFICE_PROGRAM}
    ${WETSPELL_OFFICE_SDK}/bin/${name}${CMAKE_HOST_EXECUTABLE_SUFFIX} PARENT_SCOPE)
endfunction()

if(NOT TARGET office_sdk)
  # cppumaker refuses a relative -O with a message that does not say so.
  set(office_headers ${CMAKE_BINARY_DIR}/office_headers)
  office_tool(cppumaker cppumaker)
  add_custom_command(OUTPUT ${office_headers}.stamp
    COMMAND ${cppumaker} -Gc -O${office_headers} ${OFFICE_TYPES}
    COMMAND ${CMAKE_COMMAND} -E touch ${office_headers}.stamp
    DEPENDS ${OFFICE_TYPES}
    COMMENT "C++ headers for the office's types" VERBATIM)
  add_custom_target(office_headers DEPENDS ${office_headers}.stamp)
  add_library(office_sdk INTERFACE)
  add_dependencies(office_sdk office_headers)
  # SYSTEM: our warnings are not for headers that are not ours.
  target_include_directories(office_sdk SYSTEM INTERFACE ${OFFICE_INCLUDE} ${office_headers})
  target_compile_definitions(office_sdk INTERFACE ${WETSPELL_PLATFORM_DEFINES})
  target_link_libraries(office_sdk INTERFACE ${office_libraries})
endif()
set(OfficeSdk_FOUND TRUE)
