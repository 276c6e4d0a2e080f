# Finds libxlsxwriter, which ships no CMake package on most systems: xlsxwriter::xlsxwriter.

include(FindPackageHandleStandardArgs)

find_path(xlsxwriter_INCLUDE_DIR xlsxwriter.h)
find_library(xlsxwriter_LIBRARY xlsxwriter)
mark_as_advanced(xlsxwriter_INCLUDE_DIR xlsxwriter_LIBRARY)
find_package_handle_standard_args(xlsxwriter
  REQUIRED_VARS xlsxwriter_LIBRARY xlsxwriter_INCLUDE_DIR)

if(xlsxwriter_FOUND AND NOT TARGET xlsxwriter::xlsxwriter)
  add_library(xlsxwriter::xlsxwriter UNKNOWN IMPORTED)
  set_target_properties(xlsxwriter::xlsxwriter PROPERTIES
    IMPORTED_LOCATION "${xlsxwriter_LIBRARY}"
    INTERFACE_INCLUDE_DIRECTORIES "${xlsxwriter_INCLUDE_DIR}")
endif()
