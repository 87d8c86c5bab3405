# The parameter table of the model description is the one the program prints.
add_test(NAME "parameters: the model description's table is current"
         COMMAND ${Python3_EXECUTABLE} ${PROJECT_SOURCE_DIR}/tools/model_table $<TARGET_FILE:maybough> --check)
