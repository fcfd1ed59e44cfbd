# The command line runs here as well: a workbook on its way from a file to an answer.
find_package(Boost 1.74 REQUIRED COMPONENTS filesystem)
target_sources(test_host_audit PRIVATE ${CMAKE_CURRENT_LIST_DIR}/audit_in_office.cpp
                                       ${CMAKE_CURRENT_LIST_DIR}/../commands/season_content.cpp
                                       ${CMAKE_CURRENT_LIST_DIR}/../commands/season_desk.cpp)
target_link_libraries(test_host_audit PRIVATE wetspell_demo wetspell_exchange Boost::headers Boost::filesystem
                                              Threads::Threads)
find_program(WETSPELL_NODE node REQUIRED)
target_compile_definitions(test_host_audit PRIVATE WETSPELL_PROGRAM="$<TARGET_FILE:wetspell>"
                                                   WETSPELL_NODE="${WETSPELL_NODE}")
add_dependencies(test_host_audit wetspell wetspell-office)
