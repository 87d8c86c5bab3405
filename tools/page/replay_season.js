// The season that plays: colonies and swarms on the map, strips of the season, one colony's own curves and reasons.
"use strict";

const partsOfUrge = [
  ["Crowding", "the nest is full of brood and stores, and crowded with bees"],
  ["Young bees", "more nurses than there is brood to feed"],
  ["Thin scent", "too many bees for one queen's scent to reach"],
  ["Forage", "nectar on offer"],
  ["Long days", "day length, and less once the days shorten"],
  ["Queen's age", "an older queen is left sooner; 1 is a queen of one year"],
  ["This colony's own bent", "some are readier than others; 1 is ordinary"],
];
const hourOf = (tenths) => tenths / 240;  // tenths of an hour to days

const data = pageData();
const firstDay = date(data.first_day);
const dayCount = data.sky.tmax.length;
const lastDay = Math.min(288, dayCount - 1);
const stampOf = (day) => firstDay.getTime() / 1000 + 86400 * day;
const dayWords = (day) => shown(dayAfter(firstDay, Math.floor(day)));
const at = (list, day) => list[Math.floor(day)];
const own = (colony, list, day) => list[Math.floor(day) - colony.first];
const swarmsOf = data.colonies.map((_, c) => data.swarms.filter((swarm) => swarm.colony === c));
let chosen = 0;

/* The map. */

function fateWords(swarm) {
  if (swarm.fate === "caught") return "caught in trap " + (swarm.trap + 1) + " (" + data.traps[swarm.trap].spot_name + ")";
  return { settled: "moved into a natural cavity", hived: "hived by somebody", lost: "lost: never found a home" }[swarm.fate];
}

