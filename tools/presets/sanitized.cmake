# Address and undefined-behaviour sanitizers and the library's own checks, hardly optimised: cmake -C tools/presets/sanitized.cmake -S . -B build-sanitized -G Ninja
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(CMAKE_CXX_FLAGS_DEBUG "-O1 -g1" CACHE STRING "")
set(MAYBOUGH_SANITIZE ON CACHE BOOL "")
set(MAYBOUGH_WERROR ON CACHE BOOL "")
