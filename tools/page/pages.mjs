// The pages and what each is made of: NAME.html holds its sections, the styles and scripts follow the shared ones.
// A page without `map` or `charts` does not carry that library.
export const pages = {
  plan: { map: true, charts: true, styles: ["plan.css"], scripts: ["plan.js"] },
  replay_season: { map: true, charts: true, styles: ["replay.css"], scripts: ["replay.js", "replay_season.js"] },
  replay_hunt: { charts: true, styles: ["replay.css"], scripts: ["replay.js", "replay_scouts.js", "replay_hunt.js"] },
};
