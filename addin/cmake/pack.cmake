# Packs an extension: copies the files of PLAN ("path in the package|file", a line each) into an empty
# STAGE, writes the manifest that their names call for, and zips it to OUT.
cmake_minimum_required(VERSION 3.25)
file(REMOVE_RECURSE ${STAGE})
file(STRINGS ${PLAN} lines)
set(types)
set(components)
set(others)
foreach(line IN LISTS lines)
  string(REGEX MATCH "^([^|]+)\\|(.+)$" match "${line}")
  set(path ${CMAKE_MATCH_1})
  set(file ${CMAKE_MATCH_2})
  if(EXISTS ${STAGE}/${path})
    message(FATAL_ERROR "Two files want to be ${path} in the extension; the second is ${file}")
  endif()
  get_filename_component(directory ${STAGE}/${path} DIRECTORY)
  file(MAKE_DIRECTORY ${directory})
  file(COPY_FILE ${file} ${STAGE}/${path})
  # Only names of configuration files say that they are configuration; a folder with script.xlb is a library.
  if(path MATCHES "\\.rdb$")
    string(APPEND types "${path}|uno-typelibrary;type=RDB\n")
  elseif(path MATCHES "\\.components$")
    string(APPEND components "${path}|uno-components;platform=${PLATFORM}\n")
  elseif(path MATCHES "\\.xcs$")
    string(PREPEND others "${path}|configuration-schema\n")
  elseif(path MATCHES "\\.xcu$")
    string(APPEND others "${path}|configuration-data\n")
  elseif(path MATCHES "^(.*/)script\\.xlb$")
    string(APPEND others "${CMAKE_MATCH_1}|basic-library\n")
  endif()
endforeach()

# The office registers in this order: what a component implements must be known before the component.
string(REGEX REPLACE "([^|\n]+)\\|([^\n]+)\n"
  " <manifest:file-entry manifest:full-path=\"\\1\" manifest:media-type=\"application/vnd.sun.star.\\2\"/>\n"
  entries "${types}${components}${others}")
file(WRITE ${STAGE}/META-INF/manifest.xml
  "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
  "<manifest:manifest xmlns:manifest=\"http://openoffice.org/2001/manifest\">\n${entries}</manifest:manifest>\n")

file(GLOB top RELATIVE ${STAGE} ${STAGE}/*)
file(REMOVE ${OUT})
execute_process(COMMAND ${CMAKE_COMMAND} -E tar cf ${OUT} --format=zip -- ${top}
  WORKING_DIRECTORY ${STAGE} COMMAND_ERROR_IS_FATAL ANY)
