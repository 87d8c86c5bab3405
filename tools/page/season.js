// The season page: what the traps as set catch over many seasons. All figures are the results' own.
"use strict";

function showSeasonFigures(data, fates) {
  const money = data.scenario.currency;
  figures([
    ["Traps", String(data.traps.length), "as set"],
    ["Swarms a season", figure(fates.catches.mean, 2), tenSeasons(fates.catches)],
    ["Seasons without any", share(data.share_of_seasons_with[0]), "of " + fates.catches.seasons + " simulated"],
    ["Net value a season", money + " " + figure(fates.net.mean, 0), "± " + figure(fates.net.standard_error, 0)],
    ["Cost a season", money + " " + figure(fates.cost.mean, 0), "traps, lures, hours, drives"],
    ["Swarms in the area", figure(fates.swarms_in_area.mean, 1), tenSeasons(fates.swarms_in_area)],
  ]);
}

function showEachTrap(data) {
  if (data.traps.length === 0) {
    byId("by-trap").append(make("p", {}, "No traps are set."));
    byId("by-trap").dataset.marks = "0";
    return;
  }
  intervalRows("by-trap", data.traps.map((trap) => ({ name: trap.number + " " + trap.spot_name, mean: trap.catches.mean,
    low: trap.catches.low_95, high: trap.catches.high_95, text: plusMinus(trap.catches, 2) + " a season" })), "swarms a season; bars are 95 % intervals of the mean.");
  byId("settings").append(table(["trap", "spot|", "kind|", "height", "faces", "hung", "down", "visit every"],
    data.traps.map((trap) => [String(trap.number), trap.spot_name, trap.kind_name, height(trap.height_m), compass(trap.facing_deg),
      shown(date(trap.hang)), shown(date(trap.take_down)), trap.visit_every_days + " d"])));
}

function showFates(data) {
  const whole = (row) => (row.decimals === 2 ? 0 : row.decimals);
  byId("fates").append(table(["a season|", "mean", "8 seasons of 10", "chance", "ignorance"], data.fates.map((row) => [row.what,
    plusMinus(row.estimate, row.decimals), figure(row.estimate.quantile_10, whole(row)) + " to " + figure(row.estimate.quantile_90, whole(row)),
    figure(row.estimate.sd_chance, row.decimals), figure(row.estimate.sd_ignorance, row.decimals)])));
}

(function show() {
  const data = pageData();
  const fates = Object.fromEntries(data.fates.map((row) => [row.key, row.estimate]));
  showSeasonFigures(data, fates);
  const shares = data.share_of_seasons_with;
  barChart("spread-chart", "Share of seasons by number of swarms caught", shares.map((_, k) => String(k)), shares.map((v) => 100 * v), { unit: "% of seasons" });
  for (const odds of data.odds_at_least) {
    if (odds.share_of_seasons >= 0.005) byId("odds").append(oddsBar("at least " + odds.swarms, odds));
  }
  byId("chance").textContent = data.chance;
  yearChart("season-chart", data.calendar, data.traps.length > 0);
  landMap(data.map, data.traps.map((trap) => ({ ...trap, text: String(trap.number), label: "Trap " + trap.number + ", " + trap.spot_name,
    lines: [trap.kind_name + ", " + height(trap.height_m) + ", entrance " + compass(trap.facing_deg), plusMinus(trap.catches, 2) + " swarms a season"] })), "trap, numbered as below");
  byId("from").textContent = data.where_from;
  showEachTrap(data);
  showFates(data);
  endPage(data);
})();
