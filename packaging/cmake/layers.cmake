# One "view" folder per layer: build/layers/core holds a link named core to the sources of core, and
# nothing else. A layer sees only the views of the layers that it links, so a wrong #include is a
# compile error. tests/layering reads the includes as well and says why.
function(nettare_layer target name)
  set(view ${CMAKE_BINARY_DIR}/layers/${name})
  file(MAKE_DIRECTORY ${view})
  file(CREATE_LINK ${CMAKE_SOURCE_DIR}/${name} ${view}/${name} SYMBOLIC)
  target_include_directories(${target} PUBLIC ${view})
endfunction()
