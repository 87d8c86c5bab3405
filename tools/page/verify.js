// The verify page: published beside simulated, and where each finding lies in its interval. All figures are the run's own.
"use strict";

/** The interval fills the middle half of a strip; with one side open, the other bound and the width of zero to it. */
function placeOf(finding) {
  const { low, high, simulated } = finding;
  const open = low === null || high === null;
  const bound = low ?? high ?? 0;
  const width = open ? Math.abs(bound) || 1 : high - low || Math.abs(high) || 1;
  const from = low ?? bound - width;
  const at = (value) => (value === null ? null : Math.min(98, Math.max(2, 25 + (50 * (value - from)) / width)));
  return { at, low: low === null ? 0 : 25, high: high === null ? 100 : 75, here: at(simulated) };
}

/** One mark: its shape tells the verdict without colour. */
function mark(finding, x, y) {
  const kind = (finding.verdict.startsWith("agrees") ? "agrees" : "departs") + (finding.calibrated ? " calibrated" : "");
  if (finding.verdict.startsWith("agrees")) return [make("circle", { class: kind, cx: x + "%", cy: y, r: 6 })];
  if (finding.verdict === "departs, known") {
    const square = make("rect", { class: kind, x: x + "%", y: y - 6, width: 12, height: 12 });
    square.style.transform = "translateX(-6px)";
    return [square];
  }
  const stroke = (y1, y2) => {
    const line = make("line", { class: kind, x1: x + "%", x2: x + "%", y1, y2 });
    line.style.transformBox = "fill-box";
    line.style.transformOrigin = "center";
    return line;
  };
  const [left, right] = [stroke(y - 8, y + 8), stroke(y - 8, y + 8)];
  left.style.transform = "rotate(45deg)";
  right.style.transform = "rotate(-45deg)";
  return [left, right];
}

function strip(finding) {
  const place = placeOf(finding);
  const error = finding.simulated_se > 0 && place.here !== null
    ? [make("line", { class: "error", x1: place.at(finding.simulated - 1.96 * finding.simulated_se) + "%", x2: place.at(finding.simulated + 1.96 * finding.simulated_se) + "%", y1: 10, y2: 10 })] : [];
  return make("svg", { class: "place", role: "img", "aria-label": finding.verdict },
    make("rect", { class: "accepted", x: place.low + "%", y: 2, width: place.high - place.low + "%", height: 16 }),
    make("line", { class: "axis", x1: "0", x2: "100%", y1: 10, y2: 10 }), ...error,
    ...(place.here === null ? [] : mark(finding, place.here, 10)),
    ...(finding.low === null ? [] : [make("text", { x: "25%", y: 31 }, finding.low_text)]),
    ...(finding.high === null ? [] : [make("text", { x: "75%", y: 31 }, finding.high_text)]));
}

function accepted(finding) {
  if (finding.low === null) return "at most " + finding.high_text;
  if (finding.high === null) return "at least " + finding.low_text;
  return finding.low_text + " to " + finding.high_text;
}

function card(finding) {
  const departs = !finding.verdict.startsWith("agrees");
  const unit = finding.unit ? ", " + finding.unit : "";
  const told = finding.simulated_text + (finding.simulated_se_text ? " ± " + finding.simulated_se_text : "");
  const pairs = [["published", finding.published], ["simulated", told], ["accepted", accepted(finding)], ["verdict", finding.verdict.toLowerCase()]];
  return make("article", { class: "finding" },
    make("div", {}, make("h3", {}, finding.what + unit), make("dl", {}, ...pairs.flatMap(([name, value]) => [make("dt", {}, name),
      make("dd", name === "verdict" && departs ? { class: "departs" } : {}, value)]))),
    make("div", {}, strip(finding), make("p", {}, finding.source + ". Accepted: " + finding.why_interval + "." +
      (finding.calibrated ? " A constant was chosen so that it comes out." : "")),
      ...(finding.known_departure ? [make("p", {}, "Known to depart: " + finding.known_departure)] : [])));
}

/** All findings of a theme on one strip, heaped where they lie close. */
function overview(theme, findings) {
  const heaps = new Map();
  const marks = findings.flatMap((finding) => {
    const { here } = placeOf(finding);
    if (here === null) return [];
    const slot = Math.round(here / 2);
    const nth = heaps.get(slot) ?? 0;
    heaps.set(slot, nth + 1);
    return mark(finding, 2 * slot, 10 + 14 * nth);
  });
  const tall = 20 + 14 * Math.max(0, ...[...heaps.values()].map((n) => n - 1));
  const chart = make("svg", { class: "place", role: "img", "aria-label": findings.length + " findings of " + theme }, make("rect", { class: "accepted", x: "25%", y: 0, width: "50%", height: tall }), ...marks);
  chart.style.height = tall + "px";
  byId("positions").append(make("span", {}, theme), chart);
}

(function show() {
  const data = pageData();
  const { findings, agree, known, unforeseen, calibrated } = data.count;
  figures([
    ["Agree", agree + " of " + findings, "within the interval written down before"],
    ["Depart, known", String(known), "and it is said why"],
    ["Depart unforeseen", String(unforeseen), unforeseen ? "see below" : "none"],
    ["Independent", String(findings - calibrated), "no constant was chosen by looking at them"],
    ["Calibrated", String(calibrated), "show that the model can"],
  ]);
  const themes = [...new Set(data.experiments.map((experiment) => experiment.theme))];
  for (const theme of themes) {
    const of = data.experiments.filter((experiment) => experiment.theme === theme);
    overview(theme, of.flatMap((experiment) => experiment.findings));
    byId("experiments").append(make("section", { "aria-label": theme }, make("h2", {}, theme[0].toUpperCase() + theme.slice(1)),
      ...of.flatMap((experiment) => [make("p", {}, make("b", {}, experiment.name + ": "), experiment.title), ...experiment.findings.map(card)])));
  }
  byId("positions").dataset.marks = String(findings);
  endPage(data);
})();
