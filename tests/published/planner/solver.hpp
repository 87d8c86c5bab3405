// Optima by a general solver: models written as CPLEX-LP files and handed to GLPK's glpsol.
#pragma once

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <limits>
#include <sstream>
#include <string>

#include "planner/toy_demand.hpp"

namespace maybough::test {

using namespace planner;

/// The optimum of a mixed-integer model, NaN where the solver found none.
inline double solved(const std::string& name, const std::string& model) {
    const std::filesystem::path folder = std::filesystem::temp_directory_path();
    const std::string in = (folder / ("maybough-" + name + ".lp")).string();
    const std::string out = (folder / ("maybough-" + name + ".sol")).string();
    std::ofstream(in) << model;
    const std::string command = "glpsol --lp " + in + " --tmlim 60 -w " + out + " > /dev/null";
    double optimum = std::numeric_limits<double>::quiet_NaN();
    if (std::system(command.c_str()) == 0) {
        std::ifstream solution(out);
        for (std::string line; std::getline(solution, line);) {
            std::istringstream words(line);
            std::string s, kind, rows, columns, status;
            if (words >> s >> kind >> rows >> columns >> status && s == "s" && kind == "mip" && status == "o") {
                words >> optimum;
            }
        }
    }
    std::filesystem::remove(in);
    std::filesystem::remove(out);
    return optimum;
}

/// Net worth of the best set, written out as a mixed-integer linear program: share s_rj of hunt r in option j is at
/// most x_j, and at most a_rj / W_r times the share that goes elsewhere; all shares of a hunt sum to 1 (Haase 2009,
/// "Discrete location planning", the linear form of logit choice). Traps beyond the owned ones are made. Needs equal
/// worths within a hunt, no rounds, and a set that is not empty.
inline std::string written_out(const Demand& demand, const Limits& limits) {
    std::ostringstream lp;
    lp.precision(12);
    lp << "Maximize\n net:";
    for (std::size_t j = 0; j < demand.options.size(); ++j) lp << " - " << demand.options[j].cost << " x" << j << "\n";
    for (std::size_t k = 0; k < demand.kinds.size(); ++k) lp << " - " << demand.kinds[k].cost << " made" << k << "\n";
    std::vector<std::string> elsewhere(demand.rivals.size());
    std::ostringstream rows;
    rows.precision(12);
    for (std::size_t j = 0; j < demand.options.size(); ++j) {
        for (const Draw& draw : demand.options[j].draws) {
            const std::string share = "s" + std::to_string(draw.hunt) + "_" + std::to_string(j);
            lp << " + " << draw.worth / demand.seasons << " " << share << "\n";
            rows << " " << share << " - x" << j << " <= 0\n";
            rows << " " << share << " - " << draw.pull / demand.rivals[draw.hunt] << " e" << draw.hunt << " <= 0\n";
            elsewhere[draw.hunt] += " + " + share;
        }
    }
    lp << "Subject To\n" << rows.str();
    for (std::size_t h = 0; h < elsewhere.size(); ++h) lp << " e" << h << elsewhere[h] << " = 1\n";
    const auto sum = [&](auto of_option, auto of_kind, double limit) {
        for (std::size_t j = 0; j < demand.options.size(); ++j)
            lp << " + " << of_option(demand.options[j]) << " x" << j;
        for (std::size_t k = 0; k < demand.kinds.size(); ++k) lp << " + " << of_kind(demand.kinds[k]) << " made" << k;
        lp << " <= " << limit << "\n";
    };
    sum([](const auto&) { return 1.0; }, [](const auto&) { return 0.0; }, limits.max_traps);
    if (limits.outlay > 0) {
        sum([](const auto& o) { return o.outlay; }, [](const auto& k) { return k.outlay; }, limits.outlay);
    }
    for (std::size_t k = 0; k < demand.kinds.size(); ++k) {
        for (std::size_t j = 0; j < demand.options.size(); ++j) {
            if (demand.options[j].kind == k) lp << " + x" << j;
        }
        lp << " - made" << k << " <= " << demand.kinds[k].owned << "\n";
    }
    for (std::size_t j = 0; j + 1 < demand.options.size(); j += 2) lp << " x" << j << " + x" << j + 1 << " <= 1\n";
    lp << "Binary\n";
    for (std::size_t j = 0; j < demand.options.size(); ++j) lp << " x" << j << "\n";
    lp << "End\n";
    return lp.str();
}

/// Maximal covering written out (Church and ReVelle 1974): point i counts where a chosen site reaches it.
inline std::string covering_written_out(const Demand& demand, int sites) {
    std::vector<std::string> reach(demand.rivals.size());
    std::vector<double> weight(demand.rivals.size(), 0);
    for (std::size_t j = 0; j < demand.options.size(); ++j) {
        for (const Draw& draw : demand.options[j].draws) {
            reach[draw.hunt] += " - x" + std::to_string(j);
            weight[draw.hunt] = draw.worth;
        }
    }
    std::ostringstream lp;
    lp << "Maximize\n covered:";
    for (std::size_t h = 0; h < reach.size(); ++h) lp << " + " << weight[h] << " y" << h << "\n";
    lp << "Subject To\n";
    for (std::size_t h = 0; h < reach.size(); ++h) lp << " y" << h << reach[h] << " <= 0\n";
    for (std::size_t j = 0; j < demand.options.size(); ++j) lp << " + x" << j << "\n";
    lp << " <= " << sites << "\nBounds\n";
    for (std::size_t h = 0; h < reach.size(); ++h) lp << " y" << h << " <= 1\n";
    lp << "Binary\n";
    for (std::size_t j = 0; j < demand.options.size(); ++j) lp << " x" << j << "\n";
    lp << "End\n";
    return lp.str();
}

}  // namespace maybough::test
