// Parameters and beliefs as scenario files set them over the model's defaults.
#pragma once

#include "scenario/fields.hpp"
#include "scenario/scenario.hpp"

namespace maybough::scenario {

/// Puts the sections `parameters` and `beliefs` of one file over the scenario. A parameter set is known: it is drawn no
/// more. A later file's word replaces an earlier one's; the same key in both sections of one file is an error.
void put_parameters_over(const JsonAt& file, Scenario& scenario);

}  // namespace maybough::scenario
