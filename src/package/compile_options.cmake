# How every target of the project is compiled: warnings, sanitizers, and a compiler cache.

if(PROJECT_IS_TOP_LEVEL AND NOT CMAKE_CXX_COMPILER_LAUNCHER)
  find_program(PLATEWRIGHT_CCACHE ccache)
  if(PLATEWRIGHT_CCACHE)
    # Without these a translation unit that uses a precompiled header is never found in the cache.
    set(CMAKE_CXX_COMPILER_LAUNCHER ${CMAKE_COMMAND} -E env
      CCACHE_SLOPPINESS=pch_defines,time_macros,include_file_mtime,include_file_ctime
      ${PLATEWRIGHT_CCACHE})
  endif()
endif()

set(platewright_warnings
  -Wall -Wextra -Wpedantic -Wconversion -Wsign-conversion -Wshadow -Wold-style-cast -Wcast-align
  -Wcast-qual -Wnon-virtual-dtor -Woverloaded-virtual -Wformat=2 -Wimplicit-fallthrough
  -Wdouble-promotion -Wextra-semi)
if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU")
  list(APPEND platewright_warnings
    -Wduplicated-cond -Wduplicated-branches -Wlogical-op -Wsuggest-override)
  if(CMAKE_BUILD_TYPE MATCHES "^(Release|RelWithDebInfo|MinSizeRel)$")
    # Once it optimises, g++ 12 sees overlaps and overflows in its own std::string that are not there
    # (GCC bug 105651).
    list(APPEND platewright_warnings -Wno-restrict -Wno-stringop-overflow -Wno-array-bounds)
  endif()
endif()

# For targets of our own: what is not handed on to whoever links them.
function(platewright_compile_options target)
  target_compile_options(${target} PRIVATE ${platewright_warnings})
  if(PLATEWRIGHT_WARNINGS_AS_ERRORS)
    target_compile_options(${target} PRIVATE -Werror)
  endif()
  if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU")
    target_compile_options(${target} PRIVATE -fpch-preprocess)  # the cache needs it
  endif()
  if(PLATEWRIGHT_BUILD_FUZZERS)
    # The fuzzer follows what it can see: the libraries as well as the target.
    target_compile_options(${target} PRIVATE -fsanitize=fuzzer-no-link)
    target_link_options(${target} PRIVATE -fsanitize=fuzzer-no-link)
  endif()
  if(PLATEWRIGHT_SANITIZE)
    target_compile_options(${target} PRIVATE
      -fsanitize=${PLATEWRIGHT_SANITIZE} -fno-sanitize-recover=all -fno-omit-frame-pointer)
    if(PLATEWRIGHT_SANITIZE_LESS)
      target_compile_options(${target} PRIVATE -fno-sanitize=${PLATEWRIGHT_SANITIZE_LESS})
    endif()
    target_link_options(${target} PRIVATE -fsanitize=${PLATEWRIGHT_SANITIZE})
  endif()
endfunction()

# For what ends up in shared objects, and all that reuses its precompiled header. By hand, since
# CMake's property gives programs another option, with which the header does not fit.
function(platewright_for_shared_objects target)
  target_compile_options(${target} PRIVATE -fPIC)
  if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU")
    # Else what could be replaced when it is loaded is never inlined; clang inlines it anyway.
    target_compile_options(${target} PRIVATE -fno-semantic-interposition)
  endif()
endfunction()

# Adds `target`, which carries the headers that cost most to read, read once for all targets that are
# compiled alike. It links `uses`; what follows are further headers.
function(platewright_add_precompiled target uses)
  set(source ${CMAKE_CURRENT_BINARY_DIR}/precompiled.cpp)
  file(WRITE ${source} "// Only carries the precompiled header.\n")
  add_library(${target} OBJECT ${source})
  platewright_compile_options(${target})
  target_link_libraries(${target} PRIVATE ${uses})
  target_precompile_headers(${target} PRIVATE
    ${ARGN}
    <boost/multiprecision/cpp_int.hpp>
    <boost/mpl/divides.hpp>
    <boost/mpl/times.hpp>
    <boost/units/base_dimension.hpp>
    <boost/units/derived_dimension.hpp>
    <boost/units/dimension.hpp>
    <algorithm> <array> <functional> <map> <optional> <set> <string> <string_view> <utility>
    <variant> <vector>)
endfunction()

function(platewright_use_precompiled target)
  target_precompile_headers(${target} REUSE_FROM platewright_precompiled)
endfunction()

# Where CMAKE_UNITY_BUILD is on, the sources of one folder are compiled together, a dozen at a time:
# most of what a source costs is the library's inline code, which is then compiled once for all of
# them. So no two sources of a folder have a helper of one name.
function(platewright_compile_folders_together target)
  set_target_properties(${target} PROPERTIES UNITY_BUILD_MODE GROUP)
  get_target_property(sources ${target} SOURCES)
  list(FILTER sources INCLUDE REGEX "^${CMAKE_CURRENT_SOURCE_DIR}/.+\\.cpp$")
  set(folders "")
  foreach(source IN LISTS sources)
    cmake_path(GET source PARENT_PATH folder)
    cmake_path(RELATIVE_PATH folder BASE_DIRECTORY ${CMAKE_CURRENT_SOURCE_DIR})
    string(MAKE_C_IDENTIFIER "in/${folder}" folder)
    list(APPEND folders ${folder})
    list(APPEND ${folder} ${source})
  endforeach()
  list(REMOVE_DUPLICATES folders)
  foreach(folder IN LISTS folders)
    set(number 0)
    foreach(source IN LISTS ${folder})
      math(EXPR group "${number} / 12")
      set_source_files_properties(${source} PROPERTIES UNITY_GROUP ${folder}_${group})
      math(EXPR number "${number} + 1")
    endforeach()
  endforeach()
endfunction()
