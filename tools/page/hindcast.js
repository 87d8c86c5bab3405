// The hindcast page: how good forecasts of past years would have been. All figures are the hindcast's own.
"use strict";

const strokes = ["catch", "money", "ink"];
const dashes = [[], [8, 4], [2, 3]];

/** Scores by what is dated, each in order of issue. */
function byDate(data) {
  const dated = new Map();
  for (const score of data.scores) dated.set(score.what, [...(dated.get(score.what) ?? []), score]);
  return dated;
}

function lines(id, label, issues, series, unit, extra = {}) {
  const places = issues.map((_, i) => i);
  chart(id, label, [places, ...series.map((one) => one.values)], (axis) => ({
    legend: { show: true, live: false },
    scales: { x: { time: false, range: [-0.3, issues.length - 0.7] }, ...(extra.y ? { y: extra.y } : {}) },
    axes: [{ ...axis, incrs: [1, 2, 4], values: (u, splits) => splits.map((v) => issues[v] ?? "") }, { ...axis, label: unit, labelSize: 22, size: 52 }],
    series: [{}, ...series.map((one) => ({ label: one.name, stroke: colour(one.stroke), width: one.width ?? 2, dash: one.dash ?? [], points: { show: one.dots ?? true, size: 6, fill: colour(one.stroke) } }))] }));
}

function showScores(data) {
  const dated = byDate(data);
  const issues = [...dated.values()][0].map((score) => score.issued);
  const each = (of) => [...dated].map(([what, scores], i) => ({ name: what, values: scores.map(of), stroke: strokes[i % 3], dash: dashes[i % 3] }));
  lines("skill-chart", "Skill of forecasts by day of issue", issues,
    [...each((s) => s.skill), { name: "no better than normal", values: issues.map(() => 0), stroke: "soft", dash: [3, 5], dots: false }], "skill");
  const first = [...dated.values()][0];
  lines("crps-chart", "Mean miss of forecasts by day of issue", issues,
    [...each((s) => s.crps_days), { name: "normal calendar", values: first.map((s) => s.crps_normal_days), stroke: "soft", width: 0 }], "days");
  lines("coverage-chart", "Share of truths within the 80 % interval by day of issue", issues,
    [...each((s) => 100 * s.coverage_80), { name: "should hold", values: issues.map(() => 80), stroke: "soft", dash: [3, 5], dots: false }], "%", { y: { range: [0, 100] } });
  byId("ranks").append(...[...dated.keys()].map((what, i) =>
    make("figure", {}, make("div", { id: "ranks-" + i, class: "chart" }), make("figcaption", {}, what + ", all days of issue together"))));
  [...dated].forEach(([what, scores], i) => {
    const id = "ranks-" + i;
    const mean = scores[0].ranks.map((_, c) => scores.reduce((sum, s) => sum + 100 * s.ranks[c], 0) / scores.length);
    barChart(id, "Rank of the truth among members: " + what, mean.map((_, c) => 10 * (c + 1) + ""), mean, { unit: "% of truths" });
  });
  byId("scores").append(table(["forecast of|", "issued|", "cases", "CRPS, days", "normal", "skill", "bias, days", "80 % width", "80 % holds"],
    data.scores.map((s) => [s.what, s.issued, String(s.truths), figure(s.crps_days, 2), figure(s.crps_normal_days, 2), figure(s.skill, 2) + " ± " + figure(s.skill_se, 2),
      figure(s.bias_days, 1), figure(s.width_days, 1), share(s.coverage_80)])));
}

function showObserved(data) {
  if (data.observed.length === 0) {
    byId("observed-note").textContent = "None were given. With --observed FILE (year,first_swarm) the forecasts are scored against your own dates too.";
    return;
  }
  byId("observed").append(table(["issued|", "years", "CRPS, days", "normal", "own dates", "skill", "against own dates", "model less seen, days"],
    data.observed.map((s) => [s.issued, String(s.years), figure(s.crps_days, 2), figure(s.crps_normal_days, 2), figure(s.crps_record_days, 2),
      figure(s.skill, 2) + " ± " + figure(s.skill_se, 2), figure(s.skill_record, 2), figure(s.bias_days, 1)])));
  byId("observed-note").textContent = "A club does not see every swarm, so forecasts are shifted by the mean difference of the other years before they are scored.";
}

(function show() {
  const data = pageData();
  const first = [...byDate(data).values()][0];
  const best = first.reduce((a, b) => (b.skill > a.skill ? b : a));
  const all = data.scores;
  figures([
    ["Years", String(data.years.length), data.years[0] + " to " + data.years[data.years.length - 1]],
    ["Best skill, first swarm", figure(best.skill, 2), "± " + figure(best.skill_se, 2) + ", issued " + best.issued],
    ["Mean miss then", figure(best.crps_days, 1) + " d", "normal calendar " + figure(best.crps_normal_days, 1) + " d"],
    ["80 % holds", share(all.reduce((sum, s) => sum + s.coverage_80, 0) / all.length), "mean of all dates and issues"],
  ]);
  showScores(data);
  showObserved(data);
  list("notes", data.notes);
  endPage(data);
})();
