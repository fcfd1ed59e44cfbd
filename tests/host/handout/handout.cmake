target_link_libraries(test_host_handout PRIVATE wetspell_workbook)
# Other programs read what was stored; where they are missing, the tests fail.
find_program(WETSPELL_SSCONVERT ssconvert)
find_program(WETSPELL_PYTHON python3 PATHS /usr/bin NO_DEFAULT_PATH)
target_compile_definitions(test_host_handout PRIVATE
  WETSPELL_SSCONVERT="${WETSPELL_SSCONVERT}" WETSPELL_PYTHON="${WETSPELL_PYTHON}"
  WETSPELL_PROGRAM="$<TARGET_FILE:wetspell>"
  WETSPELL_READ_XLSX="${CMAKE_CURRENT_LIST_DIR}/read_xlsx.py")
add_dependencies(test_host_handout wetspell wetspell-office)
