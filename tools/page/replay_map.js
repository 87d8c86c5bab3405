// Colonies, swarms and catches of one moment, drawn over the map of the season that plays.
"use strict";

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
    // Hives of one apiary stand in one place: they are drawn side by side round it.
    const there = new Map();
    places.colonies = data.colonies.map((colony) => {
      const key = colony.at.join();
      const n = there.get(key) ?? 0;
      there.set(key, n + 1);
      const place = project(colony.at);
      return L.point(place.x + 10 * Math.sqrt(n) * Math.cos(2.4 * n), place.y + 10 * Math.sqrt(n) * Math.sin(2.4 * n));
    });
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
