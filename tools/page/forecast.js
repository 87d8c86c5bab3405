// The forecast page: this year's swarm calendar with odds. All figures are the forecast's own.
"use strict";

/** The dates drawn as curves; the table has all. */
const drawn = [["first swarm", "catch", []], ["half of them", "money", [8, 4]], ["last swarm", "ink", [2, 3]]];

function showForecastFigures(data) {
  const [first, , half, peak, , last] = data.dates;
  const range = (row) => "8 in 10: " + shown(date(row.day_10)) + " to " + shown(date(row.day_90));
  const late = half.days_late;
  figures([
    ["First swarm", shown(date(first.day_50)), range(first)],
    ["Peak week", shown(date(peak.day_50)), range(peak)],
    ["Last swarm", shown(date(last.day_50)), range(last)],
    [late.mean < 0 ? "Days early" : "Days late", late.mean === null ? "n/a" : figure(Math.abs(late.mean), 1), "± " + figure(late.standard_error, 1) + " against normal years"],
    ["Swarms to come", figure(data.totals.to_come.mean, 1), tenSeasons(data.totals.to_come)],
    data.totals.catches_to_come ? ["Catches to come", figure(data.totals.catches_to_come.mean, 2), "with the traps as set"] : ["Season over", share(data.totals.odds_over), "odds"],
  ]);
}

function showNext(data) {
  const next = data.next;
  const names = next.map((day) => shown(date(day.date)));
  barChart("next-chart", "Odds of a swarm on each of the next days", names, next.map((day) => 100 * day.odds_swarm),
    { unit: "odds, %", marks: next.map((day) => 100 * day.odds_normal), marksAre: "normal years", valuesAre: "this year" });
  byId("next").append(table(["day|", "a swarm", "normal", "mean swarms", "fit for leaving", "warmest, °C", "rain, mm", "weather|"],
    next.map((day, i) => [names[i], share(day.odds_swarm), share(day.odds_normal), figure(day.swarms, 2), share(day.odds_fit),
      figure(day.tmax_c, 1), figure(day.rain_mm, 1), day.typed ? "as typed" : "simulated"])));
  if (next.some((day) => day.typed)) byId("typed").textContent = "Typed weather is taken as certain; the odds are for the swarms if it comes so.";
}

/** First and last day on which any date's odds are neither nothing nor certain, with a week about them. */
function daysThatMatter(data) {
  const moving = data.dates.flatMap((row) => row.odds_by_day.map((odds, day) => (odds > 0.005 && odds < 0.995 ? day : -1)).filter((day) => day >= 0));
  const days = data.dates[0].odds_by_day.length;
  if (moving.length === 0) return [0, days - 1];
  return [Math.max(0, Math.min(...moving) - 7), Math.min(days - 1, Math.max(...moving) + 7)];
}

function showDates(data) {
  const start = date(data.first_day);
  const [from, to] = daysThatMatter(data);
  const stamps = Array.from({ length: to - from + 1 }, (_, i) => dayAfter(start, from + i).getTime() / 1000);
  const today = seconds(data.today);
  const line = { hooks: { draw: (u) => {
    const x = u.valToPos(today, "x", true);
    if (x < u.bbox.left || x > u.bbox.left + u.bbox.width) return;
    u.ctx.save();
    u.ctx.strokeStyle = colour("mark");
    u.ctx.lineWidth = 2 * devicePixelRatio;
    u.ctx.setLineDash([]);
    u.ctx.beginPath();
    u.ctx.moveTo(x, u.bbox.top);
    u.ctx.lineTo(x, u.bbox.top + u.bbox.height);
    u.ctx.stroke();
    u.ctx.restore();
  } } };
  const curves = drawn.map(([what, stroke, dash]) => ({ stroke, dash, ...data.dates.find((row) => row.what === what) }));
  chart("dates-chart", "Odds that each date of the season has come, by day", [stamps, ...curves.map((row) => row.odds_by_day.slice(from, to + 1).map((v) => 100 * v))],
    (axis) => ({ ...dayScale, plugins: [line], legend: { show: true, live: false }, scales: { y: { range: [0, 100] } },
      axes: [dayAxis(axis), { ...axis, label: "odds, %", labelSize: 22, size: 48 }],
      series: [{}, ...curves.map((row) => ({ label: row.what, stroke: colour(row.stroke), width: 2, dash: row.dash, points: { show: false } }))] }));
  byId("dates").append(table(["come, with odds of|", "10 %", "50 %", "90 %", "is past", "normal 50 %", "days late", "odds of later"],
    data.dates.map((row) => [row.what, shown(date(row.day_10)), shown(date(row.day_50)), shown(date(row.day_90)), share(row.odds_past), shown(date(row.normal_day_50)),
      figure(row.days_late.mean, 1) + " ± " + figure(row.days_late.standard_error, 1), share(row.odds_later)])));
}

function showWeeks(data) {
  const told = data.weeks.filter((week) => week.swarms.mean >= 0.05 || week.normal.mean >= 0.05);
  const weeks = told.length ? told : data.weeks;
  const stamps = weeks.map((week) => seconds(week.monday));
  const caught = weeks.every((week) => week.catches);
  chart("weeks-chart", "Swarms a week in the area, this year and in normal years",
    [stamps, weeks.map((w) => w.swarms.quantile_90), weeks.map((w) => w.swarms.quantile_10), weeks.map((w) => w.swarms.mean), weeks.map((w) => w.normal.mean),
      ...(caught ? [weeks.map((w) => w.catches.mean)] : [])],
    (axis) => ({ ...dayScale, legend: { show: false }, axes: [dayAxis(axis), { ...axis, label: "swarms a week", labelSize: 22, size: 44 }],
      series: [{}, unseen, unseen, { stroke: colour("catch"), width: 2, points: { show: true, size: 6, fill: colour("catch") } },
        { stroke: colour("ink"), width: 2, dash: [7, 4], points: { show: false } }, ...(caught ? [{ stroke: colour("money"), width: 2, points: { show: true, size: 6, fill: colour("money") } }] : [])],
      bands: [{ series: [1, 2], fill: colour("catch-faint") }] }));
  byId("weeks-caption").textContent = "Swarms a week in the area this year; band: 8 seasons of 10; dashed: normal years" + (caught ? "; low line: caught by the traps as set." : ".");
  byId("weeks").append(table(["week from|", "swarms", "8 in 10", "normal", ...(caught ? ["catches"] : [])],
    weeks.map((week) => [shown(date(week.monday)), figure(week.swarms.mean, 1), figure(week.swarms.quantile_10, 0) + " to " + figure(week.swarms.quantile_90, 0),
      figure(week.normal.mean, 1), ...(caught ? [figure(week.catches.mean, 2)] : [])])));
}

(function show() {
  const data = pageData();
  showForecastFigures(data);
  byId("agenda").append(...data.agenda.map((item) => make("li", {}, make("time", { datetime: item.date }, shown(date(item.date))),
    make("span", {}, item.task + (item.overdue ? " (now past)" : "")), make("small", {}, item.reason))));
  showNext(data);
  showDates(data);
  showWeeks(data);
  list("weather", data.weather);
  landMap(data.map, data.traps.map((trap) => ({ ...trap, text: String(trap.number), label: "Trap " + trap.number + ", " + trap.spot_name,
    lines: [trap.kind_name + ", " + height(trap.height_m) + ", entrance " + compass(trap.facing_deg)] })), "trap as set");
  endPage(data);
})();
