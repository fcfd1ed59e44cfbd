# An extension for a platform that this is not.
file(CONFIGURE OUTPUT foreign/description.xml @ONLY CONTENT [[
<description xmlns="http://openoffice.org/extensions/description/2006">
  <identifier value="org.wetspell.foreign"/><version value="1.0"/><platform value="no_such_platform"/>
</description>
]])
set(foreign ${CMAKE_CURRENT_BINARY_DIR}/foreign)
file(GENERATE OUTPUT ${foreign}/plan CONTENT "description.xml|${foreign}/description.xml\n")
add_custom_command(OUTPUT ${foreign}/foreign.oxt
  COMMAND ${CMAKE_COMMAND} -DPLAN=${foreign}/plan -DSTAGE=${foreign}/stage -DOUT=${foreign}/foreign.oxt
          -P ${PROJECT_SOURCE_DIR}/addin/cmake/pack.cmake
  DEPENDS ${foreign}/plan ${foreign}/description.xml VERBATIM)
add_custom_target(foreign_oxt DEPENDS ${foreign}/foreign.oxt)
add_dependencies(test_host_driver foreign_oxt)
target_compile_definitions(test_host_driver PRIVATE WETSPELL_FOREIGN_OXT="${foreign}/foreign.oxt")
