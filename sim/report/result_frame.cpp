// Root attributes of a results file: what it is, how it came about, and that it is whole.
#include "report/result_columns.hpp"
#include "report/words.hpp"

namespace maybough::report {
namespace {

constexpr std::int64_t format_version = 2;

}  // namespace

void begin_results(Hdf5Writer& file, const std::string& kind, const Scenario& scenario, const Provenance& origin) {
    file.attribute("file_kind", "maybough " + kind);
    file.attribute("format_version", format_version);
    file.attribute("program_version", origin.version);
    file.attribute("flags", origin.flags);
    file.attribute("command", origin.command);
    file.attribute("command_line", origin.command_line);
    file.attribute("seed", std::int64_t{origin.seed});
    file.attribute("scenario_text", scenario.text);
    file.attribute("written_at", origin.written_at);
}

void end_results(Hdf5Writer& file) {
    file.attribute("complete", 1);
    file.finish();
}

Provenance check_results(const Hdf5Reader& file, const std::string& kind) {
    const std::string found = file.text_attribute("file_kind");
    if (found != "maybough " + kind) {
        throw InputError(file.path(), "holds \"" + found + "\", expected \"maybough " + kind + "\"");
    }
    const std::int64_t format = file.whole_attribute("format_version");
    if (format > format_version) {
        throw InputError(
            file.path(),
            "is of format " + std::to_string(format) + ", this program reads up to " + std::to_string(format_version),
            "use a newer maybough");
    }
    if (format < format_version) {
        throw InputError(
            file.path(),
            "is of format " + std::to_string(format) + ", this program reads " + std::to_string(format_version),
            "run the command that wrote it again");
    }
    if (!file.has_attribute("complete") || file.whole_attribute("complete") != 1) {
        throw InputError(file.path(), "is not complete: the run that wrote it was cut off", "run it again");
    }
    Provenance origin;
    origin.version = file.text_attribute("program_version");
    origin.flags = file.text_attribute("flags");
    origin.command = file.text_attribute("command");
    origin.command_line = file.text_attribute("command_line");
    origin.seed = static_cast<std::uint32_t>(file.whole_attribute("seed"));
    origin.written_at = file.text_attribute("written_at");
    return origin;
}

std::string results_kind(const std::string& path) {
    const std::string found = Hdf5Reader(path).text_attribute("file_kind");
    for (const char* kind : {"plan", "season", "compare"}) {
        if (found == std::string("maybough ") + kind) return kind;
    }
    throw InputError(path, "holds \"" + plain_text(found) + "\", expected a plan, seasons or a comparison",
                     "give a results.h5 that maybough wrote");
}

}  // namespace maybough::report
