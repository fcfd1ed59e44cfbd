# Programs that write workbooks in their own way; tests/packages.txt has them.
find_program(WETSPELL_SSCONVERT ssconvert REQUIRED)
find_program(WETSPELL_PYTHON python3 PATHS /usr/bin NO_DEFAULT_PATH REQUIRED)
find_program(WETSPELL_NODE node REQUIRED)
find_library(WETSPELL_XLSXWRITER xlsxwriter REQUIRED)
target_sources(test_host_foreign PRIVATE ${CMAKE_CURRENT_LIST_DIR}/other_programs.cpp
                                         ${CMAKE_CURRENT_LIST_DIR}/../gathering/came_back.cpp
                                         ${CMAKE_CURRENT_LIST_DIR}/../commands/season_content.cpp
                                         ${CMAKE_CURRENT_LIST_DIR}/../commands/season_desk.cpp)
target_link_libraries(test_host_foreign PRIVATE wetspell_demo wetspell_gather nlohmann_json::nlohmann_json
                                                ${WETSPELL_XLSXWRITER})
target_compile_definitions(test_host_foreign PRIVATE
  WETSPELL_SSCONVERT="${WETSPELL_SSCONVERT}" WETSPELL_PYTHON="${WETSPELL_PYTHON}"
  WETSPELL_NODE="${WETSPELL_NODE}"
  WETSPELL_FILL_XLSX="${CMAKE_CURRENT_LIST_DIR}/fill_xlsx.py")
