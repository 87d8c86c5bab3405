// From the events of a hunt to where every scout is at any moment, who dances for what, and who was seen outside.
"use strict";

const doing = { out: 1, there: 2, back: 3, dance: 4 };
const kinds = ["found", "visited", "danced", "stopped", "rested", "quorum", "lifted", "arrived", "split", "night", "rain", "followed"];

/** Five numbers an event: ticks (half minutes) since the last, kind, scout, site, amount. */
function readEvents(numbers) {
  const events = [];
  let tick = 0;
  for (let i = 0; i < numbers.length; i += 5) {
    tick += numbers[i];
    events.push({ tick, kind: kinds[numbers[i + 1]], scout: numbers[i + 2], site: numbers[i + 3], amount: numbers[i + 4] });
  }
  return events;
}

/** Every scout's stretches [from, to, doing, site] in order. What the events leave out follows from the flying time. */
function livesOf(run, events, { run_s, search_min }) {
  const lives = Array.from({ length: run.scouts }, () => ({ stretches: [], out: null, visit: null }));
  const flight = run.sites.map((site) => 2 * site.minutes);
  const add = (bee, from, to, what, site) => {
    const last = bee.stretches.at(-1);
    const begin = last ? Math.max(from, last[1]) : from;
    if (to > begin) bee.stretches.push([begin, to, what, site]);
  };
  const home = (bee, tick) => {
    if (!bee.visit) return;
    const leaves = Math.max(bee.visit.tick, tick - flight[bee.visit.site]);
    add(bee, bee.visit.tick, leaves, doing.there, bee.visit.site);
    add(bee, leaves, tick, doing.back, bee.visit.site);
    bee.visit = null;
  };
  const cutDance = (bee, tick) => {
    const last = bee.stretches.at(-1);
    if (last && last[2] === doing.dance && last[1] > tick) last[1] = tick;
  };
  for (const { tick, kind, scout, site, amount } of events) {
    if (kind === "night" || kind === "rain") {
      for (const bee of lives) {
        home(bee, tick);
        cutDance(bee, tick);
        bee.out = null;
      }
    }
    if (scout < 0 || site < 0) continue;
    const bee = lives[scout];
    if (kind === "stopped") cutDance(bee, tick);
    if (kind !== "visited" && kind !== "quorum") home(bee, tick);
    if (kind === "found" || kind === "followed") bee.out = { tick, site };
    if (kind === "danced") add(bee, tick, tick + (amount * run_s) / 30, doing.dance, site);
    if (kind === "visited") {
      const left = bee.out && bee.out.site === site && tick - bee.out.tick < 4 * search_min ? bee.out.tick : tick - flight[site];
      add(bee, left, tick, doing.out, site);
      bee.out = null;
      bee.visit = { tick, site };
    }
  }
  for (const bee of lives) home(bee, run.arrival);
  return lives.map((bee) => bee.stretches);
}

/** Per site and minute: dancing, at the site, and seen outside (the last look, for at most a quarter of an hour). */
function countsOf(run, events, lives, minutes) {
  const lists = () => run.sites.map(() => new Float32Array(minutes + 1));
  const counts = { dance: lists(), there: lists(), outside: lists() };
  for (const stretches of lives) {
    for (const [from, to, what, site] of stretches) {
      if (what !== doing.dance && what !== doing.there) continue;
      const list = counts[what === doing.dance ? "dance" : "there"][site];
      for (let m = Math.floor(from / 2); m < Math.min(minutes, Math.ceil(to / 2)); ++m) {
        list[m] += Math.max(0, Math.min(to, 2 * m + 2) - Math.max(from, 2 * m)) / 2;
      }
    }
  }
  for (const { tick, kind, site, amount } of events) {
    if (kind !== "visited" || site < 0) continue;
    const m = Math.floor(tick / 2);
    for (let k = m; k <= Math.min(minutes, m + 15); ++k) counts.outside[site][k] = Math.min(amount, k === m ? amount : Math.ceil(counts.there[site][k]));
  }
  return counts;
}

/** The stretch that holds tick `t`, or null for a scout at rest. */
function stretchAt(stretches, t) {
  let low = 0;
  let high = stretches.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (stretches[middle][1] <= t) low = middle + 1;
    else high = middle;
  }
  const found = stretches[low];
  return found && found[0] <= t ? found : null;
}
