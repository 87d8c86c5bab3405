# The schema against a general validator: every scenario passes, broken ones fail there and in the program.
file(GLOB scenario_files CONFIGURE_DEPENDS ${PROJECT_SOURCE_DIR}/scenarios/*/scenario.json)
add_test(NAME "scenario: schema against a general validator"
         COMMAND ${Python3_EXECUTABLE} ${PROJECT_SOURCE_DIR}/tests/scenario/schema_check.py
                 ${PROJECT_SOURCE_DIR}/scenarios/schema.json $<TARGET_FILE:maybough> ${scenario_files})
set_tests_properties("scenario: schema against a general validator" PROPERTIES LABELS command TIMEOUT 300)

# The demo area planned on a real weather series in place of its invented one.
add_test(NAME "scenario: the demo on a real weather series"
         COMMAND ${Python3_EXECUTABLE} ${PROJECT_SOURCE_DIR}/tests/scenario/real_series.py $<TARGET_FILE:maybough>
                 ${PROJECT_SOURCE_DIR}/scenarios/brindle-ferry)
set_tests_properties("scenario: the demo on a real weather series" PROPERTIES LABELS command TIMEOUT 600)

# The classroom scenarios: what each page tells to run is run, and its answer holds.
add_test(NAME "scenario: the classroom's answers hold"
         COMMAND ${Python3_EXECUTABLE} ${PROJECT_SOURCE_DIR}/tests/scenario/classroom.py $<TARGET_FILE:maybough>)
set_tests_properties("scenario: the classroom's answers hold" PROPERTIES LABELS command TIMEOUT 300)
