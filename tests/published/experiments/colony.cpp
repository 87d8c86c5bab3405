// Colonies against published seasons, swarms and survival: the experiments of `maybough verify`.
#include "findings.hpp"

TEST_CASE("colony experiments agree with what was published") {
    maybough_test::judge(maybough::colony_experiments());
}
