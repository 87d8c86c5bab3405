// The pages and what each is made of: NAME.html holds its sections, the styles and scripts follow the shared ones.
// A page without `map` or `charts` does not carry that library.
export const pages = {
  plan: { map: true, charts: true, styles: ["plan.css"], scripts: ["plan.js"] },
  replay_season: { map: true, charts: true, styles: ["replay.css"], scripts: ["replay.js", "replay_map.js", "replay_season.js"] },
  replay_hunt: { charts: true, styles: ["replay.css"], scripts: ["replay.js", "replay_scouts.js", "replay_hunt.js"] },
  season: { map: true, charts: true, styles: [], scripts: ["season.js"] },
  compare: { map: true, charts: true, styles: [], scripts: ["compare.js"] },
  forecast: { map: true, charts: true, styles: [], scripts: ["forecast.js"] },
  hindcast: { map: false, charts: true, styles: [], scripts: ["hindcast.js"] },
  learn: { map: true, charts: true, styles: [], scripts: ["learn.js"] },
  verify: { map: false, charts: false, styles: ["verify.css"], scripts: ["verify.js"] },
};
