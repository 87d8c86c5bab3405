# The command line as a user meets it: bad inputs, each with its place, its exit code and nothing touched.
add_test(NAME "command: bad inputs are told and touch nothing"
         COMMAND ${Python3_EXECUTABLE} ${PROJECT_SOURCE_DIR}/tests/command/bad_inputs.py $<TARGET_FILE:maybough>)
set_tests_properties("command: bad inputs are told and touch nothing" PROPERTIES LABELS command TIMEOUT 600)
add_test(NAME "command: replay plays the seasons that season simulates"
         COMMAND ${Python3_EXECUTABLE} ${PROJECT_SOURCE_DIR}/tests/command/replay_is_season.py $<TARGET_FILE:maybough>
                 ${PROJECT_SOURCE_DIR}/scenarios/brindle-ferry)
set_tests_properties("command: replay plays the seasons that season simulates" PROPERTIES LABELS command TIMEOUT 600)
add_test(NAME "command: report makes every output again"
         COMMAND ${Python3_EXECUTABLE} ${PROJECT_SOURCE_DIR}/tests/command/report_again.py $<TARGET_FILE:maybough>)
set_tests_properties("command: report makes every output again" PROPERTIES LABELS command TIMEOUT 600)
