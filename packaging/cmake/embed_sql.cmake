# nettare_embed_sql(<target> <folder> <function>): compiles the NNN_name.sql files of a folder into
# the target as text, in the order of their numbers. <function>() is declared by the caller as
# std::span<const SqlStep> in db/sql_step.h. Configuring runs again when a file changes.
function(nettare_embed_sql target folder function)
  file(GLOB steps CONFIGURE_DEPENDS ${CMAKE_CURRENT_SOURCE_DIR}/${folder}/*.sql)
  list(SORT steps)
  list(LENGTH steps count)
  set(entries "")
  foreach(step IN LISTS steps)
    get_filename_component(name ${step} NAME)
    file(READ ${step} text)
    string(APPEND entries "    {\"${name}\", R\"sql(${text})sql\"},\n")
    set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS ${step})
  endforeach()
  set(source ${CMAKE_CURRENT_BINARY_DIR}/${folder}.cpp)
  file(CONFIGURE OUTPUT ${source} CONTENT "#include \"db/sql_step.h\"

#include <array>

namespace nettare {

std::span<const SqlStep> ${function}() {
    static constexpr std::array<SqlStep, ${count}> kSteps{{
${entries}    }};
    return kSteps;
}

}  // namespace nettare
" @ONLY)
  target_sources(${target} PRIVATE ${source})
endfunction()
