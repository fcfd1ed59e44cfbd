# `wetspell gather` as people run it: both programs, on files.
find_package(Boost 1.81 REQUIRED COMPONENTS filesystem)
target_link_libraries(test_host_gather_program PRIVATE wetspell_workbook Boost::filesystem Threads::Threads
                                                       nlohmann_json::nlohmann_json)
target_compile_definitions(test_host_gather_program PRIVATE
  WETSPELL_PROGRAM="$<TARGET_FILE:wetspell>" WETSPELL_OFFICE_PROGRAM="$<TARGET_FILE:wetspell-office>")
add_dependencies(test_host_gather_program wetspell wetspell-office oxt)
