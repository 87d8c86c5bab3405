# The pages' frames as a small library, linked to the report: chart and map libraries come from the npm registry at
# configure time, exactly as locked; page, styles and scripts are put together at build time.
if(TARGET maybough_page)
  return()
endif()
set(page_source ${CMAKE_CURRENT_LIST_DIR})
set(page_build ${PROJECT_BINARY_DIR}/page)
find_program(NODE_PROGRAM NAMES node nodejs)
find_program(NPM_PROGRAM NAMES npm)
if(NOT NODE_PROGRAM OR NOT NPM_PROGRAM)
  message(FATAL_ERROR "The pages need node and npm to be put together: apt-get install nodejs npm")
endif()

file(SHA256 ${page_source}/package-lock.json page_lock)
set(page_stamp ${page_build}/installed-${page_lock})
if(NOT EXISTS ${page_stamp})
  file(MAKE_DIRECTORY ${page_build})
  file(COPY ${page_source}/package.json ${page_source}/package-lock.json DESTINATION ${page_build})
  message(STATUS "Installing the page's libraries (npm ci)")
  execute_process(COMMAND ${NPM_PROGRAM} ci --ignore-scripts --no-audit --no-fund
                  WORKING_DIRECTORY ${page_build} RESULT_VARIABLE page_failed OUTPUT_VARIABLE page_said
                  ERROR_VARIABLE page_said)
  if(page_failed)
    message(FATAL_ERROR "npm ci failed in ${page_build}; is the npm registry reached?\n${page_said}")
  endif()
  file(TOUCH ${page_stamp})
endif()

set(page_cpp ${page_build}/page_frame.cpp)
file(GLOB page_parts CONFIGURE_DEPENDS ${page_source}/*.html ${page_source}/*.css ${page_source}/*.js
     ${page_source}/*.mjs)
add_custom_command(OUTPUT ${page_cpp}
                   COMMAND ${NODE_PROGRAM} ${page_source}/bundle.mjs ${page_cpp} ${page_build}/node_modules
                   DEPENDS ${page_parts} ${page_stamp}
                   COMMENT "Putting the pages together" VERBATIM)
add_library(maybough_page STATIC ${page_cpp})
target_link_libraries(maybough_page PRIVATE maybough_flags)
target_link_libraries(maybough_report PUBLIC maybough_page)
