target_sources(test_host_summary PRIVATE ${CMAKE_CURRENT_LIST_DIR}/summary_in_office.cpp
                                         ${CMAKE_CURRENT_LIST_DIR}/../commands/season_content.cpp
                                         ${CMAKE_CURRENT_LIST_DIR}/../commands/season_desk.cpp)
target_link_libraries(test_host_summary PRIVATE wetspell_demo wetspell_exchange wetspell_gather)
