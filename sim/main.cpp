// Calls command::run and turns errors into exit codes; the only catch-all.
#include <exception>
#include <iostream>

#include "base/base.hpp"
#include "command/command.hpp"

int main(int argc, char** argv) {
    try {
        return maybough::run(argc, argv);
    } catch (const maybough::InputError& e) {
        std::cerr << "maybough: " << e.what() << "\n";
        return 2;
    } catch (const std::exception& e) {
        std::cerr << "maybough: " << e.what() << "\n";
        return 1;
    }
}
