# wetspell_types(name TREE dir GENERATED idl...)
# Compiles addin/idl/**/*.idl and generated IDL (already inside TREE) to a type registry and C++ headers.
# Target `name` carries the headers; WETSPELL_RDB is the registry, made by target `name`_rdb.
function(wetspell_types name)
  cmake_parse_arguments(T "" "TREE" "GENERATED" ${ARGN})
  set(source ${CMAKE_CURRENT_SOURCE_DIR}/idl)
  file(GLOB_RECURSE written CONFIGURE_DEPENDS RELATIVE ${source} ${source}/*.idl)
  set(inputs ${T_GENERATED})
  foreach(file IN LISTS written)
    add_custom_command(OUTPUT ${T_TREE}/${file}
      COMMAND ${CMAKE_COMMAND} -E copy ${source}/${file} ${T_TREE}/${file} DEPENDS ${source}/${file} VERBATIM)
    list(APPEND inputs ${T_TREE}/${file})
  endforeach()

  # unoidl-write takes whatever lies in the tree: what was renamed or removed must not stay in it.
  list(JOIN inputs "\n" list)
  file(CONFIGURE OUTPUT ${T_TREE}.list CONTENT "${list}\n" @ONLY)
  set(rdb ${CMAKE_CURRENT_BINARY_DIR}/wetspell.rdb)
  set(headers ${CMAKE_CURRENT_BINARY_DIR}/headers)
  office_tool(unoidl_write unoidl-write)
  office_tool(cppumaker cppumaker)
  set(known ${OFFICE_TYPES})
  list(TRANSFORM known PREPEND -X)
  add_custom_command(OUTPUT ${rdb}
    COMMAND ${CMAKE_COMMAND} -DTREE=${T_TREE} -DKEEP=${T_TREE}.list
            -P ${PROJECT_SOURCE_DIR}/addin/cmake/keep_only.cmake
    COMMAND ${unoidl_write} ${OFFICE_TYPES} ${T_TREE} ${rdb}
    COMMAND ${cppumaker} -Gc -O${headers} ${known} ${rdb}
    DEPENDS ${inputs} ${T_TREE}.list
    COMMENT "Types of the extension" VERBATIM)
  add_custom_target(${name}_rdb DEPENDS ${rdb})
  add_library(${name} INTERFACE)
  add_dependencies(${name} ${name}_rdb)
  target_include_directories(${name} SYSTEM INTERFACE ${headers})
  target_link_libraries(${name} INTERFACE office_sdk)
  set(WETSPELL_RDB ${rdb} PARENT_SCOPE)
endfunction()

# wetspell_package(FILE TO path [DEPENDS targets...])
# One more file of the .oxt, from any directory of the project; generator expressions are allowed.
function(wetspell_package file)
  cmake_parse_arguments(P "" "TO" "DEPENDS" ${ARGN})
  set_property(GLOBAL APPEND PROPERTY WETSPELL_PACKAGE_FILES "${file}")
  set_property(GLOBAL APPEND PROPERTY WETSPELL_PACKAGE_PATHS "${P_TO}")
  set_property(GLOBAL APPEND PROPERTY WETSPELL_PACKAGE_TARGETS ${P_DEPENDS})
endfunction()

# Called when all directories have been read. Target `oxt`, file WETSPELL_OXT.
function(wetspell_finish_package)
  foreach(what FILES PATHS TARGETS)
    get_property(${what} GLOBAL PROPERTY WETSPELL_PACKAGE_${what})
  endforeach()
  set(plan)
  foreach(file path IN ZIP_LISTS FILES PATHS)
    string(APPEND plan "${path}|${file}\n")
  endforeach()
  file(GENERATE OUTPUT ${PROJECT_BINARY_DIR}/addin/package.plan CONTENT "${plan}")
  set(script ${PROJECT_SOURCE_DIR}/addin/cmake/pack.cmake)
  add_custom_command(OUTPUT ${WETSPELL_OXT}
    COMMAND ${CMAKE_COMMAND} -DPLAN=${PROJECT_BINARY_DIR}/addin/package.plan
            -DSTAGE=${PROJECT_BINARY_DIR}/addin/package -DOUT=${WETSPELL_OXT}
            -DPLATFORM=${WETSPELL_PLATFORM_LIBRARY} -P ${script}
    DEPENDS ${FILES} ${TARGETS} ${script} ${PROJECT_BINARY_DIR}/addin/package.plan
    COMMENT "wetspell.oxt" VERBATIM)
  add_custom_target(oxt ALL DEPENDS ${WETSPELL_OXT})
  if(TARGETS)
    add_dependencies(oxt ${TARGETS})
  endif()
endfunction()
