// A hunt allocates nothing after the first on its thread, and gives the same bits on another thread.
#include <doctest/doctest.h>

#include <cstdlib>
#include <new>
#include <thread>

#include "scouts/hunts.hpp"

namespace {
thread_local std::size_t allocations = 0;
}

// Not inlined: the compiler would take the pair of malloc and free for a mismatch.
[[gnu::noinline]] void* operator new(std::size_t size) {
    ++allocations;
    if (void* memory = std::malloc(size)) return memory;
    throw std::bad_alloc();
}
[[gnu::noinline]] void operator delete(void* memory) noexcept {
    std::free(memory);
}
[[gnu::noinline]] void operator delete(void* memory, std::size_t) noexcept {
    std::free(memory);
}

using namespace maybough;
using namespace maybough::test;

TEST_CASE("no allocation inside a hunt after the first") {
    const ScoutParameters p;
    const auto sky = fine_sky(10);
    const auto many = natural_sites(1, 20, p);
    const auto few = natural_sites(2, 5, p);
    hunt(swarm_number(1), many, sky, p, Chance{1, 1});
    const std::size_t before = allocations;
    hunt(swarm_number(2), few, sky, p, Chance{1, 2});
    hunt(swarm_number(1), many, sky, p, Chance{1, 1});
    CHECK(allocations == before);
    CHECK(before > 0);  // the counter counts
}

TEST_CASE("another thread gives the same bits") {
    const ScoutParameters p;
    const auto sky = fine_sky(10);
    const auto sites = natural_sites(5, 8, p);
    const HuntResult here = hunt(swarm_number(5), sites, sky, p, Chance{1, 5});
    HuntResult there;
    std::thread other([&] { there = hunt(swarm_number(5), sites, sky, p, Chance{1, 5}); });
    other.join();
    CHECK(same(here, there));
}
