// The map that pages share: habitats, hives, spots and pins, drawn without asking any server.
"use strict";

/** Lines of a tooltip or popup. */
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

/** A round pin with a few letters; `lines` open in a popup. */
function pinMarker({ latitude_deg, longitude_deg, text, label, lines }) {
  const icon = L.divIcon({ className: "pin", html: make("span", {}, text), iconSize: [text.length > 2 ? 14 + 9 * text.length : 28, 28] });
  const marker = L.marker([latitude_deg, longitude_deg], { icon, title: "", alt: label, zIndexOffset: 1000 });
  marker.bindPopup(tip(label, ...lines));
  marker.on("add", () => marker.getElement().setAttribute("aria-label", label));
  return marker;
}

/** Habitats and the area's edge; returns what paints them in the page's colours. */
function drawHabitats(map, land) {
  const patches = land.habitats.map((patch) => {
    const shape = L.polygon(patch.ring, { weight: 1, opacity: 0.6, fillOpacity: 0.75, smoothFactor: 0.5 });
    shape.bindTooltip(tip(patch.name || patch.habitat, patch.name ? patch.habitat : ""), { sticky: true });
    return [shape.addTo(map), patch.habitat];
  });
  const edge = L.circle([land.latitude_deg, land.longitude_deg],
    { radius: land.radius_m, fill: false, weight: 2, dashArray: "6 6", interactive: false }).addTo(map);
  return () => {
    for (const [shape, habitat] of patches) shape.setStyle({ color: colour("soft"), fillColor: colour(habitat) });
    edge.setStyle({ color: colour("ink") });
    byId("map").style.background = colour(land.elsewhere);
  };
}

/** Streets, water, buildings and names; returns what paints them. */
function drawMap(map, land) {
  const wide = { motorway: 4, trunk: 4, primary: 3.5, secondary: 3, tertiary: 2.5, residential: 2, unclassified: 2 };
  map.createPane("names").style.zIndex = 450;  // over the land, under pins and what opens at them
  const shapes = (land.drawn || []).map((item) => {
    const options = { interactive: item.name !== "", fillOpacity: 0.55 };
    if (item.shape === "Point") {
      if (item.map === "tree") return [L.circleMarker(item.at, { ...options, radius: 2, weight: 1 }), item];
      if (item.map !== "name") return [L.circleMarker(item.at, { ...options, radius: 3, weight: 1 }), item];
      return [L.tooltip({ permanent: true, pane: "names", direction: "center", className: "place-name" }).setLatLng(item.at).setContent(make("span", {}, item.name)), item];
    }
    const shape = item.shape.endsWith("LineString") ? L.polyline(item.at, { ...options, weight: wide[item.kind] || 1.2 })
      : L.polygon(item.at, { ...options, weight: 0.7 });
    if (item.name) shape.bindTooltip(tip(item.name), { sticky: true });
    return [shape, item];
  });
  for (const [shape] of shapes) {
    shape.addTo(map);
    // A browser may stop at whatever listens for focus, as shapes with a name do: hundreds of streets are no stops for keys.
    if (shape.getElement) shape.getElement()?.setAttribute("tabindex", "-1");
  }
  const colours = { street: "sheet", stream: "water", tree: "woodland", name: "ink" };
  return () => {
    for (const [shape, item] of shapes) {
      if (shape.setStyle) shape.setStyle({ color: colour(colours[item.map] || "soft"), fillColor: colour(colours[item.map] || "soft") });
    }
  };
}

/** Hives and unused spots; returns what paints them. */
function drawPlaces(map, land) {
  const hives = land.apiaries.map((apiary) => {
    const shape = L.circleMarker([apiary.latitude_deg, apiary.longitude_deg], { radius: 5 + Math.min(6, Math.sqrt(apiary.hives)), weight: 2, fillOpacity: 1 });
    return shape.bindTooltip(tip("Apiary " + apiary.id, apiary.hives + (apiary.hives === 1 ? " hive" : " hives"))).addTo(map);
  });
  const spots = land.spots.map((spot) => {
    const shape = L.circleMarker([spot.latitude_deg, spot.longitude_deg], { radius: 5, weight: 2, fillOpacity: 1 });
    return shape.bindTooltip(tip("Spot not used: " + spot.name)).addTo(map);
  });
  return () => {
    for (const shape of hives) shape.setStyle({ color: colour("sheet"), fillColor: colour("ink") });
    for (const shape of spots) shape.setStyle({ color: colour("catch"), fillColor: colour("sheet") });
  };
}

/** Where swarms hang: a disc in each square, its area as many as hang there; returns what paints them. */
function drawSwarms(map, land) {
  const most = Math.max(...land.swarms.map((square) => square.swarms), 0);
  const discs = land.swarms.map((square) => {
    const radius = Math.max(8, 0.5 * square.side_m * Math.sqrt(square.swarms / most));
    return L.circle([square.latitude_deg, square.longitude_deg], { radius, weight: 1, fillOpacity: 0.35, opacity: 0.6, interactive: false }).addTo(map);
  });
  return () => discs.forEach((disc) => disc.setStyle({ color: colour("swarm"), fillColor: colour("swarm") }));
}

/** The land in the element `map`, whole area in view. `pins` as pinMarker takes them, `pinsAre` says what they are.
 *  Returns the map, its pins, and `painters`: more to be called whenever colours or width change. */
function landMap(land, pins, pinsAre) {
  const map = L.map("map", { attributionControl: false, scrollWheelZoom: false, zoomSnap: 0.25 });
  const area = L.latLng([land.latitude_deg, land.longitude_deg]).toBounds(2 * land.radius_m);
  const showAll = () => map.fitBounds(area, { padding: [4, 4], animate: false });
  showAll();
  const painters = [drawHabitats(map, land), drawMap(map, land), drawSwarms(map, land), drawPlaces(map, land)];
  const markers = pins.map((pin) => pinMarker(pin).addTo(map));
  if (land.credit) {
    const owed = L.control({ position: "bottomright" });
    owed.onAdd = () => make("div", { class: "credit" }, land.credit);
    owed.addTo(map);
  }
  L.control.scale({ position: "bottomleft" }).addTo(map);
  const paint = () => painters.forEach((painter) => painter());
  drawings.push(() => { map.invalidateSize({ animate: false }); showAll(); paint(); });
  paint();
  byId("map").dataset.marks = String(land.habitats.length + land.apiaries.length + land.spots.length + pins.length + (land.drawn || []).length);
  const kinds = [...new Set([land.elsewhere, ...land.habitats.map((patch) => patch.habitat)])];
  legend([...(pins.length ? [["dot", "var(--mark)", pinsAre]] : []), ["dot", "var(--sheet)", "spot not used"], ["dot", "var(--ink)", "apiary"],
    ...(land.swarms.length ? [["dot faint", "var(--swarm)", "where swarms hang: the wider, the more"]] : []),
    ...kinds.map((kind) => ["", "var(--" + kind + ")", kind])]);
  return { map, pins: markers, painters };
}
