# What the office wants to be told about the cell functions, written from their catalogue in the engine.
set(functions_generated ${CMAKE_CURRENT_BINARY_DIR}/functions)
set(functions_idl ${WETSPELL_IDL_TREE}/org/wetspell)
file(MAKE_DIRECTORY ${functions_generated} ${functions_idl})

add_executable(generate_functions functions/generate/generate.cpp)
target_link_libraries(generate_functions PRIVATE wetspell_function)
set_target_properties(generate_functions PROPERTIES RUNTIME_OUTPUT_DIRECTORY ${functions_generated})
add_custom_command(
  OUTPUT ${functions_idl}/XPool.idl ${functions_idl}/Pool.idl ${functions_generated}/pool_methods.inc
         ${functions_generated}/CalcAddIns.xcu ${functions_generated}/functions.txt
  COMMAND generate_functions ${functions_generated} ${functions_idl}
  DEPENDS generate_functions
  COMMENT "Cell functions in the office's languages" VERBATIM)
add_custom_target(functions_configuration DEPENDS ${functions_generated}/CalcAddIns.xcu)

list(APPEND WETSPELL_GENERATED_IDL ${functions_idl}/XPool.idl ${functions_idl}/Pool.idl)
list(APPEND WETSPELL_GENERATED_SOURCES ${functions_generated}/pool_methods.inc)
set_source_files_properties(${CMAKE_CURRENT_SOURCE_DIR}/functions/pool.cpp PROPERTIES
  INCLUDE_DIRECTORIES ${functions_generated} OBJECT_DEPENDS ${functions_generated}/pool_methods.inc)
wetspell_package(${functions_generated}/CalcAddIns.xcu TO config/CalcAddIns.xcu DEPENDS functions_configuration)

# Documents keep these names for ever: what was released may be added to and never changed.
add_test(NAME functions_frozen_names
  COMMAND ${CMAKE_COMMAND} -E compare_files ${CMAKE_CURRENT_SOURCE_DIR}/frozen/functions.txt
          ${functions_generated}/functions.txt)
office_tool(unoidl_read unoidl-read)
string(JOIN "|" unoidl_read ${unoidl_read})
string(JOIN "|" office_types ${OFFICE_TYPES})
add_test(NAME functions_frozen_types
  COMMAND ${CMAKE_COMMAND} "-DREAD=${unoidl_read}" "-DTYPES=${office_types}"
          -DRDB=${CMAKE_CURRENT_BINARY_DIR}/wetspell.rdb
          -DFROZEN=${CMAKE_CURRENT_SOURCE_DIR}/frozen/types.txt
          -P ${CMAKE_CURRENT_SOURCE_DIR}/cmake/check_types.cmake)
set_tests_properties(functions_frozen_names functions_frozen_types PROPERTIES LABELS addin)
