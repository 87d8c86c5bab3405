// Rate equations over time by Boost's classical fourth-order Runge-Kutta with a fixed step.
#pragma once

#include <boost/numeric/odeint/stepper/runge_kutta4.hpp>
#include <cmath>

namespace maybough::test {

/// The state after `time`; flow(state, change, t) gives the rates of change.
template <class State, class Flow>
State integrate(Flow flow, State state, double time, double step) {
    boost::numeric::odeint::runge_kutta4<State> stepper;
    const long steps = std::lround(time / step);
    for (long i = 0; i < steps; ++i) stepper.do_step(flow, state, static_cast<double>(i) * step, step);
    return state;
}

}  // namespace maybough::test
