// Puts page, styles and scripts together and writes them as one C++ source: node bundle.mjs OUT.cpp NODE_MODULES.
// The policy names the digests of the page's own style and script, so that nothing else can run in it.
import { createHash } from "node:crypto";
import { readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const [out, modules] = process.argv.slice(2);
const here = dirname(fileURLToPath(import.meta.url));
const own = (name) => readFileSync(join(here, name), "utf8");
const kept = (name) => readFileSync(join(modules, name), "utf8").replace(/\r\n?/g, "\n").replace(/\/[/*]# sourceMappingURL=.*$/gm, "");
const notice = (name) => "/*\n" + kept(name).replace(/\*\//g, "* /") + "\n*/\n";
const digest = (text) => "'sha256-" + createHash("sha256").update(text, "utf8").digest("base64") + "'";
const fill = (text, name, value) => {
  const parts = text.split("{{" + name + "}}");
  if (parts.length !== 2) throw new Error(`{{${name}}} stands ${parts.length - 1} times in the page`);
  return parts.join(value);
};

const withoutPictures = kept("leaflet/dist/leaflet.css").replace(/url\([^)]*\)/g, "none");
const style = withoutPictures + kept("uplot/dist/uPlot.min.css") + own("plan.css");
const script = [
  notice("uplot/LICENSE"), kept("uplot/dist/uPlot.iife.min.js"), notice("leaflet/LICENSE"),
  kept("leaflet/dist/leaflet.js"), own("parts.js"), own("map.js"), own("plan.js"),
].join("\n");
if (/<\/(script|style)/i.test(style + script)) throw new Error("a part would end its own element");

// Pictures may come from a secure address: only the base map asks for any, and only when the user turns it on.
const policy = `default-src 'none'; style-src ${digest(style)}; script-src ${digest(script)}; img-src data: https:; ` +
  "base-uri 'none'; form-action 'none'";
let page = own("plan.html");
for (const [name, value] of [["csp", policy], ["style", style], ["script", script]]) page = fill(page, name, value);

const fence = "page";
if (page.includes(")" + fence + '"')) throw new Error("the page holds the end of a raw string");
const pieces = page.match(/[\s\S]{1,30000}/g).map((piece) => `R"${fence}(${piece})${fence}"`);
writeFileSync(out, `// Written by tools/page/bundle.mjs: the plan page without its data.
#include <string_view>
namespace maybough {
std::string_view plan_page_frame();
std::string_view plan_page_frame() {
    static constexpr char text[] =
${pieces.join("\n")};
    return {text, sizeof text - 1};
}
}  // namespace maybough
`);
