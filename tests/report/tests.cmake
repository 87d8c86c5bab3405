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
