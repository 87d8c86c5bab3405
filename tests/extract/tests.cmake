# Real extracts from packages (Debian sumo-tools; npm osmtogeojson beside the pages' libraries, where installed) and the
# demo's invented one, against GDAL.
add_test(NAME "extract: area by class as GDAL reads it"
         COMMAND ${Python3_EXECUTABLE} ${PROJECT_SOURCE_DIR}/tests/extract/area_by_class.py $<TARGET_FILE:maybough>
                 /usr/share/sumo/tools/game/racing/spreewaldring.osm
                 ${MAYBOUGH_EXTRACTS})
set_tests_properties("extract: area by class as GDAL reads it" PROPERTIES LABELS published TIMEOUT 300
                                                                          SKIP_RETURN_CODE 77)
add_test(NAME "extract: a stranger's hour, from a phone's waypoints to a plan"
         COMMAND ${Python3_EXECUTABLE} ${PROJECT_SOURCE_DIR}/tests/extract/strangers_hour.py $<TARGET_FILE:maybough>
                 ${PROJECT_SOURCE_DIR})
set_tests_properties("extract: a stranger's hour, from a phone's waypoints to a plan" PROPERTIES LABELS command TIMEOUT 600)