/** Draws colonies and swarms of moment `t` over the map. */
function mapPainter(map) {
  const canvas = make("canvas", { class: "players", "aria-hidden": "true" });
  map.getContainer().append(canvas);
  let pen = null;
  let ink = {};
  const places = { colonies: [], swarms: [] };
  const project = (place) => map.latLngToContainerPoint(place);
  const settle = () => {
    const size = map.getSize();
    pen = penOf(canvas, size.x, size.y);
    for (const name of ["ink", "soft", "sheet", "catch", "money"]) ink[name] = colour(name);
    places.colonies = data.colonies.map((colony) => project(colony.at));
    places.swarms = data.swarms.map((swarm) => [project(swarm.at), project(swarm.to)]);
  };

  const drawColony = (colony, place, t, marked) => {
    const bees = own(colony, colony.bees, t);
    if (bees === undefined) {
      if (colony.died && t >= colony.first + colony.bees.length) cross(place, 3.5, ink.soft);
      return;
    }
    const r = 2.5 + 0.62 * Math.sqrt(bees / 10);
    const urge = own(colony, colony.urge, t) / 100;
    const preparing = own(colony, colony.cells, t) > 0;
    disc(pen, place.x, place.y, r);
    pen.fillStyle = ink.sheet;
    pen.fill();
    pen.globalAlpha = 0.15 + 0.85 * urge;
    pen.fillStyle = preparing ? ink.money : ink.catch;
    pen.fill();
    pen.globalAlpha = 1;
    pen.lineWidth = marked ? 3 : preparing ? 2.5 : 1.2;
    pen.strokeStyle = marked ? ink.ink : preparing ? ink.money : ink.catch;
    pen.stroke();
    if (marked) {
      disc(pen, place.x, place.y, r + 5);
      pen.lineWidth = 2;
      pen.stroke();
    }
  };
  const cross = (place, r, stroke) => {
    pen.strokeStyle = stroke;
    pen.lineWidth = 2;
    pen.beginPath();
    pen.moveTo(place.x - r, place.y - r);
    pen.lineTo(place.x + r, place.y + r);
    pen.moveTo(place.x + r, place.y - r);
    pen.lineTo(place.x - r, place.y + r);
    pen.stroke();
  };
  const drop = (x, y, r) => {
    pen.beginPath();
    pen.moveTo(x, y - 1.3 * r);
    pen.lineTo(x + r, y + 0.8 * r);
    pen.lineTo(x - r, y + 0.8 * r);
    pen.closePath();
    pen.fillStyle = ink.money;
    pen.strokeStyle = ink.ink;
    pen.lineWidth = 1.5;
    pen.fill();
    pen.stroke();
  };
  const drawSwarm = (swarm, [from, to], t) => {
    const hung = hourOf(swarm.hung);
    const ended = hourOf(swarm.ended);
    if (t < hung) return;
    const r = 4 + Math.sqrt(swarm.bees / 1000);
    if (t < ended) return drop(from.x, from.y, r);
    const since = t - ended;
    const flew = swarm.fate === "caught" || swarm.fate === "settled";
    if (flew && since < 1) {  // a day of the slider, so that the eye can follow; the flight itself takes minutes
      pen.strokeStyle = ink.money;
      pen.lineWidth = 2;
      pen.setLineDash([5, 4]);
      pen.beginPath();
      pen.moveTo(from.x, from.y);
      pen.lineTo(to.x, to.y);
      pen.stroke();
      pen.setLineDash([]);
      drop(from.x + since * (to.x - from.x), from.y + since * (to.y - from.y), r);
    } else if (swarm.fate === "settled") {
      pen.fillStyle = ink.sheet;
      pen.strokeStyle = ink.money;
      pen.lineWidth = 2;
      pen.fillRect(to.x - 4, to.y - 4, 8, 8);
      pen.strokeRect(to.x - 4, to.y - 4, 8, 8);
    } else if (!flew && since < 6) {
      if (swarm.fate === "lost") return cross(from, 5, ink.ink);
      disc(pen, from.x, from.y, 5);
      pen.strokeStyle = ink.ink;
      pen.lineWidth = 2;
      pen.stroke();
    }
  };
  const drawCatches = (t) => {
    const counts = data.traps.map(() => 0);
    for (const swarm of data.swarms) if (swarm.fate === "caught" && t >= hourOf(swarm.ended) + 1) ++counts[swarm.trap];
    data.traps.forEach((trap, i) => {
      if (!counts[i]) return;
      const place = project([trap.latitude_deg, trap.longitude_deg]);
      disc(pen, place.x, place.y, 19);
      pen.strokeStyle = ink.money;
      pen.lineWidth = 4;
      pen.stroke();
      pen.font = "700 14px system-ui";
      const text = "+" + counts[i];
      const width = pen.measureText(text).width + 8;
      pen.fillStyle = ink.sheet;
      pen.fillRect(place.x + 14, place.y - 32, width, 19);
      pen.strokeStyle = ink.ink;
      pen.lineWidth = 1;
      pen.strokeRect(place.x + 14, place.y - 32, width, 19);
      pen.fillStyle = ink.ink;
      pen.fillText(text, place.x + 18, place.y - 17);
    });
  };
  const paint = (t) => {
    const size = map.getSize();
    pen.clearRect(0, 0, size.x, size.y);
    data.colonies.forEach((colony, c) => drawColony(colony, places.colonies[c], t, c === chosen));
    data.swarms.forEach((swarm, s) => drawSwarm(swarm, places.swarms[s], t));
    drawCatches(t);
  };
  settle();
  return { settle, paint, places };
}

/* What is told beside the map. */

function counts(t) {
  const told = { hung: 0, hanging: 0, caught: 0, settled: 0, hived: 0, lost: 0 };
  for (const swarm of data.swarms) {
    if (t < hourOf(swarm.hung)) continue;
    ++told.hung;
    ++told[t < hourOf(swarm.ended) ? "hanging" : swarm.fate];
  }
  return told;
}

const moment = (tenths) => dayWords(hourOf(tenths)) + ", " + String(Math.floor((tenths / 10) % 24)) + " h";
const news = data.swarms.flatMap((swarm) => [
  [swarm.hung, "swarm " + swarm.number + (swarm.prime ? " leaves " : " (afterswarm) leaves ") + data.colonies[swarm.colony].name],
  [swarm.ended, "swarm " + swarm.number + " " + fateWords(swarm)],
]).sort((a, b) => a[0] - b[0]);

