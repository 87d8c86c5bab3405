# The program alone with link-time optimisation, so that the linker sees a type defined twice (-Wodr): cmake -C tools/presets/lto.cmake -S . -B build-lto -G Ninja
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(CMAKE_CXX_FLAGS_DEBUG "-O1 -flto=2 -Wodr" CACHE STRING "")
set(MAYBOUGH_TESTS OFF CACHE BOOL "")
set(MAYBOUGH_WERROR ON CACHE BOOL "")
