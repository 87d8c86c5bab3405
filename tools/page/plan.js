// The plan page: fills the sections from the plan in the page. All figures are the plan's own.
"use strict";

function showFigures(plan, best) {
  const money = plan.scenario.currency;
  const entries = [
    ["Traps", String(best.traps), "the seasons allow " + plan.recommended_low + " to " + plan.recommended_high],
    ["Swarms a season", figure(best.catches.mean, 1), "8 seasons of 10: " + figure(best.catches.quantile_10, 0) + " to " + figure(best.catches.quantile_90, 0)],
    ["Net value a season", money + " " + figure(best.net.mean, 0), "± " + figure(best.net.standard_error, 0)],
    ["Cost a season", money + " " + figure(best.cost.mean, 0), "traps, lures, hours, drives"],
    ["To spend before", money + " " + figure(best.outlay, 0), "before the season"],
    ["Your work", figure(best.hours, 0) + " h", "a season"],
  ];
  figures(entries);
}

const pinOf = (trap) => ({
  ...trap, text: String(trap.number), label: "Trap " + trap.number + ", " + trap.spot_name,
  lines: [trap.kind_name + ", " + height(trap.height_m) + ", entrance " + compass(trap.facing_deg), plusMinus(trap.catches, 2) + " swarms a season"],
});

function showTraps(plan, drawn) {
  plan.traps.forEach((trap, i) => {
    const seen = make("button", { type: "button", class: "screen" }, "Show on the map");
    seen.addEventListener("click", () => {
      drawn.map.setView(drawn.pins[i].getLatLng(), Math.max(drawn.map.getZoom(), 15), { animate: false });
      drawn.pins[i].openPopup();
      byId("map").scrollIntoView({ block: "nearest" });
    });
    byId("cards").append(make("li", {},
      make("h3", {}, make("span", { class: "pin" }, String(trap.number)), make("span", {}, trap.spot_name)),
      make("p", {}, trap.kind_name + ", " + height(trap.height_m) + " up, entrance " + compass(trap.facing_deg) + (trap.lured ? ", lured" : ", no lure")),
      make("p", {}, "Hang by " + shown(date(trap.hang)) + ", visit every " + trap.visit_every_days + " days, take down " + shown(date(trap.take_down))),
      make("p", { class: "worth" }, plusMinus(trap.catches, 2) + " swarms a season; " + plusMinus(trap.lost_without, 2) + " lost without it. " +
        (trap.next_spot === null ? "No spot is left to move it to." : "Were it refused, " + trap.next_spot_name + " loses " + plusMinus(trap.lost_at_next_spot, 2) + ".")),
      seen));
  });
  const money = plan.scenario.currency;
  byId("kinds").append(table(["kind|", "used", "to build", "material, " + money, "hours to build"],
    plan.kinds.map((kind) => [kind.name, String(kind.used), String(kind.to_build), figure(kind.material, 0), figure(kind.build_hours, 1)])));
}

