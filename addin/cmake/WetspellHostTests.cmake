# wetspell_host_tests(PROGRAM SOURCES files... [LIBRARIES libraries...])
# A GoogleTest program that runs inside a real office with the built extension. One office serves the whole
# program, so the program is one test of ctest. It ends its office well before ctest would end the program.
function(wetspell_host_tests program)
  cmake_parse_arguments(T "" "" "SOURCES;LIBRARIES" ${ARGN})
  add_executable(${program} ${T_SOURCES})
  target_link_libraries(${program} PRIVATE wetspell_host ${T_LIBRARIES})
  add_dependencies(${program} oxt)
  add_test(NAME ${program} COMMAND ${program})
  set_tests_properties(${program} PROPERTIES LABELS host TIMEOUT 600)
endfunction()
