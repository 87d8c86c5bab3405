// What the two replays share: a clock with play button and slider, and marks of the present moment on charts.
"use strict";

/** Drives the elements play, clock, slider and speed. `say(t)` words a moment; `show(t)` draws it; `next(t)` may skip
 *  ahead while playing. Time runs in the slider's own unit; `speeds` are units a second. */
function player({ from, to, at, step, speeds, say, show, next = (t) => t }) {
  const [play, clock, slider, speed] = ["play", "clock", "slider", "speed"].map(byId);
  Object.assign(slider, { min: from, max: to, step, value: at });
  speeds.forEach(([text, value, chosen]) => {
    const option = make("option", { value: String(value) }, text);
    option.selected = Boolean(chosen);
    speed.append(option);
  });
  let now = at;
  let playing = false;
  let last = 0;
  const words = () => {
    const text = say(now);
    if (clock.value !== text) clock.value = text;
    slider.setAttribute("aria-valuetext", text);
  };
  const draw = () => {
    words();
    show(now);
  };
  const frame = (stamp) => {
    if (!playing) return;
    const passed = Math.min(0.1, (stamp - last) / 1000);
    last = stamp;
    now = Math.min(to, next(now + passed * Number(speed.value)));
    slider.value = String(now);
    draw();
    if (now >= to) return stop();
    requestAnimationFrame(frame);
  };
  const stop = () => {
    playing = false;
    play.textContent = "Play";
    play.setAttribute("aria-pressed", "false");
  };
  play.addEventListener("click", () => {
    if (playing) return stop();
    if (now >= to) now = from;
    playing = true;
    play.textContent = "Pause";
    play.setAttribute("aria-pressed", "true");
    requestAnimationFrame((stamp) => {
      last = stamp;
      requestAnimationFrame(frame);
    });
  });
  slider.addEventListener("input", () => {
    now = Number(slider.value);
    draw();
  });
  drawings.push(draw);
  draw();
  return { now: () => now, go: (t) => { now = t; slider.value = String(t); draw(); } };
}

/** Charts with a mark of the present: `strip` as `chart`, and the mark moves by moveMarks(x). */
const marked = new Map();
function strip(id, label, data, options) {
  chart(id, label, data, (axis) => {
    const wanted = options({ ...axis, font: "12px system-ui", labelFont: "12px system-ui" });
    return { legend: { show: false }, ...wanted, hooks: { ready: [(plot) => placeMark(id, plot)] } };
  });
  return drawings.at(-1);
}
function placeMark(id, plot) {
  const mark = marked.get(id)?.mark ?? make("div", { class: "marker", "aria-hidden": "true" });
  plot.root.parentElement.append(mark);
  const box = { left: plot.root.offsetLeft + plot.over.offsetLeft, width: plot.over.clientWidth };
  mark.style.top = plot.root.offsetTop + plot.over.offsetTop + "px";
  mark.style.height = plot.over.clientHeight + "px";
  marked.set(id, { mark, box, plot });
}
function moveMarks(x) {
  for (const { mark, box, plot } of marked.values()) {
    const { min, max } = plot.scales.x;
    const part = (x - min) / (max - min);
    mark.style.transform = "translateX(" + (box.left + Math.min(1, Math.max(0, part)) * box.width - 1) + "px)";
  }
}

/** A canvas as sharp as the screen, `width` by `height` in CSS pixels; returns its pen. */
function penOf(canvas, width, height) {
  const sharp = Math.min(2, window.devicePixelRatio || 1);
  canvas.width = Math.round(width * sharp);
  canvas.height = Math.round(height * sharp);
  canvas.style.width = width + "px";
  canvas.style.height = height + "px";
  const pen = canvas.getContext("2d");
  pen.setTransform(sharp, 0, 0, sharp, 0, 0);
  return pen;
}
const disc = (pen, x, y, r) => {
  pen.beginPath();
  pen.arc(x, y, r, 0, 2 * Math.PI);
};
