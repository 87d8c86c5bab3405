// Finds the command and runs it.
#include "command/command.hpp"

namespace maybough {
int run(int /*argc*/, char** /*argv*/) { return 0; }
}  // namespace maybough
