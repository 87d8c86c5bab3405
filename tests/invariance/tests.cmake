# The same plan, to the bit, for any number of threads.
add_test(NAME "invariance: a plan with one thread and with two"
         COMMAND ${Python3_EXECUTABLE} ${CMAKE_CURRENT_LIST_DIR}/same_bits.py $<TARGET_FILE:maybough>
                 ${PROJECT_SOURCE_DIR}/scenarios/brindle-ferry)
set_tests_properties("invariance: a plan with one thread and with two" PROPERTIES LABELS invariance TIMEOUT 600)
