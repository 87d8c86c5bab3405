// What this machine can run at once.
#include <algorithm>
#include <thread>

#include "ensemble/ensemble.hpp"

namespace maybough::ensemble {

unsigned machine_threads() {
    return std::max(1U, std::thread::hardware_concurrency());
}

}  // namespace maybough::ensemble
