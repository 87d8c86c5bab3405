// Charts that the pages share, in the page's own colours; drawn by uPlot, or as plain SVG where a strip is enough.
"use strict";

/** Draws a chart now, and again when width or colours change. `options(axis)` gives uPlot's own, from the look of an axis. */
function chart(id, label, data, options) {
  const place = byId(id);
  place.setAttribute("role", "img");
  place.setAttribute("aria-label", label);
  let plot = null;
  const draw = () => {
    if (plot) plot.destroy();
    const width = Math.max(240, place.clientWidth - 14);
    const axis = { stroke: colour("ink"), grid: { stroke: colour("line"), width: 1 }, ticks: { stroke: colour("line") }, font: "13px system-ui", labelFont: "13px system-ui" };
    const wanted = options(axis);
    // In the legend a series' mark is a piece of its line: dashed where the line is, so that colour is not all.
    if (wanted.legend?.show) wanted.legend = { ...wanted.legend, markers: { width: 3, dash: (u, i) => (u.series[i].dash?.length ? "dashed" : "solid") } };
    plot = new uPlot({ width, height: 250, cursor: { drag: { x: false, y: false } }, ...wanted }, data, place);
    place.dataset.marks = String(data.slice(1).reduce((sum, series) => sum + series.filter((v) => v !== null).length, 0));
  };
  drawings.push(draw);
  draw();
}


/** Axis of days: `seconds` for uPlot of ISO days, and the look of the axis. */
const seconds = (isoDay) => date(isoDay).getTime() / 1000;
const dayScale = { tzDate: (stamp) => uPlot.tzDate(new Date(stamp * 1000), "Etc/UTC") };
const dayAxis = (axis) => ({ ...axis, values: (u, splits) => splits.map((stamp) => shown(new Date(stamp * 1000))), space: 70 });

/** A series that only bounds a band. */
const unseen = { show: true, stroke: "transparent", points: { show: false } };

/** Swarms and catches a week over the year, from the means of each day. */
function yearChart(id, calendar, withCatches = true) {
  const start = date(calendar.first_day);
  const week = (days) => days.map((_, i) => days.slice(Math.max(0, i - 3), i + 4).reduce((sum, v) => sum + v, 0));
  const swarms = week(calendar.swarms_per_day);
  const stamps = swarms.map((_, i) => dayAfter(start, i).getTime() / 1000);
  const data = withCatches ? [stamps, swarms, week(calendar.catches_per_day)] : [stamps, swarms];
  chart(id, withCatches ? "Swarms and catches a week over the year" : "Swarms a week over the year", data, (axis) => ({
    ...dayScale, legend: { show: true, live: false },
    axes: [dayAxis(axis), { ...axis, label: "a week", labelSize: 22, size: 44 }],
    series: [{}, { label: "hang in the area", stroke: colour("catch"), width: 2, fill: colour("catch-faint") },
      { label: "caught", stroke: colour("money"), width: 2, dash: [7, 4] }].slice(0, data.length) }));
}

/** Upright bars over named places: `values` of the first series, and of a second that stands as a short line. */
function barChart(id, label, names, values, { unit, marks = null, marksAre = "", valuesAre = "" }) {
  const places = names.map((_, i) => i);
  const bars = uPlot.paths.bars({ size: [0.7, 60] });
  const top = Math.max(...values, ...(marks ?? [0]));
  chart(id, label, marks ? [places, values, marks] : [places, values], (axis) => ({
    legend: { show: Boolean(marks), live: false },
    scales: { x: { time: false, range: [-0.6, names.length - 0.4] }, y: { range: [0, top > 0 ? 1.08 * top : 1] } },
    axes: [{ ...axis, grid: { show: false }, incrs: [1, 2, 5, 10, 20, 50], values: (u, splits) => splits.map((v) => names[v] ?? "") },
      { ...axis, label: unit, labelSize: 22, size: 52 }],
    series: [{}, { label: valuesAre, stroke: colour("catch"), fill: colour("catch-pale"), width: 2, paths: bars, points: { show: false } },
      ...(marks ? [{ label: marksAre, stroke: colour("money"), width: 0, points: { show: true, size: 9, fill: colour("money") } }] : [])] }));
}

/** A row of odds: name, bar, share. */
function oddsBar(name, odds) {
  return make("div", { class: "bar" }, make("span", {}, name), make("progress", { max: "1", value: String(odds.share_of_seasons), "aria-label": name }), make("span", {}, shareWords(odds)));
}

/** Rows with an interval each on one scale, a line at zero: [{ name, mean, low, high, text }]; `words` end the line below. */
function intervalRows(id, rows, words) {
  const low = Math.min(0, ...rows.map((row) => row.low));
  const high = Math.max(0, ...rows.map((row) => row.high));
  const span = high - low || 1;
  const at = (value) => 2 + (96 * (value - low)) / span + "%";
  const strip = (row) => make("svg", { class: "strip", "aria-hidden": "true" },
    make("line", { class: "axis", x1: "0", x2: "100%", y1: 12, y2: 12 }),
    make("line", { class: "zero", x1: at(0), x2: at(0), y1: 0, y2: 24 }),
    make("line", { class: "span", x1: at(row.low), x2: at(row.high), y1: 12, y2: 12 }),
    make("circle", { class: "point", cx: at(row.mean), cy: 12, r: 6 }));
  byId(id).append(...rows.map((row) => make("div", { class: "interval" }, make("span", {}, row.name), strip(row), make("span", { class: "told" }, row.text))),
    make("p", { class: "scale" }, figure(low, Math.abs(span) < 10 ? 1 : 0) + " to " + figure(high, Math.abs(span) < 10 ? 1 : 0) + " " + words));
  byId(id).dataset.marks = String(rows.length);
}