function showCurve(plan) {
  const money = plan.scenario.currency;
  const curve = plan.curve;
  byId("curve").append(table(["traps", "swarms", "one more adds", "8 of 10", "cost, " + money, "adds", "net, " + money, "one more adds", "spend before, " + money],
    curve.map((point, k) => [String(point.traps), plusMinus(point.catches, 2), k ? plusMinus(point.marginal_catches, 2) : "",
      figure(point.catches.quantile_10, 0) + " to " + figure(point.catches.quantile_90, 0), figure(point.cost.mean, 0),
      k ? figure(point.cost.mean - curve[k - 1].cost.mean, 0) : "", plusMinus(point.net, 0), k ? plusMinus(point.marginal_net, 0) : "", figure(point.outlay, 0)]),
    (k) => (curve[k].traps === plan.recommended_traps ? "best" : k >= plan.recommended_low && k <= plan.recommended_high ? "tied" : "")));
  byId("why").textContent = plan.prose.why;
  const traps = curve.map((point) => point.traps);
  const off = (name, side) => curve.map((point) => (side === 0 ? point[name].mean : side < 0 ? point[name].low_95 : point[name].high_95));
  const best = curve.map((point) => (point.traps === plan.recommended_traps ? point.catches.mean : null));
  const line = (label, name) => ({ label, stroke: colour(name), width: 2, points: { show: true, size: 7, fill: colour(name) }, value: (u, v) => figure(v, name === "money" ? 0 : 2) });
  const ring = () => ({ label: "recommended", stroke: colour("mark"), width: 0, points: { show: true, size: 14, stroke: colour("mark"), width: 3, fill: "transparent" }, value: (u, v) => (v === null ? "" : "here") });
  const whole = (u, splits) => splits.map((v) => (Number.isInteger(v) ? String(v) : ""));
  const scales = { x: { time: false, range: [-0.3, traps[traps.length - 1] + 0.3] } };
  const step = { incrs: [1, 2, 5, 10, 20, 50] };
  chart("catch-chart", "Swarms a season against number of traps",
    [traps, curve.map((p) => p.catches.quantile_90), curve.map((p) => p.catches.quantile_10), off("catches", 1), off("catches", -1), off("catches", 0), best],
    (axis) => ({ scales, legend: { show: false }, axes: [{ ...axis, ...step, values: whole, label: "traps", labelSize: 18, size: 34 }, { ...axis, label: "swarms a season", labelSize: 22, size: 40 }],
      series: [{}, unseen, unseen, unseen, unseen, line("swarms", "catch"), ring()],
      bands: [{ series: [1, 2], fill: colour("catch-faint") }, { series: [3, 4], fill: colour("catch-pale") }] }));
  chart("net-chart", "Net value a season against number of traps",
    [traps, off("net", 1), off("net", -1), off("net", 0), curve.map((p) => (p.traps === plan.recommended_traps ? p.net.mean : null))],
    (axis) => ({ scales, legend: { show: false }, axes: [{ ...axis, ...step, values: whole, label: "traps", labelSize: 18, size: 34 }, { ...axis, label: "net, " + money, labelSize: 22, size: 55 }],
      series: [{}, unseen, unseen, line("net", "money"), ring()], bands: [{ series: [1, 2], fill: colour("money-pale") }] }));
}

function showSeason(plan) {
  yearChart("season-chart", plan.calendar);
  if (plan.work.length === 0) {
    byId("work").previousElementSibling.remove();
    byId("work").remove();
    return;
  }
  byId("work").append(table(["day|", "work|"], plan.work.map((day) => [shown(date(day.date)), day.work])));
}

function showOdds(plan, best) {
  for (const odds of best.odds_at_least) {
    if (odds.share_of_seasons < 0.005) continue;
    byId("odds").append(oddsBar("at least " + odds.swarms, odds));
  }
  byId("worst").textContent = "In the worst tenth of seasons " + figure(best.worst_tenth_catches, 1) + " swarms on average.";
}

function showUnknowns(plan, best) {
  byId("chance").textContent = plan.prose.chance;
  const most = 1.05 * Math.max(best.catches.mean, ...plan.sensitivities.flatMap((s) => [s.catches_at_low, s.catches_at_high]), 0.001);
  const at = (value) => (1000 * value) / most;
  plan.sensitivities.forEach((unknown, i) => {
    const [low, high] = [unknown.catches_at_low, unknown.catches_at_high].sort((a, b) => a - b);
    const bar = make("svg", { viewBox: "0 0 1000 24", preserveAspectRatio: "none", "aria-hidden": "true" },
      make("line", { class: "axis", x1: 0, x2: 1000, y1: 12, y2: 12 }),
      make("rect", { class: "span", x: at(low), y: 5, width: Math.max(2, at(high) - at(low)), height: 14 }),
      make("line", { class: "here", x1: at(best.catches.mean), x2: at(best.catches.mean), y1: 0, y2: 24 }));
    byId("unknowns").append(make("div", { class: "range" }, make("div", {}, plan.prose.unknowns[i]), bar));
  });
}

// What a plan without traps has nothing to fill with leaves the page: no empty table stands there.
const leave = (...ids) => ids.forEach((id) => byId(id).closest("section").remove());

(function show() {
  const plan = pageData();
  const best = plan.curve.find((point) => point.traps === plan.recommended_traps);
  const hangs = plan.traps.length > 0;
  const tried = plan.curve.length > 1;
  showFigures(plan, best);
  const drawn = landMap(plan.map, plan.traps.map(pinOf), hangs ? "trap, numbered as below" : undefined);
  if (hangs) {
    showTraps(plan, drawn);
    showOdds(plan, best);
  } else {
    leave("cards", "odds");
  }
  if (tried) {
    showCurve(plan);
    showUnknowns(plan, best);
    list("others", plan.prose.others);
    list("search", plan.prose.search);
  } else {
    leave("curve", "unknowns", "search");
  }
  showSeason(plan);
  endPage({ ...plan, reproduction: plan.prose.reproduction });
})();
