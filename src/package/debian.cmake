# The packages for Debian that `cpack` writes: the program, the C interface's shared object, what
# compiles against the libraries, the Python module. Configure with CMAKE_INSTALL_PREFIX=/usr.

set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME platewright)
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "Scales and costs recipes for trade use")
set(CPACK_PACKAGE_VENDOR "platewright contributors")
set(CPACK_PACKAGE_CONTACT "platewright contributors <contributors@platewright.invalid>")
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_DEB_COMPONENT_INSTALL ON)
set(CPACK_COMPONENTS_GROUPING IGNORE)
set(CPACK_COMPONENTS_ALL program library development python)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION libs)
set(CPACK_DEBIAN_PACKAGE_CONTROL_STRICT_PERMISSION ON)

set(CPACK_DEBIAN_PROGRAM_PACKAGE_NAME platewright)
set(CPACK_DEBIAN_PROGRAM_PACKAGE_SECTION utils)
set(CPACK_DEBIAN_PROGRAM_PACKAGE_SHLIBDEPS ON)
set(CPACK_COMPONENT_PROGRAM_DESCRIPTION "The program. It works a tested recipe up to the guests of an event: raw
weights to buy, scaled lines, plate cost, quote, order in whole packs, and
cards to cook from. Every figure is exact until a sheet is printed.")

set(CPACK_DEBIAN_LIBRARY_PACKAGE_NAME libplatewright-c${PROJECT_VERSION_MAJOR})
set(CPACK_DEBIAN_LIBRARY_PACKAGE_SHLIBDEPS ON)
# By hand: CPack would run ldconfig in a script, where Debian wants a trigger.
file(CONFIGURE OUTPUT shlibs CONTENT
  "libplatewright_c ${PROJECT_VERSION_MAJOR} libplatewright-c${PROJECT_VERSION_MAJOR} (>= ${PROJECT_VERSION})\n")
file(CONFIGURE OUTPUT triggers CONTENT "activate-noawait ldconfig\n")
set(CPACK_DEBIAN_LIBRARY_PACKAGE_CONTROL_EXTRA
  ${CMAKE_CURRENT_BINARY_DIR}/shlibs ${CMAKE_CURRENT_BINARY_DIR}/triggers)
set(CPACK_COMPONENT_LIBRARY_DESCRIPTION "The shared object for C. It reads books of recipes, scales and costs them,
walks yields and quotes events, for C and for every language that can call
C. Answers are plain values.")

set(CPACK_DEBIAN_DEVELOPMENT_PACKAGE_NAME libplatewright-dev)
set(CPACK_DEBIAN_DEVELOPMENT_PACKAGE_SECTION libdevel)
set(CPACK_DEBIAN_DEVELOPMENT_PACKAGE_DEPENDS
  "libplatewright-c${PROJECT_VERSION_MAJOR} (= ${PROJECT_VERSION}), libboost1.81-dev, libyaml-cpp-dev, libhowardhinnant-date-dev, libutf8proc-dev, zlib1g-dev")
if(TARGET xlsxwriter::xlsxwriter)
  string(APPEND CPACK_DEBIAN_DEVELOPMENT_PACKAGE_DEPENDS ", libxlsxwriter-dev")
endif()
set(CPACK_COMPONENT_DEVELOPMENT_DESCRIPTION "For development in C++ and C: headers, archives, and what CMake and
pkg-config find them by. Quantities of different dimensions do not mix when
a program is compiled; numbers are exact.")

set(CPACK_DEBIAN_PYTHON_PACKAGE_NAME python3-platewright)
set(CPACK_DEBIAN_PYTHON_PACKAGE_SECTION python)
set(CPACK_DEBIAN_PYTHON_PACKAGE_ARCHITECTURE all)
set(CPACK_DEBIAN_PYTHON_PACKAGE_DEPENDS
  "python3:any, libplatewright-c${PROJECT_VERSION_MAJOR} (>= ${PROJECT_VERSION})")
set(CPACK_COMPONENT_PYTHON_DESCRIPTION "The module for Python: scaled recipes, plate costs, yields and quotes as
named tuples of exact fractions, through the C interface of the library.")

# What Debian asks of each package beside that: its copyright, its changes, manuals compressed.
configure_file(debian_files.cmake.in debian_files.cmake @ONLY)
configure_file(debian_trigger.cmake.in debian_trigger.cmake @ONLY)
set(CPACK_PRE_BUILD_SCRIPTS ${CMAKE_CURRENT_BINARY_DIR}/debian_files.cmake)
set(CPACK_POST_BUILD_SCRIPTS ${CMAKE_CURRENT_BINARY_DIR}/debian_trigger.cmake)

include(CPack)
