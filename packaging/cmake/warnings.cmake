# Compiler options shared by all our targets. Warnings are errors in the presets
# (CMAKE_COMPILE_WARNING_AS_ERROR), not for packagers.
add_library(nettare_options INTERFACE)
target_compile_options(
  nettare_options
  INTERFACE -Wall -Wextra -Wpedantic -Wshadow -Wconversion -Wsign-conversion -Wold-style-cast
            -Wnon-virtual-dtor -Woverloaded-virtual -Wdouble-promotion -Wcast-align -Wunused
            # Figures must be the same bytes from every compiler: no fused multiply-add.
            -ffp-contract=off)
if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU")
  target_compile_options(nettare_options INTERFACE -Wduplicated-cond -Wduplicated-branches
                                                   -Wlogical-op)
endif()
