# Release build as users get it, warnings as errors: cmake -C tools/presets/release.cmake -S . -B build-release -G Ninja
set(CMAKE_BUILD_TYPE Release CACHE STRING "")
set(MAYBOUGH_WERROR ON CACHE BOOL "")
