// Writes a file whole or not at all: a temporary name beside the target, then a rename.
#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <cstring>

#include "report/whole_file.hpp"

namespace maybough::report {

WholeFile::WholeFile(std::string path) : path_(std::move(path)), temporary_(path_ + ".tmp") {}

WholeFile::~WholeFile() {
    if (!kept_) std::remove(temporary_.c_str());
}

void WholeFile::keep() {
    const int handle = ::open(temporary_.c_str(), O_RDONLY | O_CLOEXEC);
    const bool safe = handle >= 0 && ::fsync(handle) == 0;
    const int why = errno;
    if (handle >= 0) ::close(handle);
    if (!safe) throw RunError(path_ + ": could not be brought to the disk (" + std::strerror(why) + ")");
    if (std::rename(temporary_.c_str(), path_.c_str()) != 0) {
        throw RunError(path_ + ": cannot be put in place (" + std::strerror(errno) + ")");
    }
    kept_ = true;
}

void write_text(const std::string& path, const std::string& text) {
    WholeFile file(path);
    std::FILE* out = std::fopen(file.temporary().c_str(), "wb");
    if (out == nullptr) throw RunError(path + ": cannot be written (" + std::strerror(errno) + ")");
    const bool wrote = std::fwrite(text.data(), 1, text.size(), out) == text.size() && std::fflush(out) == 0;
    const std::string why = wrote ? "" : std::strerror(errno);
    if (std::fclose(out) != 0 || !wrote) throw RunError(path + ": could not be written whole (" + why + ")");
    file.keep();
}

}  // namespace maybough::report
