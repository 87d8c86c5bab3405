// Small parts that the pages share: elements, figures, tables, charts in the page's own colours.
"use strict";

/** A new element with text and children; text is never read as markup. */
function make(tag, attributes = {}, ...children) {
  const svg = ["svg", "rect", "line", "text"].includes(tag);
  const element = svg ? document.createElementNS("http://www.w3.org/2000/svg", tag) : document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  element.append(...children);
  return element;
}

const byId = (id) => document.getElementById(id);
const colour = (name) => getComputedStyle(document.documentElement).getPropertyValue("--" + name).trim();
const figure = (value, decimals) => (value === null || value === undefined ? "n/a" : value.toFixed(decimals).replace(/^-(0\.?0*)$/, "$1"));
const share = (value) => (value > 0 && value < 0.01 ? "<1 %" : value > 0.99 && value < 1 ? ">99 %" : figure(100 * value, 0) + " %");
const plusMinus = (estimate, decimals) => figure(estimate.mean, decimals) + " ± " + figure(estimate.standard_error, decimals);
const points = ["N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE", "S", "SSW", "SW", "WSW", "W", "WNW", "NW", "NNW"];
const compass = (degrees) => points[Math.round((((degrees % 360) + 360) % 360) / 22.5) % 16];
const height = (metres) => figure(metres, 1) + " m (" + figure(metres / 0.3048, 0) + " ft)";
const date = (text) => new Date(text + "T00:00:00Z");
const dayAfter = (start, days) => new Date(start.getTime() + days * 86400000);
const shown = (day) => day.getUTCDate() + " " + day.toLocaleString("en", { month: "short", timeZone: "UTC" });

/** A table from column titles (those ending in "|" hold words) and rows of text; `kind(i)` names a row's class. */
function table(titles, rows, kind = () => "") {
  const words = titles.map((title) => title.endsWith("|"));
  const cell = (tag, text, i) => make(tag, words[i] ? { class: "word" } : {}, text);
  const head = make("tr", {}, ...titles.map((title, i) => cell("th", title.replace("|", ""), i)));
  for (const th of head.children) th.setAttribute("scope", "col");
  const body = rows.map((row, i) => make("tr", kind(i) ? { class: kind(i) } : {}, ...row.map((text, k) => cell("td", text, k))));
  return make("table", {}, make("thead", {}, head), make("tbody", {}, ...body));
}

const list = (id, lines) => byId(id).append(...lines.map((line) => make("li", {}, line)));

const drawings = [];
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
    plot = new uPlot({ width, height: 250, cursor: { drag: { x: false, y: false } }, ...wanted }, data, place);
    place.dataset.marks = String(data.slice(1).reduce((sum, series) => sum + series.filter((v) => v !== null).length, 0));
  };
  drawings.push(draw);
  draw();
}

function redrawAll() {
  for (const draw of drawings) draw();
}
let resizing = 0;
let lastWidth = window.innerWidth;
window.addEventListener("resize", () => {
  if (window.innerWidth === lastWidth) return;
  lastWidth = window.innerWidth;
  clearTimeout(resizing);
  resizing = setTimeout(redrawAll, 120);
});
matchMedia("(prefers-color-scheme: dark)").addEventListener("change", redrawAll);
window.addEventListener("beforeprint", () => {
  document.documentElement.dataset.theme = "light";
  document.documentElement.classList.add("printing");
  redrawAll();
});
window.addEventListener("afterprint", () => {
  delete document.documentElement.dataset.theme;
  document.documentElement.classList.remove("printing");
  redrawAll();
});
