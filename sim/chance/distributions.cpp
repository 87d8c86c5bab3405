// The normal quantile.
#include "chance/distributions.hpp"

#include <boost/math/special_functions/erf.hpp>

namespace maybough::chance {

double normal_quantile(double p) {
    return -std::sqrt(2.0) * boost::math::erfc_inv(2 * p);
}

}  // namespace maybough::chance
