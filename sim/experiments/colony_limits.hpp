// Private to experiments/: whole colonies set to the limits of published models, their rates slowed so that a step of
// a day is a small one.
#pragma once

#include "experiments/made_days.hpp"

namespace maybough::experiments {

/// A colony in days that are all alike, with nothing left of the model but the equations of Khoury, Barron and
/// Myerscough 2013: laying by nest bees and food, social inhibition, loss of foragers, food in and eaten.
struct LimitOf2013 {
    double forager_loss_per_day = 0.24;
    double slowed = 100;     ///< a simulated day stands for one day over this
    ColonyParameters model;  ///< the model's own constants

    ColonyParameters parameters() const;
    Colony start(double nest, double foragers, double food_g) const;
};

/// Means of the last `days` simulated days of a run of `run_days`.
struct Settled {
    double nest = 0;
    double foragers = 0;
    double food_g = 0;
    double food_gain_g_per_day = 0;
    double first_foraging_age_days = 0;  ///< by Little's law: nest bees over those who take up foraging a day
    double bees() const { return nest + foragers; }
};
Settled settle(const LimitOf2013& limit, Colony colony, int run_days, int days, const Chance& chance);

}  // namespace maybough::experiments
