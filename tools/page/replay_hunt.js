// The house-hunt that plays: one picture a run, quorum gauges, dances over time; two runs on one clock.
"use strict";

const data = pageData();
const hues = 6;
const dot = 4.4;
const stretchTo = Math.max(...data.runs.map((run) => run.arrival)) + 60;
const minutesAll = Math.ceil(stretchTo / 2);
const clockOf = (minute) => {
  const hour = data.hung_hour + minute / 60;
  const whole = Math.floor(hour);
  return { day: Math.floor(hour / 24), text: String(whole % 24).padStart(2, "0") + ":" + String(Math.floor((hour - whole) * 60)).padStart(2, "0") };
};
const whenWords = (minute) => shown(dayAfter(date(data.hung_on), clockOf(minute).day)) + ", " + clockOf(minute).text;
const shortName = (site) => (site.trap ? site.name.match(/^Trap (\d+)/)?.[1] ?? "R" : site.name.replace("Cavity ", ""));

/** What the page holds of one run: events, lives, counts, and its six most visited sites with a hue each. */
function prepare(run) {
  const events = readEvents(run.events);
  const lives = livesOf(run, events, data);
  const counts = countsOf(run, events, lives, minutesAll);
  const visits = run.sites.map((_, s) => events.filter((event) => event.kind === "visited" && event.site === s).length);
  const finds = run.sites.map((_, s) => events.filter((event) => event.kind === "found" && event.site === s).length);
  return { run, events, lives, counts, visits, finds };
}
const sides = data.runs.map(prepare);

/** Hues by name, so that a site has the same one in both runs: the most visited first, traps and chosen ones always. */
const hueOf = new Map();
(function shareHues() {
  const worth = new Map();
  for (const side of sides) {
    side.run.sites.forEach((site, s) => {
      const extra = s === side.run.chosen ? 1e6 : site.trap && side.visits[s] ? 1e5 : 0;
      worth.set(site.name, Math.max(worth.get(site.name) ?? 0, side.visits[s] + extra));
    });
  }
  [...worth].filter(([, value]) => value > 0).sort((a, b) => b[1] - a[1]).slice(0, hues).forEach(([name], i) => hueOf.set(name, "s" + i));
})();
const siteColour = (site) => colour(hueOf.get(site.name) ?? "soft");

/** Minutes in which something happens in any run, for skipping nights. */
const busy = [...new Set(sides.flatMap((side) => side.events.map((event) => Math.floor(event.tick / 2))))].sort((a, b) => a - b);
function skipQuiet(minute) {
  const next = busy.find((m) => m >= minute);
  return next !== undefined && next - minute > 45 ? next - 10 : minute;
}

/* The picture of one run. */

