// A source of scripted uniforms that throws when the script runs out, so that a test states how many are drawn.
#pragma once

#include <stdexcept>
#include <vector>

namespace maybough::test {

class Scripted {
  public:
    explicit Scripted(std::vector<double> script) : script_(std::move(script)) {}
    double uniform() {
        if (next_ == script_.size()) throw std::out_of_range("the script of random numbers ran out");
        return script_[next_++];
    }
    bool used_up() const { return next_ == script_.size(); }

  private:
    std::vector<double> script_;
    std::size_t next_ = 0;
};

}  // namespace maybough::test
