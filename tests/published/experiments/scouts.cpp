// House-hunts against published experiments: the experiments of `maybough verify`.
#include "findings.hpp"

TEST_CASE("scout experiments agree with what was published") {
    maybough_test::judge(maybough::scout_experiments());
}
