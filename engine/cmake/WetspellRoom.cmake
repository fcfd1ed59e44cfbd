# wetspell_room(NAME DEPENDS other rooms...)
# A room of the engine: engine/NAME/*.cpp as one static library wetspell_NAME,
# and its tests tests/engine/NAME/*_test.cpp as one program test_NAME.
function(wetspell_room name)
  cmake_parse_arguments(ROOM "" "" "DEPENDS" ${ARGN})
  file(GLOB sources CONFIGURE_DEPENDS ${CMAKE_SOURCE_DIR}/engine/${name}/*.cpp)
  if(sources)
    add_library(wetspell_${name} STATIC ${sources})
    set(scope PUBLIC)
  else()
    add_library(wetspell_${name} INTERFACE)
    set(scope INTERFACE)
  endif()
  target_include_directories(wetspell_${name} ${scope} ${CMAKE_SOURCE_DIR}/engine)
  target_include_directories(wetspell_${name} SYSTEM ${scope}
    $<TARGET_PROPERTY:fmt::fmt-header-only,INTERFACE_INCLUDE_DIRECTORIES>) # compiled once, in engine/base/fmt.cpp
  target_link_libraries(wetspell_${name} ${scope} Boost::headers)
  foreach(other IN LISTS ROOM_DEPENDS)
    target_link_libraries(wetspell_${name} ${scope} wetspell_${other})
  endforeach()

  file(GLOB tests CONFIGURE_DEPENDS ${CMAKE_SOURCE_DIR}/tests/engine/${name}/*_test.cpp)
  if(tests)
    wetspell_tests(test_${name} LABEL engine SOURCES ${tests} LIBRARIES wetspell_${name})
    add_dependencies(engine_tests test_${name})
  endif()
endfunction()

# wetspell_tests(PROGRAM LABEL label SOURCES files... LIBRARIES libraries...)
# A GoogleTest program whose whole run is one test of ctest; data files are found under tests/.
function(wetspell_tests program)
  cmake_parse_arguments(T "" "LABEL" "SOURCES;LIBRARIES" ${ARGN})
  add_executable(${program} ${T_SOURCES})
  target_include_directories(${program} PRIVATE ${CMAKE_SOURCE_DIR}/tests)
  target_link_libraries(${program} PRIVATE ${T_LIBRARIES} GTest::gtest GTest::gmock GTest::gtest_main)
  target_compile_definitions(${program} PRIVATE WETSPELL_TESTS_DIR="${CMAKE_SOURCE_DIR}/tests")
  add_test(NAME ${program} COMMAND ${program})
  set_tests_properties(${program} PROPERTIES LABELS ${T_LABEL})
endfunction()
