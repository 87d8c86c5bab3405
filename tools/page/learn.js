// The learn page: beliefs before and after a catch log. All figures are the results' own.
"use strict";

function showNextYear(data) {
  const rows = [["before the log", data.next.before], ["after the log", data.next.after], ["as the plan will see it", data.next.overlay]];
  byId("next").append(table(["|", "swarms expected", "8 in 10", "a season without any", "two or more"],
    rows.map(([name, odds]) => [name, figure(odds.mean, 2), figure(odds.mean_low, 2) + " to " + figure(odds.mean_high, 2), share(odds.odds_none), share(odds.odds_at_least_2)])));
}

function showPlaces(data) {
  barChart("traps-chart", "Swarms expected and swarms that came, by place", data.traps.map((_, i) => String(i + 1)), data.traps.map((trap) => trap.before),
    { unit: "swarms", marks: data.traps.map((trap) => trap.swarms), marksAre: "came", valuesAre: "expected before" });
  byId("traps").append(table(["", "place|", "years", "came", "expected before", "expected now", "so few or fewer", "so many or more"],
    data.traps.map((trap, i) => [String(i + 1), trap.spot_name, String(trap.years), String(trap.swarms), figure(trap.before, 2), figure(trap.after, 2), share(trap.odds_so_few), share(trap.odds_so_many)])));
  byId("years").append(table(["year|", "traps", "came", "expected before", "expected now", "weather|"],
    data.years.map((year) => [String(year.year), String(year.traps), String(year.swarms), figure(year.before, 2), figure(year.after, 2), year.weather_known ? "that year’s" : "generated"])));
}

/** Before and after on one strip; logarithmic where the belief before spans more than threefold. */
function beliefStrip(unknown) {
  const { prior, posterior } = unknown;
  const bend = prior.low > 0 && posterior.low > 0 && prior.high > 3 * prior.low ? Math.log : (value) => value;
  const [low, high] = [Math.min(prior.low, posterior.low), Math.max(prior.high, posterior.high)].map(bend);
  const at = (value) => 2 + (96 * (bend(value) - low)) / (high - low || 1);
  return make("svg", { class: "strip", "aria-hidden": "true" },
    make("rect", { class: "before", x: at(prior.low) + "%", y: 3, width: at(prior.high) - at(prior.low) + "%", height: 18 }),
    make("line", { class: "zero", x1: at(prior.median) + "%", x2: at(prior.median) + "%", y1: 3, y2: 21 }),
    make("line", { class: "span", x1: at(posterior.low) + "%", x2: at(posterior.high) + "%", y1: 12, y2: 12 }),
    make("circle", { class: "point", cx: at(posterior.median) + "%", cy: 12, r: 6 }));
}

function showBeliefs(data) {
  const range = (belief) => three(belief.median) + " (" + three(belief.low) + " to " + three(belief.high) + ")";
  byId("unknowns").append(...data.unknowns.map((unknown) => make("div", { class: "interval" },
    make("span", {}, unknown.meaning || unknown.key, make("small", {}, " " + unknown.key + (unknown.unit && unknown.unit !== "1" ? ", " + unknown.unit : ""))), beliefStrip(unknown),
    make("span", { class: "told" }, unknown.taught ? "was " + range(unknown.prior) + ", is " + range(unknown.posterior) : "is as it was, " + range(unknown.prior)))));
  byId("unknowns").dataset.marks = String(data.unknowns.length);
}

(function show() {
  const data = pageData();
  const { totals, next } = data;
  figures([
    ["Swarms in the log", String(totals.swarms), "in " + totals.trap_years + " seasons of single traps"],
    ["Expected before", figure(totals.before, 1), "by the model"],
    ["Next year before", figure(next.before.mean, 2), "swarms expected"],
    ["Next year now", figure(next.after.mean, 2), figure(next.after.mean_low, 2) + " to " + figure(next.after.mean_high, 2)],
    ["Without any", share(next.after.odds_none), "odds of a season"],
  ]);
  showNextYear(data);
  showPlaces(data);
  showBeliefs(data);
  landMap(data.map, data.traps.filter((trap) => trap.latitude_deg !== undefined).map((trap) => ({ ...trap, text: String(data.traps.indexOf(trap) + 1), label: "Place " + (data.traps.indexOf(trap) + 1) + ", " + trap.spot_name,
    lines: [trap.swarms + " came in " + trap.years + " years", figure(trap.before, 2) + " expected before the log"] })), "place in the log, numbered as above");
  list("notes", data.notes);
  endPage(data);
})();
