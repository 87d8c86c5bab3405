// The output folder, and the progress line.
#include <unistd.h>

#include <chrono>
#include <cstdio>
#include <filesystem>
#include <memory>

#include "command/command_line.hpp"

namespace maybough::command {

namespace fs = std::filesystem;

OutputFolder::OutputFolder(const Request& request, const Scenario& scenario, const std::vector<std::string>& names) {
    folder_ = request.command;
    if (request.has("scenario") || request.has("results")) {
        const fs::path given = scenario.folder.empty() ? fs::path(".") : fs::path(scenario.folder);
        folder_ += "-" + fs::weakly_canonical(given).filename().string();
    }
    if (request.has("out")) folder_ = request.get<std::string>("out");
    for (const std::string& name : names) {
        if (fs::exists(fs::path(folder_) / name) && !request.has("overwrite")) {
            throw InputError(path(name), "is already there and would be replaced",
                             "give --overwrite, or another folder with --out");
        }
    }
    std::error_code failed;
    fs::create_directories(folder_, failed);
    if (failed || !fs::is_directory(folder_) || ::access(folder_.c_str(), W_OK) != 0) {
        throw InputError(folder_,
                         "this output folder cannot be written" + (failed ? " (" + failed.message() + ")" : ""),
                         "name another with --out");
    }
}

std::string OutputFolder::path(const std::string& name) const {
    return (fs::path(folder_) / name).string();
}

namespace {

std::string clock_text(double seconds) {
    const auto whole = static_cast<long>(seconds + 0.5);
    char text[32];
    std::snprintf(text, sizeof text, "%ld:%02ld", whole / 60, whole % 60);
    return text;
}

}  // namespace

Progress progress_line(const Request& request, const std::string& what, const std::string& counted) {
    const bool terminal = ::isatty(STDERR_FILENO) == 1;
    if (request.has("no-progress") || (!terminal && !request.has("progress"))) return {};
    using Clock = std::chrono::steady_clock;
    struct State {
        Clock::time_point began = Clock::now();
        Clock::time_point said{};
        std::uint32_t last = 0;
    };
    const auto state = std::make_shared<State>();
    return [state, what, counted, terminal](std::uint32_t done, std::uint32_t total) {
        const auto now = Clock::now();
        if (done < state->last) state->began = now;  // a new stage counts from its own start
        state->last = done;
        const double waited = std::chrono::duration<double>(now - state->said).count();
        if (done != total && waited < (terminal ? 0.2 : 10.0)) return;
        state->said = now;
        const double took = std::chrono::duration<double>(now - state->began).count();
        const double left = done == 0 ? 0 : took * (total - done) / done;
        std::fprintf(stderr, "%s%s: %u of %u %s, %s left%s", terminal ? "\r\033[K" : "", what.c_str(), done, total,
                     counted.c_str(), clock_text(left).c_str(), terminal ? "" : "\n");
        if (terminal && done == total) std::fprintf(stderr, "\r\033[K");
        std::fflush(stderr);
    };
}

}  // namespace maybough::command
