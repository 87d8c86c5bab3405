// Trials: several placements lived through on the same seasons by the full agent model; their numbers as tables.
#pragma once

#include <cstdint>
#include <memory>
#include <vector>

#include "planner/record.hpp"

namespace maybough::planner {

/// One placement in one season.
struct Outcome {
    double catches = 0;
    double value = 0;
    double cost = 0;
    double hours = 0;  ///< of the keeper, taking swarms included
    double net() const { return value - cost; }
};

/// Where and when each catch of the followed placement fell, for one season.
struct FollowedCatch {
    std::size_t trap = 0;
    int day = 0;
};

/// Placements by seasons.
struct Trials {
    std::uint32_t first_season = 0;
    std::vector<std::vector<Outcome>> outcomes;        ///< [placement][season]
    std::vector<std::vector<FollowedCatch>> followed;  ///< [season], of the placement asked for
    std::vector<std::vector<int>> swarm_days;          ///< [season], swarms hung in the area
    std::vector<std::vector<Point>> swarm_places;      ///< [season], where they hung
    std::vector<SwarmCase> situations;                 ///< where asked for: each season's swarms, for the surrogate
    std::int64_t asked = 0;
    std::int64_t run = 0;

    /// Seasons that all placements lived through; any of them may have gone on.
    std::size_t seasons() const;
    /// One number of one placement in all its seasons.
    std::vector<double> long_column(std::size_t placement, double (*of)(const Outcome&)) const;
    /// The placement that lived through most seasons; the first of them where several did.
    std::size_t longest() const;
    /// One number of one placement, season by season, in the seasons of all.
    std::vector<double> column(std::size_t placement, double (*of)(const Outcome&)) const;
    /// The same less that of another placement in the same season.
    std::vector<double> difference(std::size_t placement, std::size_t other, double (*of)(const Outcome&)) const;
};

double catches_in(const Outcome& outcome);
double value_in(const Outcome& outcome);
double cost_in(const Outcome& outcome);
double net_in(const Outcome& outcome);
double hours_in(const Outcome& outcome);

/// Mean of what was measured in the first seasons of a run that went on: `longer`, measured in all of them on the
/// placement that went on, corrects for the luck of the first ones (a regression estimate, a control variate). It is
/// linear in `own`, so that lengthened differences are the differences of lengthened means.
Estimate lengthened(const std::vector<double>& own, const std::vector<double>& longer);

/// What the placements of one replicate share: raised once, hunts remembered.
struct Replicate {
    Parameters parameters;
    Backdrop backdrop;
    HuntMemo memo;
};

/// Replicates kept from one set of trials to the next: those of `most` seasons from `first` on. Each is touched by one
/// thread at a time. About half a megabyte each.
class KeptReplicates {
  public:
    KeptReplicates(std::uint32_t first, std::uint32_t most) : first_(first), kept_(most) {}
    /// Where the replicate of this season is kept, empty at first; null where it is not to be.
    std::unique_ptr<Replicate>* place(std::uint32_t season) {
        const std::uint32_t index = season - first_;
        return season >= first_ && index < kept_.size() ? &kept_[index] : nullptr;
    }

  private:
    std::uint32_t first_;
    std::vector<std::unique_ptr<Replicate>> kept_;
};

/// Lives through `count` seasons from `first` under each placement: one backdrop and one memo a season, from `kept` and
/// left there where given. `follow` names the placement whose single catches are kept; `weights`, where given, asks for
/// the swarms' situations under it.
Trials run_trials(const Scenario& scenario, const std::vector<Placement>& placements, std::size_t follow,
                  std::uint32_t first, std::uint32_t count, const Effort& effort, const Progress& progress,
                  const ChoiceWeights* weights = nullptr, KeptReplicates* kept = nullptr);

/// At least this many seasons in whole blocks of beliefs, two blocks at least.
std::uint32_t whole_blocks(double seasons);

/// Mean of the worst tenth of `values` (at least one of them).
double worst_tenth(std::vector<double> values);

/// [k-1] = share of seasons with a count of at least k, up to the largest k that occurs, at most `most`.
std::vector<SeasonShare> odds_at_least(const std::vector<double>& counts, int most = 20);

/// Progress over several stages as one count.
class Stages {
  public:
    Stages(const Progress& outside, std::uint32_t total) : outside_(outside), total_(total) {}
    /// What a stage of `steps` steps reports to; the next stage goes on behind it.
    Progress stage(std::uint32_t steps);

  private:
    const Progress& outside_;
    std::uint32_t total_;
    std::uint32_t before_ = 0;
};

}  // namespace maybough::planner
