// Small parts that all pages share: elements, figures, words, tables, the end of a page, light and dark.
"use strict";

/** A new element with text and children; text is never read as markup. */
function make(tag, attributes = {}, ...children) {
  const svg = ["svg", "g", "rect", "line", "path", "circle", "text"].includes(tag);
  const element = svg ? document.createElementNS("http://www.w3.org/2000/svg", tag) : document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  element.append(...children);
  return element;
}

const byId = (id) => document.getElementById(id);
const colour = (name) => getComputedStyle(document.documentElement).getPropertyValue("--" + name).trim();
const figure = (value, decimals) => (value === null || value === undefined ? "n/a" : value.toFixed(decimals).replace(/^-(0\.?0*)$/, "$1"));
const share = (value) => (value > 0 && value < 0.01 ? "<1 %" : value > 0.99 && value < 1 ? ">99 %" : figure(100 * value, 0) + " %");
/** A share of seasons with its 95 % limits; it never claims certainty. */
const shareWords = (odds) => (odds.share_of_seasons >= 0.99 ? "more than " + figure(Math.floor(100 * odds.low_95), 0) + " %"
  : share(odds.share_of_seasons) + " (" + figure(Math.max(1, 100 * odds.low_95), 0) + " to " + figure(Math.min(99, 100 * odds.high_95), 0) + ")");
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

const tenSeasons = (estimate, decimals = 0) => "8 seasons of 10: " + figure(estimate.quantile_10, decimals) + " to " + figure(estimate.quantile_90, decimals);
/** Fills the list `id` where the page has one. */
const list = (id, lines) => byId(id)?.append(...lines.map((line) => make("li", {}, line)));

/** The figures of the first screen: [name, value, note]. */
function figures(entries) {
  byId("figures").append(...entries.map(([name, value, note]) =>
    make("div", {}, make("dt", {}, name), make("dd", {}, value, make("small", {}, note)))));
}

/** What is to be drawn again when width or colours change. */
const drawings = [];
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
const system = matchMedia("(prefers-color-scheme: dark)");
system.addEventListener("change", redrawAll);
byId("theme").addEventListener("click", () => {
  const root = document.documentElement;
  const dark = root.dataset.theme ? root.dataset.theme === "dark" : system.matches;
  root.dataset.theme = dark ? "light" : "dark";
  redrawAll();
});
let themeBeforePrint;
window.addEventListener("beforeprint", () => {
  themeBeforePrint = document.documentElement.dataset.theme;
  document.documentElement.dataset.theme = "light";
  document.documentElement.classList.add("printing");
  redrawAll();
});
window.addEventListener("afterprint", () => {
  if (themeBeforePrint) document.documentElement.dataset.theme = themeBeforePrint;
  else delete document.documentElement.dataset.theme;
  document.documentElement.classList.remove("printing");
  redrawAll();
});

/** The page's data: the results' own figures, one block of JSON. */
const pageData = () => JSON.parse(byId("data").textContent);

/** Three digits that say something. */
const three = (value) => (value === null ? "n/a" : String(Number(value.toPrecision(3))));

/** The unknowns with their odds and sources, where the page has them. */
function showOddsOfUnknowns(beliefs) {
  const unit = (row) => (row.unit === "1" ? "" : " " + row.unit);
  byId("beliefs").append(table(["unknown|", "middle", "9 in 10", "founded|", "source|"], beliefs.map((row) => [row.meaning, three(row.median) + unit(row),
    three(row.low) + " to " + three(row.high), row.set_by ? "set by " + row.set_by : row.standing, row.source])));
}

/** The lists that end every page, and the mark by which a test knows that all is drawn. */
function endPage(data) {
  list("assumptions", data.assumptions ?? []);
  if (data.beliefs) showOddsOfUnknowns(data.beliefs);
  list("cautions", data.cautions ?? []);
  list("reproduction", data.reproduction ?? []);
  byId("made").textContent = "Made by maybough " + data.origin.version + (data.origin.written_at ? ", " + data.origin.written_at : "") + ".";
  document.documentElement.dataset.ready = String(Math.round(performance.now()));
}
