// Puts every page together from its parts and writes them as one C++ source: node bundle.mjs OUT.cpp NODE_MODULES.
// Each part is kept once, however many pages use it. A page's policy names the digests of its own styles and scripts,
// so that nothing else can run in it.
import { createHash } from "node:crypto";
import { readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { pages } from "./pages.mjs";

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

const library = {
  "uplot.js": notice("uplot/LICENSE") + kept("uplot/dist/uPlot.iife.min.js"),
  "uplot.css": kept("uplot/dist/uPlot.min.css"),
  "leaflet.js": notice("leaflet/LICENSE") + kept("leaflet/dist/leaflet.js"),
  "leaflet.css": kept("leaflet/dist/leaflet.css").replace(/url\([^)]*\)/g, "none"),
};

/** Colours of the dark are written once, in dark.css: for the system's choice, and for the reader's. */
function ownStyle(name) {
  if (name !== "dark.css") return own(name);
  const colours = own(name).trim();
  return `@media (prefers-color-scheme: dark) { :root:not([data-theme="light"]) { ${colours} } }\n:root[data-theme="dark"] { ${colours} }\n`;
}

/** {{> map}} stands for map.part.html, which may name others. */
function withShared(text) {
  return text.replace(/\{\{> ([\w-]+)\}\}\n?/g, (_, shared) => withShared(own(shared + ".part.html")));
}

const parts = new Map();
/** The number of a part of the text, each kept once. */
function part(text) {
  if (!parts.has(text)) parts.set(text, parts.size);
  return parts.get(text);
}

/** The numbers of a page's parts, in order. */
function partsOf(name, page) {
  const styles = [...(page.map ? ["leaflet.css"] : []), ...(page.charts ? ["uplot.css"] : []), "shared.css", "dark.css", ...page.styles];
  const scripts = [...(page.charts ? ["uplot.js"] : []), ...(page.map ? ["leaflet.js"] : []), "parts.js",
    ...(page.charts ? ["charts.js"] : []), ...(page.map ? ["map.js"] : []), ...page.scripts];
  const styleTexts = styles.map((file) => library[file] ?? ownStyle(file));
  const scriptTexts = scripts.map((file) => library[file] ?? own(file));
  for (const text of [...styleTexts, ...scriptTexts]) {
    if (/<\/(script|style)/i.test(text)) throw new Error(`a part of ${name} would end its own element`);
  }
  const policy = `default-src 'none'; style-src ${styleTexts.map(digest).join(" ")}; script-src ${scriptTexts.map(digest).join(" ")}; ` +
    `img-src data:; base-uri 'none'; form-action 'none'`;
  const sections = withShared(own(name + ".html"));
  const credits = [...(page.charts ? ["Charts: uPlot (MIT)."] : []), ...(page.map ? ["Map: Leaflet (BSD 2-Clause)."] : []),
    ...(page.charts || page.map ? ["Their notices stand in the source of this page."] : [])].join(" ");
  let frame = own("frame.html");
  for (const [mark, value] of [["csp", policy], ["sections", sections], ["credits", credits]]) frame = fill(frame, mark, value);
  const [head, rest] = frame.split("{{styles}}");
  const [body, foot] = rest.split("{{scripts}}");
  const elements = (tag, texts) => texts.flatMap((text) => [part(`<${tag}>`), part(text), part(`</${tag}>\n`)]);
  return [part(head), ...elements("style", styleTexts), part(body), ...elements("script", scriptTexts), part(foot)];
}

const lists = Object.entries(pages).map(([name, page]) => [name, partsOf(name, page)]);
const fence = "page";
const literal = (text) => {
  if (text.includes(")" + fence + '"')) throw new Error("the page holds the end of a raw string");
  return (text.match(/[\s\S]{1,30000}/g) ?? [""]).map((piece) => `R"${fence}(${piece})${fence}"`).join("\n");
};
writeFileSync(out, `// Written by tools/page/bundle.mjs: the pages without their data.
#include <string>
#include <string_view>
namespace maybough::report {
std::string page_frame(std::string_view page);
namespace {
${[...parts].map(([text, i]) => `constexpr char part_${i}[] =\n${literal(text)};`).join("\n")}
}  // namespace
std::string page_frame(std::string_view page) {
    std::string text;
    [[maybe_unused]] const auto add = [&text](std::string_view piece) { text.append(piece); };
${lists.map(([name, list]) => `    if (page == "${name}") {\n${list.map((i) => `        add({part_${i}, sizeof part_${i} - 1});`).join("\n")}\n    }`).join("\n")}
    return text;
}
}  // namespace maybough::report
`);
