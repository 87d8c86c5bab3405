// A file under a temporary name that takes its own name only when it is whole: private to report/.
#pragma once

#include <string>

#include "report/report.hpp"

namespace maybough::report {

/// Write to temporary(), then keep(); without keep() the temporary file is removed and the target stays as it was.
class WholeFile {
  public:
    explicit WholeFile(std::string path);
    ~WholeFile();
    WholeFile(const WholeFile&) = delete;
    WholeFile& operator=(const WholeFile&) = delete;

    const std::string& temporary() const { return temporary_; }
    /// Renames; throws RunError when the disk refuses.
    void keep();

  private:
    std::string path_;
    std::string temporary_;
    bool kept_ = false;
};

}  // namespace maybough::report