function pictureOf(side, canvas) {
  const { run, lives, counts } = side;
  let pen = null;
  let width = 0;
  let tall = 0;
  let spots = [];
  let inks = {};
  const middle = () => ({ x: width / 2, y: tall / 2 });
  const seen = run.sites.map((_, s) => side.visits[s] > 0 || run.sites[s].trap);
  const settle = () => {
    width = Math.max(240, canvas.parentElement.clientWidth);
    tall = Math.round(Math.min(0.82 * width, 460));
    pen = penOf(canvas, width, tall);
    for (const name of ["ink", "soft", "sheet", "line", "mark", "on-mark", "money"]) inks[name] = colour(name);
    const farthest = Math.max(...data.runs.flatMap((each) => each.sites.map((site) => site.distance_m)), 1);
    const room = { x: width / 2 - 26, y: tall / 2 - 26 };
    spots = run.sites.map((site) => {
      const length = Math.hypot(site.x, site.y) || 1;
      const part = 0.24 + 0.76 * Math.sqrt(site.distance_m / farthest);
      return { x: width / 2 + (site.x / length) * part * room.x, y: tall / 2 - (site.y / length) * part * room.y, colour: siteColour(site) };
    });
  };
  const jitter = (scout, k) => ((scout * 7919 + k * 104729) % 1000) / 1000;

  const drawSites = (m) => {
    run.sites.forEach((site, s) => {
      if (!seen[s]) return;
      const { x, y, colour: hue } = spots[s];
      const full = Math.min(1, counts.outside[s][m] / run.quorum);
      if (full > 0) {
        pen.beginPath();
        pen.arc(x, y, 19, -Math.PI / 2, -Math.PI / 2 + 2 * Math.PI * full);
        pen.strokeStyle = hue;
        pen.lineWidth = 6;
        pen.stroke();
      }
      if (site.trap) {
        pen.beginPath();
        pen.rect(x - 12, y - 12, 24, 24);
      } else {
        disc(pen, x, y, 12);
      }
      pen.fillStyle = inks.sheet;
      pen.fill();
      pen.strokeStyle = hue;
      pen.lineWidth = 3;
      pen.stroke();
      pen.fillStyle = inks.ink;
      pen.font = "700 13px system-ui";
      pen.textAlign = "center";
      pen.textBaseline = "middle";
      pen.fillText(shortName(site), x, y + 0.5);
    });
  };
  const drawSwarm = (tick) => {
    const centre = middle();
    const lifts = side.events.filter((event) => event.kind === "lifted").at(-1);
    const flown = run.chosen >= 0 && lifts && tick >= lifts.tick;
    let { x, y } = centre;
    if (flown) {
      const part = Math.min(1, (tick - lifts.tick) / Math.max(1, run.arrival - lifts.tick));
      x += part * (spots[run.chosen].x - x);
      y += part * (spots[run.chosen].y - y);
    }
    disc(pen, centre.x, centre.y, 34);
    pen.strokeStyle = inks.line;
    pen.lineWidth = 2;
    pen.stroke();
    const piping = run.chosen >= 0 && tick >= run.decision && !flown;
    disc(pen, x, y, flown ? 14 : 22);
    pen.fillStyle = inks.money;
    pen.globalAlpha = piping ? 0.75 + 0.25 * Math.sin(tick) : 0.55;
    pen.fill();
    pen.globalAlpha = 1;
    if (piping) {
      pen.strokeStyle = inks.mark;
      pen.lineWidth = 4;
      pen.stroke();
    }
    return { flown, piping };
  };
  const drawScouts = (tick) => {
    const centre = middle();
    let [away, there] = [0, 0];
    lives.forEach((stretches, scout) => {
      const now = stretchAt(stretches, tick);
      if (!now) return;
      const [from, to, what, s] = now;
      const site = spots[s];
      let x;
      let y;
      if (what === doing.dance) {
        const turn = 2 * Math.PI * jitter(scout, 1) + tick / 3;
        const r = 26 + 6 * jitter(scout, 2);
        [x, y] = [centre.x + r * Math.cos(turn), centre.y + r * Math.sin(turn)];
      } else if (what === doing.there) {
        ++there;
        const turn = 2 * Math.PI * jitter(scout, 1);
        const r = 14 + 9 * jitter(scout, 3);
        [x, y] = [site.x + r * Math.cos(turn), site.y + r * Math.sin(turn)];
      } else {
        ++away;
        let part = (tick - from) / (to - from);
        if (what === doing.back) part = 1 - part;
        const bend = (jitter(scout, 4) - 0.5) * 36 * Math.sin(Math.PI * part);
        const [dx, dy] = [site.x - centre.x, site.y - centre.y];
        const length = Math.hypot(dx, dy) || 1;
        [x, y] = [centre.x + part * dx - (bend * dy) / length, centre.y + part * dy + (bend * dx) / length];
      }
      pen.fillStyle = site.colour;
      pen.fillRect(x - dot / 2, y - dot / 2, dot, dot);
    });
    return { away, there };
  };
  settle();
  return {
    settle,
    paint(minute) {
      const tick = 2 * minute;
      const m = Math.min(minutesAll, Math.floor(minute));
      pen.clearRect(0, 0, width, tall);
      drawSites(m);
      const swarm = drawSwarm(tick);
      return { ...swarm, ...(tick < run.arrival ? drawScouts(tick) : { away: 0, there: 0 }) };
    },
  };
}

/* Words, gauges and curves of one run. */

const lightAt = (minute) => {
  const hours = data.hung_hour + minute / 60;
  const share = data.scouting[Math.floor(hours)] ?? 0;
  return share > 0 ? "" : "No flight: night, cold or rain. ";
};
function stateWords(side, minute, seen) {
  const { run, counts } = side;
  const tick = 2 * minute;
  const m = Math.min(minutesAll, Math.floor(minute));
  if (tick >= run.arrival) {
    if (run.chosen >= 0) return "Home: the swarm has moved into " + run.sites[run.chosen].name + ".";
    return run.outcome === "hived" ? "Somebody has hived the cluster." : "The swarm never agreed: " + run.outcome + ".";
  }
  if (seen.flown) return "Lift-off: the swarm flies to " + run.sites[run.chosen].name + ".";
  const dancing = Math.round(counts.dance.reduce((sum, list) => sum + list[m], 0));
  const at = seen.there + " at sites, " + seen.away + " on the wing, " + dancing + " dancing of " + run.scouts + " scouts.";
  if (seen.piping) return "Quorum at " + run.sites[run.chosen].name + ": scouts pipe, the swarm warms up. " + at;
  return lightAt(minute) + at;
}

function gaugesOf(side, place) {
  const { run, counts } = side;
  const rows = [...run.sites.keys()].filter((s) => hueOf.has(run.sites[s].name)).sort((a, b) => side.visits[b] - side.visits[a]).map((s) => {
    const fill = make("i");
    const told = make("b", {}, "0 of " + run.quorum);
    const key = make("i", { class: "key" });
    place.append(make("div", { class: "gauge" }, make("span", {}, key, run.sites[s].name), make("span", { class: "rail", "aria-hidden": "true" }, fill), told));
    return { s, fill, key, told };
  });
  const paint = () => rows.forEach(({ s, fill, key }) => { fill.style.background = key.style.background = siteColour(run.sites[s]); });
  paint();
  drawings.push(paint);
  return (minute) => {
    const m = Math.min(minutesAll, Math.floor(minute));
    for (const { s, fill, told } of rows) {
      const outside = 2 * minute < run.arrival ? counts.outside[s][m] : 0;
      fill.style.transform = "scaleX(" + Math.min(1, outside / run.quorum) + ")";
      const text = Math.round(outside) + " of " + run.quorum;
      if (told.textContent !== text) told.textContent = text;
    }
  };
}

