// Command: one file a command, shared option groups, exit codes.
#pragma once

namespace maybough::command {

/// Runs one command line; returns 0, 1 (our fault or the machine's) or 2 (the user can mend it).
int run(int argc, char** argv);

}  // namespace maybough::command

namespace maybough {
using namespace command;  // so that rooms to the right need no prefix
}
