# The fit of the cavity score is a program with its data; it is also a test.
add_subdirectory(${PROJECT_SOURCE_DIR}/tools/fit_traps ${PROJECT_BINARY_DIR}/tools/fit_traps)