const tallyRows = [["Swarms so far", "hung"], ["hanging now", "hanging"], ["caught in traps", "caught"], ["in natural cavities", "settled"],
  ["hived by somebody", "hived"], ["lost", "lost"]].map(([name, key]) => {
  const figureOf = make("dd", {}, "0");
  byId("tally").append(make("dt", {}, name), figureOf);
  return [figureOf, key];
});
let newsShown = -1;
function tell(t) {
  const told = counts(t);
  for (const [element, key] of tallyRows) {
    const text = String(told[key]);
    if (element.textContent !== text) element.textContent = text;
  }
  let upto = 0;
  while (upto < news.length && hourOf(news[upto][0]) <= t) ++upto;
  if (upto === newsShown) return;
  newsShown = upto;
  byId("news").setAttribute("start", String(upto));
  byId("news").replaceChildren(...news.slice(Math.max(0, upto - 5), upto).reverse().map(([when, text]) => make("li", {}, moment(when) + ": " + text)));
}

/* Strips of the season. */

const utc = (stamp) => uPlot.tzDate(new Date(stamp * 1000), "Etc/UTC");
const allDays = data.sky.tmax.map((_, day) => stampOf(day));
const dates = (u, splits) => splits.map((stamp) => shown(new Date(stamp * 1000)));
const plain = { points: { show: false } };
function seasonStrip(id, label, lists, series, more = {}) {
  return strip(id, label, [allDays, ...lists], (axis) => ({
    height: 112, tzDate: utc, ...more, scales: { x: { range: [stampOf(0), stampOf(lastDay)] }, ...more.scales },
    axes: [{ ...axis, values: dates, space: 80, size: 24 }, { ...axis, size: 40, space: 22 }], series: [{}, ...series(axis)] }));
}
const tenths = (list) => list.map((v) => v / 10);
function drawStrips() {
  seasonStrip("warmth", "Highest and lowest temperature of each day", [tenths(data.sky.tmax), tenths(data.sky.tmin)],
    () => [{ ...plain, stroke: colour("money"), width: 1 }, { ...plain, stroke: colour("catch"), width: 1 }]);
  seasonStrip("flight", "Hours of foraging weather each day", [tenths(data.sky.flight)],
    () => [{ ...plain, stroke: colour("catch"), fill: colour("catch-pale"), width: 1 }]);
  seasonStrip("forage", "Honey brought home each day", [data.means.forage],
    () => [{ ...plain, stroke: colour("money"), fill: colour("money-pale"), width: 1 }]);
  seasonStrip("bees", "Workers and brood a colony", [data.means.bees.map((v) => v / 1000), data.means.brood.map((v) => v / 1000)],
    () => [{ ...plain, stroke: colour("catch"), width: 2 }, { ...plain, stroke: colour("money"), width: 2, dash: [6, 4] }]);
}

/* One colony. */

