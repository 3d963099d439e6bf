# nettare_embed_text(<target> <file> <function>): compiles a text file, named from the root of the
# project, into the target. <function>() is declared by the caller as std::string_view. Configuring
# runs again when the file changes.
function(nettare_embed_text target file function)
  file(READ ${CMAKE_SOURCE_DIR}/${file} text)
  set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS ${CMAKE_SOURCE_DIR}/${file})
  set(source ${CMAKE_CURRENT_BINARY_DIR}/${file}.cpp)
  file(CONFIGURE OUTPUT ${source} CONTENT [==[#include <string_view>

namespace nettare {

std::string_view @function@() {
    return R"embedded(@text@)embedded";
}

}  // namespace nettare
]==] @ONLY)
  target_sources(${target} PRIVATE ${source})
endfunction()
