// The compare page: paired differences with intervals, and every placement on one map. All figures are the results' own.
"use strict";

/** One pin a spot, with the letters of all placements that use it. */
function pinsOf(placements) {
  const spots = new Map();
  for (const placement of placements) {
    for (const trap of placement.traps) {
      if (!spots.has(trap.spot)) spots.set(trap.spot, { ...trap, letters: [], lines: [] });
      const spot = spots.get(trap.spot);
      spot.letters.push(placement.letter);
      spot.lines.push(placement.letter + ": trap " + trap.number + ", " + trap.kind_name + ", " + height(trap.height_m) + ", entrance " + compass(trap.facing_deg));
    }
  }
  return [...spots.values()].map((spot) => {
    const letters = [...new Set(spot.letters)].join("");
    return { ...spot, text: letters, label: letters + ": " + spot.spot_name };
  });
}

function showAgainst(data) {
  const [first, ...others] = data.placements;
  byId("first").textContent = "The first is " + first.letter + ", " + first.name + ".";
  const money = data.scenario.currency;
  const row = (side, less, decimals) => ({ name: side.letter + " " + side.name, mean: less.mean, low: less.low_95, high: less.high_95,
    text: (less.mean > 0 ? "+" : "") + figure(less.mean, decimals) + " (" + figure(less.mean - less.half_width_95, decimals) + " to " + figure(less.mean + less.half_width_95, decimals) + ")" });
  intervalRows("net-against", others.map((side) => row(side, side.net_less_first, 0)), money + " a season; the upright line is no difference.");
  intervalRows("catches-against", others.map((side) => row(side, side.catches_less_first, 2)), "swarms a season; the upright line is no difference.");
}

function showSides(data) {
  const money = data.scenario.currency;
  byId("sides").append(table(["", "placement|", "traps", "swarms", "against first", "8 of 10", "cost, " + money, "net, " + money, "against first", "better in"],
    data.placements.map((side, i) => [side.letter, side.name, String(side.traps.length), plusMinus(side.catches, 2), i ? plusMinus(side.catches_less_first, 2) : "",
      figure(side.catches.quantile_10, 0) + " to " + figure(side.catches.quantile_90, 0), figure(side.cost.mean, 0), plusMinus(side.net, 0),
      i ? plusMinus(side.net_less_first, 0) : "", i ? share(side.odds_better_than_first) : ""])));
  barChart("sides-chart", "Swarms a season of each placement", data.placements.map((side) => side.letter), data.placements.map((side) => side.catches.mean),
    { unit: "swarms a season", marks: data.placements.map((side) => side.catches.quantile_90), marksAre: "one season in ten reaches this", valuesAre: "mean" });
  byId("placements").append(...data.placements.map((side) => make("p", {}, make("b", {}, side.letter + " " + side.name + ": "),
    side.traps.map((trap) => trap.spot_name).join("; ") || "no traps")));
}

(function show() {
  const data = pageData();
  const best = data.placements.reduce((a, b) => (b.net.mean > a.net.mean ? b : a));
  const money = data.scenario.currency;
  figures([
    ["Placements", String(data.placements.length), best.net.seasons + " seasons each"],
    ["Most net value", best.letter, best.name],
    ["Its net value", money + " " + figure(best.net.mean, 0), "± " + figure(best.net.standard_error, 0) + " a season"],
    ["Its swarms", figure(best.catches.mean, 2), tenSeasons(best.catches)],
    ["Its cost", money + " " + figure(best.cost.mean, 0), "a season"],
  ]);
  showAgainst(data);
  showSides(data);
  landMap(data.map, pinsOf(data.placements), "spot in use, with its placements’ letters");
  endPage(data);
})();
