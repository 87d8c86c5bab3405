# Without optimisation, for a debugger: cmake -C tools/presets/debug.cmake -S . -B build-debug -G Ninja
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(MAYBOUGH_WERROR ON CACHE BOOL "")