const curves = { bees: [[], [], [], []], urge: [[], [], []] };
const redraws = [];
function fillCurves(colony) {
  const days = colony.bees.map((_, i) => stampOf(colony.first + i));
  const leaving = days.map(() => null);
  for (const swarm of swarmsOf[chosen]) leaving[Math.floor(hourOf(swarm.hung)) - colony.first] = own(colony, colony.bees, hourOf(swarm.hung)) / 10;
  curves.bees.splice(0, 4, days, tenths(colony.bees), tenths(colony.brood), leaving);
  curves.urge.splice(0, 3, days, colony.urge, tenths(colony.honey));
}
function drawColonyCurves() {
  const range = { x: { range: [stampOf(0), stampOf(lastDay)] } };
  const across = (axis) => ({ ...axis, values: dates, space: 80, size: 24 });
  redraws.push(strip("own-bees", "Workers and brood of the chosen colony", curves.bees, (axis) => ({
    height: 180, tzDate: utc, scales: range, axes: [across(axis), { ...axis, size: 40 }],
    series: [{}, { ...plain, stroke: colour("catch"), width: 2 }, { ...plain, stroke: colour("money"), width: 2, dash: [6, 4] },
      { stroke: colour("ink"), width: 0, points: { show: true, size: 12, width: 3, stroke: colour("ink"), fill: colour("sheet") } }] })));
  redraws.push(strip("own-urge", "Urge to swarm and honey of the chosen colony", curves.urge, (axis) => ({
    height: 180, tzDate: utc, scales: { ...range, y: { range: [0, 105] }, kg: { range: (u, low, high) => [0, Math.max(5, 1.1 * (high ?? 5))] } },
    axes: [across(axis), { ...axis, size: 40, values: (u, splits) => splits.map((v) => v + " %") }, { ...axis, scale: "kg", side: 1, size: 46, grid: { show: false }, values: (u, splits) => splits.map((v) => v + " kg") }],
    series: [{}, { ...plain, stroke: colour("ink"), width: 2 }, { ...plain, scale: "kg", stroke: colour("money"), width: 2, dash: [6, 4] }] })));
}

/** Days on which the colony began queen cells: the urge came to its limit. */
const begun = (colony) => colony.urge.map((urge, i) => (urge >= 100 && colony.cells[i] > 0 && !(colony.cells[i - 1] > 0) ? colony.first + i : -1))
  .filter((day) => day >= 0);
const hazardAt = (colony, day, part) => colony.hazard.parts[part][day - colony.first - colony.hazard.from];
function hottest(colony) {
  const odds = colony.hazard.parts[7];
  return odds.length ? colony.first + colony.hazard.from + odds.indexOf(Math.max(...odds)) : -1;
}

function showParts(colony, day, title) {
  byId("parts-title").textContent = title;
  const rows = partsOfUrge.map(([name, meaning], part) => {
    const value = hazardAt(colony, day, part);
    if (value === undefined) return "";
    const measure = part < 5 ? make("progress", { max: "100", value: String(value), "aria-label": name }) : make("span", {});
    return make("div", { class: "part" }, make("span", {}, name), measure, make("b", {}, part < 5 ? value + " %" : "× " + figure(value / 100, 2)), make("small", {}, meaning));
  });
  const odds = hazardAt(colony, day, 7);
  if (odds !== undefined) rows.push(make("p", {}, "Together: odds of " + figure(odds / 10, 1) + " % of beginning queen cells that day."));
  else rows.push(make("p", {}, "Nothing spoke for swarming that day."));
  byId("parts").replaceChildren(...rows);
}

function storyOf(colony) {
  const cast = swarmsOf[chosen];
  const cells = begun(colony);
  const what = { hive: "A hive", wild: "A wild nest", founded: "Founded this year by a swarm, a nest" }[colony.kind] + " of " + colony.volume_l + " l";
  const most = Math.max(...colony.bees) * 100;
  let text = what + "; at most " + most.toLocaleString("en") + " workers.";
  if (cells.length) text += " It began queen cells on " + cells.map(dayWords).join(" and on ") + ".";
  if (cast.length) {
    text += " Swarms: " + cast.map((swarm) => moment(swarm.hung) + ", " + (swarm.prime ? "prime" : "afterswarm") + " of " +
      swarm.bees.toLocaleString("en") + " bees, " + fateWords(swarm)).join("; ") + ".";
  } else {
    text += cells.length ? " No swarm left: the cells were given up or removed." :
      " It did not swarm: its urge came to " + Math.max(...colony.urge) + " % of its limit.";
  }
  return text + (colony.died ? " It died on " + dayWords(colony.first + colony.bees.length - 1) + "." : "");
}

function showColony() {
  const colony = data.colonies[chosen];
  byId("story").textContent = storyOf(colony);
  const cells = begun(colony);
  const day = cells.length ? cells[0] : hottest(colony);
  if (day < 0) {
    byId("parts-title").textContent = "What makes the urge";
    byId("parts").replaceChildren(make("p", {}, "Nothing spoke for swarming on any day of its year."));
  } else {
    showParts(colony, day, "What made the urge on " + dayWords(day) + (cells.length ? ", when it began cells" : ", its keenest day"));
  }
  fillCurves(colony);
  redraws.forEach((redraw) => redraw());
}

