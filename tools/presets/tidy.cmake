# Compile commands for clang-tidy: cmake -C tools/presets/tidy.cmake -S . -B build-tidy -G Ninja
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(MAYBOUGH_WERROR ON CACHE BOOL "")
