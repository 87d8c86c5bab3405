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
    plot = new uPlot({ width, height: 250, cursor: { drag: { x: false, y: false } }, ...wanted }, data, place);
    place.dataset.marks = String(data.slice(1).reduce((sum, series) => sum + series.filter((v) => v !== null).length, 0));
  };
  drawings.push(draw);
  draw();
}

