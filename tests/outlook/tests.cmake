# A forecast's files read back by general tools, and the same forecast from every form of weather file.
set(forecast_sample ${PROJECT_BINARY_DIR}/forecast_sample)
add_test(NAME "outlook: a sample forecast"
         COMMAND maybough forecast ${PROJECT_SOURCE_DIR}/scenarios/brindle-ferry --today 2025-05-20 --seasons 8 --out
                 ${forecast_sample} --overwrite)
set_tests_properties("outlook: a sample forecast" PROPERTIES FIXTURES_SETUP forecast_sample LABELS unit TIMEOUT 300)
add_test(NAME "published/outlook: agenda read back"
         COMMAND ${Python3_EXECUTABLE} ${PROJECT_SOURCE_DIR}/tests/published/outlook/agenda_read_back.py
                 ${forecast_sample})
set_tests_properties("published/outlook: agenda read back" PROPERTIES FIXTURES_REQUIRED forecast_sample
                                                                      LABELS published TIMEOUT 120)
add_test(NAME "outlook: one forecast from every form of weather file"
         COMMAND ${Python3_EXECUTABLE} ${CMAKE_CURRENT_LIST_DIR}/same_forms.py $<TARGET_FILE:maybough>
                 ${PROJECT_SOURCE_DIR}/scenarios/brindle-ferry)
set_tests_properties("outlook: one forecast from every form of weather file" PROPERTIES LABELS invariance TIMEOUT 600)

# What learn writes is a scenario overlay that other commands take.
set(learn_sample ${PROJECT_BINARY_DIR}/learn_sample)
add_test(NAME "outlook: a sample of learning"
         COMMAND maybough learn ${PROJECT_SOURCE_DIR}/scenarios/brindle-ferry --log
                 ${PROJECT_SOURCE_DIR}/scenarios/brindle-ferry/catch-log.csv --seasons 20 --out ${learn_sample}
                 --overwrite)
set_tests_properties("outlook: a sample of learning" PROPERTIES FIXTURES_SETUP learn_sample LABELS unit TIMEOUT 300)
add_test(NAME "outlook: learnt beliefs are an overlay"
         COMMAND maybough check ${PROJECT_SOURCE_DIR}/scenarios/brindle-ferry --overlay ${learn_sample}/beliefs.json)
set_tests_properties("outlook: learnt beliefs are an overlay" PROPERTIES FIXTURES_REQUIRED learn_sample LABELS command
                                                                         TIMEOUT 120)
add_test(NAME "outlook: the hindcast's file holds what a plot needs"
         COMMAND ${Python3_EXECUTABLE} ${CMAKE_CURRENT_LIST_DIR}/hindcast_file.py $<TARGET_FILE:maybough>
                 ${PROJECT_SOURCE_DIR}/scenarios/brindle-ferry)
set_tests_properties("outlook: the hindcast's file holds what a plot needs" PROPERTIES LABELS unit TIMEOUT 300)