function dancesOf(side, id) {
  const { run, counts } = side;
  const bins = Array.from({ length: Math.floor(minutesAll / 10) }, (_, b) => 10 * b);
  const shownSites = [...run.sites.keys()].filter((s) => hueOf.has(run.sites[s].name));
  const lists = shownSites.map((s) => bins.map((from) => {
    let sum = 0;
    for (let m = from; m < from + 10; ++m) sum += counts.dance[s][m];
    return sum / 10;
  }));
  const most = Math.max(4, ...sides.flatMap((each) => each.counts.dance.map((list) => Math.max(...list))));
  strip(id, "Scouts dancing for each site over time, " + run.title, [bins, ...lists], (axis) => ({
    height: 170, scales: { x: { time: false, range: [0, minutesAll] }, y: { range: [0, most] } },
    axes: [{ ...axis, size: 26, space: 64, incrs: [60, 120, 180, 360, 720, 1440, 2880],
      splits: (u, i, min, max, step) => {
        const first = (Math.ceil((data.hung_hour * 60) / step) * step) - data.hung_hour * 60;
        const out = [];
        for (let at = first; at <= max; at += step) out.push(at);
        return out;
      },
      values: (u, splits) => splits.map((m) => (clockOf(m + 0.5).text.startsWith("00:00") ? shown(dayAfter(date(data.hung_on), clockOf(m + 0.5).day)) : clockOf(m + 0.5).text)) },
    { ...axis, size: 36 }],
    series: [{}, ...shownSites.map((s, i) => ({ stroke: siteColour(run.sites[s]), width: 2, dash: i % 2 ? [7, 3] : [], points: { show: false } }))] }));
}

function sideOf(side, i) {
  const scene = make("canvas", { class: "scene", role: "img", "aria-label": "Swarm, sites and scouts: " + side.run.title });
  const state = make("p", { class: "state" });
  const gauges = make("div", {});
  const dances = make("div", { id: "dances-" + i, class: "chart" });
  byId("sides").append(make("div", { class: "side" }, make("h3", {}, side.run.title.charAt(0).toUpperCase() + side.run.title.slice(1)), scene, state,
    make("h3", {}, "Seen outside, of the quorum"), gauges, make("figure", {}, dances, make("figcaption", {}, "Scouts dancing for each site"))));
  const picture = pictureOf(side, scene);
  drawings.push(picture.settle);
  const fill = gaugesOf(side, gauges);
  return { side, state, picture, fill };
}

(function show() {
  const drawn = sides.map(sideOf);
  drawn.forEach(({ picture }) => picture.settle());  // again, now that all share the width
  sides.forEach((side, i) => dancesOf(side, "dances-" + i));
  player({
    from: 0, to: minutesAll, at: 0, step: 1,
    speeds: [["5 minutes a second", 5], ["20 minutes a second", 20, true], ["an hour a second", 60]],
    say: whenWords,
    next: skipQuiet,
    show: (minute) => {
      for (const { side, state, picture, fill } of drawn) {
        const words = stateWords(side, minute, picture.paint(minute));
        if (state.textContent !== words) state.textContent = words;
        fill(minute);
      }
      moveMarks(minute);
    },
  });
  if (sides.length > 1) byId("same").textContent = "Both runs use the same weather, the same scouts and the same random numbers: what differs, the change has done. One pair is one throw of the dice; whether it goes so as a rule takes many.";
  const rows = sides.flatMap((side) => side.run.sites.map((site, s) => [...(sides.length > 1 ? [side.run.title] : []), site.name + (s === side.run.chosen ? " (chosen)" : ""),
    figure(site.distance_m, 0), figure(site.volume_l, 0), figure(site.entrance_cm2, 0), figure(site.height_m, 1), compass(site.facing_deg), site.lure + " %", figure(site.log_odds, 2), String(side.finds[s]), String(side.visits[s])]));
  byId("sites").append(table([...(sides.length > 1 ? ["run|"] : []), "site|", "away, m", "litres", "entrance, cm²", "height, m", "faces", "lure", "score", "come upon by", "visits"], rows));
  for (const side of sides) {
    const moved = side.run.chosen >= 0;
    byId("figures").append(make("div", {}, make("dt", {}, side.run.title), make("dd", {}, moved ? side.run.sites[side.run.chosen].name : side.run.outcome,
      make("small", {}, moved ? "moved in after " + figure(side.run.arrival / 120, 1) + " h" : "after " + figure(side.run.arrival / 120, 1) + " h"))));
  }
  endPage(data);
})();
