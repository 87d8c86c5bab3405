// Weather against published figures: the experiments of `maybough verify`.
#include "findings.hpp"

TEST_CASE("weather experiments agree with what was published") {
    maybough_test::judge(maybough::weather_experiments());
}
