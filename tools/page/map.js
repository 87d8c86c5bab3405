// The map: habitats, hives, spots and numbered traps, drawn without asking any server.
"use strict";

function tip(...lines) {
  return make("div", {}, ...lines.map((line) => make("div", {}, line)));
}

function legend(entries) {
  for (const [kind, style, text] of entries) {
    const swatch = make("i", { class: kind });
    if (style) swatch.style.background = style;
    byId("legend").append(make("li", {}, swatch, text));
  }
}

function trapMarker(trap) {
  const icon = L.divIcon({ className: "pin", html: make("span", {}, String(trap.number)), iconSize: [28, 28] });
  const label = "Trap " + trap.number + ", " + trap.spot_name;
  const marker = L.marker([trap.latitude_deg, trap.longitude_deg], { icon, title: "", alt: label, zIndexOffset: 1000 });
  marker.bindPopup(tip(label, trap.kind_name + ", " + height(trap.height_m) + ", entrance " + compass(trap.facing_deg),
    plusMinus(trap.catches, 2) + " swarms a season"));
  marker.on("add", () => marker.getElement().setAttribute("aria-label", label));
  return marker;
}

function drawMap(plan) {
  const land = plan.map;
  const map = L.map("map", { attributionControl: false, scrollWheelZoom: false, zoomSnap: 0.25 });
  const centre = [land.latitude_deg, land.longitude_deg];
  const area = L.latLng(centre).toBounds(2 * land.radius_m);
  const showAll = () => map.fitBounds(area, { padding: [4, 4], animate: false });
  showAll();
  const patches = [];
  for (const patch of land.habitats) {
    const shape = L.polygon(patch.ring, { weight: 1, opacity: 0.6, fillOpacity: 0.75, smoothFactor: 0.5 });
    shape.bindTooltip(tip(patch.name || patch.habitat, patch.name ? patch.habitat : ""), { sticky: true });
    patches.push([shape.addTo(map), patch.habitat]);
  }
  const edge = L.circle(centre, { radius: land.radius_m, fill: false, weight: 2, dashArray: "6 6", interactive: false }).addTo(map);
  const hives = land.apiaries.map((apiary) => {
    const shape = L.circleMarker([apiary.latitude_deg, apiary.longitude_deg], { radius: 5 + Math.min(6, Math.sqrt(apiary.hives)), weight: 2, fillOpacity: 1 });
    return shape.bindTooltip(tip("Apiary " + apiary.id, apiary.hives + (apiary.hives === 1 ? " hive" : " hives"))).addTo(map);
  });
  const spots = land.spots.map((spot) => {
    const shape = L.circleMarker([spot.latitude_deg, spot.longitude_deg], { radius: 5, weight: 2, fillOpacity: 1 });
    return shape.bindTooltip(tip("Spot not used: " + spot.name)).addTo(map);
  });
  const traps = plan.traps.map((trap) => trapMarker(trap).addTo(map));
  L.control.scale({ position: "bottomleft" }).addTo(map);
  const paint = () => {
    for (const [shape, habitat] of patches) shape.setStyle({ color: colour("soft"), fillColor: colour(habitat) });
    edge.setStyle({ color: colour("ink") });
    for (const shape of hives) shape.setStyle({ color: colour("sheet"), fillColor: colour("ink") });
    for (const shape of spots) shape.setStyle({ color: colour("catch"), fillColor: colour("sheet") });
    byId("map").style.background = colour(land.elsewhere);
    byId("map").dataset.marks = String(patches.length + hives.length + spots.length + traps.length);
  };
  drawings.push(() => { map.invalidateSize({ animate: false }); showAll(); paint(); });
  paint();
  const kinds = [...new Set([land.elsewhere, ...land.habitats.map((patch) => patch.habitat)])];
  legend([["dot", "var(--mark)", "trap, numbered as below"], ["dot", "var(--sheet)", "spot not used"], ["dot", "var(--ink)", "apiary"],
    ...kinds.map((kind) => ["", "var(--" + kind + ")", kind])]);
  baseMap(map);
  return { map, traps };
}

/** Tiles only after the user has pressed the button; their credit line stays on the map. */
function baseMap(map) {
  let tiles = null;
  let credit = null;
  byId("base-switch").addEventListener("click", () => {
    if (tiles) {
      tiles.remove();
      credit.remove();
      tiles = null;
    } else {
      tiles = L.tileLayer(byId("base-address").value, { maxZoom: 19 }).addTo(map).bringToBack();
      credit = L.control({ position: "bottomright" });
      credit.onAdd = () => make("div", { class: "credit" }, byId("base-credit").value);
      credit.addTo(map);
    }
    byId("base-switch").setAttribute("aria-pressed", String(tiles !== null));
    byId("base-switch").textContent = tiles ? "Take base map away" : "Fetch base map";
  });
}
