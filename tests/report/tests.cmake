# The report's files read back by general tools: one test writes them, the others read.
set(report_sample ${PROJECT_BINARY_DIR}/report_sample)
add_test(NAME "report: sample files for general tools"
         COMMAND test_report "--test-case=sample files are written for general tools to read back")
set_tests_properties("report: sample files for general tools" PROPERTIES FIXTURES_SETUP report_sample LABELS unit)
foreach(check gpx geojson json csv calendar results)
  add_test(NAME "published/report: ${check} read back"
           COMMAND ${Python3_EXECUTABLE} ${PROJECT_SOURCE_DIR}/tests/published/report/${check}_read_back.py
                   ${report_sample})
  set_tests_properties("published/report: ${check} read back" PROPERTIES FIXTURES_REQUIRED report_sample
                                                                         LABELS published TIMEOUT 120)
endforeach()

# The page in a browser.
add_test(NAME "report: sample page" COMMAND test_report "--test-case=a sample page is written for the browser to open")
set_tests_properties("report: sample page" PROPERTIES FIXTURES_SETUP report_page FIXTURES_REQUIRED report_sample
                                                      LABELS unit)
add_test(NAME "report: page in a browser"
         COMMAND ${Python3_EXECUTABLE} ${CMAKE_CURRENT_LIST_DIR}/page_in_browser.py ${report_sample}
                 ${PROJECT_BINARY_DIR}/page/node_modules/axe-core/axe.min.js)
set_tests_properties("report: page in a browser" PROPERTIES FIXTURES_REQUIRED report_page LABELS command TIMEOUT 300)

# The replays in a browser.
add_test(NAME "report: sample replays"
         COMMAND test_report "--test-case=sample replays are written for the browser to open*")
set_tests_properties("report: sample replays" PROPERTIES FIXTURES_SETUP report_replay FIXTURES_REQUIRED report_sample
                                                         LABELS unit)
add_test(NAME "report: replays in a browser"
         COMMAND ${Python3_EXECUTABLE} ${CMAKE_CURRENT_LIST_DIR}/replay_in_browser.py ${report_sample}
                 ${PROJECT_BINARY_DIR}/page/node_modules/axe-core/axe.min.js)
set_tests_properties("report: replays in a browser" PROPERTIES FIXTURES_REQUIRED report_replay LABELS command
                                                               TIMEOUT 300)
