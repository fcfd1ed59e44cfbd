target_sources(test_host_gathering PRIVATE ${CMAKE_CURRENT_LIST_DIR}/came_back.cpp
                                           ${CMAKE_CURRENT_LIST_DIR}/../commands/season_content.cpp
                                           ${CMAKE_CURRENT_LIST_DIR}/../commands/season_desk.cpp)
target_link_libraries(test_host_gathering PRIVATE wetspell_demo wetspell_gather nlohmann_json::nlohmann_json)
# The command runs an office of its own with the built extension.
target_compile_definitions(test_host_gathering PRIVATE WETSPELL_PROGRAM="$<TARGET_FILE:wetspell>")
add_dependencies(test_host_gathering wetspell wetspell-office oxt)
