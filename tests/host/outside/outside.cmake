find_program(WETSPELL_PYTHON python3 PATHS /usr/bin NO_DEFAULT_PATH REQUIRED)
target_sources(test_host_outside PRIVATE ${CMAKE_CURRENT_LIST_DIR}/trusting_office.cpp
                                         ${CMAKE_CURRENT_LIST_DIR}/../commands/season_content.cpp
                                         ${CMAKE_CURRENT_LIST_DIR}/../commands/season_desk.cpp)
target_link_libraries(test_host_outside PRIVATE wetspell_demo nlohmann_json::nlohmann_json)
target_compile_definitions(test_host_outside PRIVATE WETSPELL_PYTHON="${WETSPELL_PYTHON}"
                                                     WETSPELL_PROGRAM="$<TARGET_FILE:wetspell>"
                                                     WETSPELL_OFFICE_COMMAND="$<TARGET_FILE:wetspell-office>")
add_dependencies(test_host_outside wetspell wetspell-office)
