target_sources(test_host_commands PRIVATE ${CMAKE_CURRENT_LIST_DIR}/season_content.cpp
                                          ${CMAKE_CURRENT_LIST_DIR}/season_desk.cpp)
target_link_libraries(test_host_commands PRIVATE wetspell_demo)
