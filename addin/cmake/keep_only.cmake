# Removes from TREE every .idl file that the list KEEP does not name.
cmake_minimum_required(VERSION 3.25)
file(STRINGS ${KEEP} keep)
file(GLOB_RECURSE found ${TREE}/*.idl)
list(REMOVE_ITEM found ${keep})
if(found)
  file(REMOVE ${found})
endif()