function fillChoice(choose) {
  const order = data.colonies.map((_, c) => c).sort((a, b) => swarmsOf[b].length - swarmsOf[a].length || a - b);
  for (const c of order) {
    const times = swarmsOf[c].length;
    byId("chosen").append(make("option", { value: String(c) }, data.colonies[c].name + (times ? ", swarmed " + dayWords(hourOf(swarmsOf[c][0].hung)) : "")));
  }
  byId("chosen").addEventListener("change", () => choose(Number(byId("chosen").value)));
  return order[0] ?? 0;
}

/* All together. */

(function show() {
  const drawn = landMap(data.map, data.traps.map((trap) => ({
    ...trap, text: String(trap.number), label: "Trap " + trap.number + ", " + trap.spot_name,
    lines: [trap.kind_name + ", " + height(trap.height_m), "hangs " + shown(date(trap.hang)) + " to " + shown(date(trap.take_down))],
  })), "trap");
  legend([["dot", "var(--catch)", "colony, fuller as its urge grows"], ["dot", "var(--money)", "with queen cells"],
    ["swarm", "", "▲ swarm hangs or flies"], ["swarm", "", "□ new nest"], ["swarm", "", "○ hived"], ["swarm", "", "× lost"]]);
  document.querySelectorAll("#legend i.swarm").forEach((swatch) => swatch.remove());
  const painter = mapPainter(drawn.map);
  drawStrips();
  chosen = data.colonies.length ? fillChoice(choose) : -1;
  if (chosen >= 0) {
    fillCurves(data.colonies[chosen]);
    drawColonyCurves();
  }
  drawn.painters.push(painter.settle);
  const first = data.swarms.length ? Math.floor(hourOf(data.swarms[0].hung)) : 120;
  const clock = player({
    from: 0, to: lastDay, at: first, step: 1,
    speeds: [["half a day a second", 0.5], ["2 days a second", 2, true], ["8 days a second", 8]],
    say: (t) => dayWords(t) + (t % 1 ? "" : ""),
    show: (t) => {
      painter.paint(t);
      tell(t);
      moveMarks(stampOf(t));
    },
  });
  function choose(c) {
    chosen = c;
    byId("chosen").value = String(c);
    showColony();
    clock.go(clock.now());
  }
  drawn.map.on("move zoom resize", () => {
    painter.settle();
    painter.paint(clock.now());
  });
  drawn.map.on("click", (event) => {
    const near = painter.places.colonies.map((place, c) => [place.distanceTo(event.containerPoint), c]).sort((a, b) => a[0] - b[0])[0];
    if (near && near[0] < 22) choose(near[1]);
  });
  if (chosen >= 0) choose(chosen);
  byId("swarms").append(table(["swarm", "hung|", "from|", "bees", "scouts", "sites found", "became|"], data.swarms.map((swarm) => [String(swarm.number),
    moment(swarm.hung), data.colonies[swarm.colony].name, String(swarm.bees), String(swarm.scouts), String(swarm.sites_found), fateWords(swarm)])));
  for (const [name, value, note] of [["Swarms", String(data.swarms.length), "on this map"], ["Caught", String(data.swarms.filter((s) => s.fate === "caught").length), "in " + data.traps.length + " traps"],
    ["Colonies", String(data.colonies.length), swarmsOf.filter((list) => list.length).length + " of them swarmed"],
    ["Height of the season", news.length ? dayWords(hourOf([...data.swarms].sort((a, b) => a.hung - b.hung)[Math.floor(data.swarms.length / 2)].hung)) : "none", "half of the swarms are out"]]) {
    byId("figures").append(make("div", {}, make("dt", {}, name), make("dd", {}, value, make("small", {}, note))));
  }
  endPage(data);
})();
