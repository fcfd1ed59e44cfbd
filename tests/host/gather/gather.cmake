# The folder is read from here, over the bridge, by the same sources as inside the office.
target_sources(test_host_gather PRIVATE ${PROJECT_SOURCE_DIR}/addin/gather/open_folder.cpp
                                        ${PROJECT_SOURCE_DIR}/addin/gather/comments.cpp)
target_link_libraries(test_host_gather PRIVATE wetspell_gather wetspell_exchange)
