"""Every page in headless Chromium: no error, no request, every chart and map has marks, figures equal the results
files', nothing overflows at 390 and 1440 px, keys reach everything, no serious accessibility fault (axe-core), names
that would be markup stay text, small enough and soon ready.
Arguments: folder of the sample files, axe.min.js. Pictures of all views are left in the folder."""
import pathlib
import sys

from browser import Browser
from page_figures import FIGURES

folder, axe = (pathlib.Path(word).resolve() for word in sys.argv[1:3])

# What each page draws: charts on canvas, and drawings of SVG or HTML that count their marks too.
PAGES = {
    "plan": {"charts": ["catch-chart", "net-chart", "season-chart"], "drawn": ["map"]},
    "season": {"charts": ["spread-chart", "season-chart"], "drawn": ["map", "by-trap"]},
    "compare": {"charts": ["sides-chart"], "drawn": ["map", "net-against", "catches-against"]},
    "forecast": {"charts": ["next-chart", "dates-chart", "weeks-chart"], "drawn": ["map"]},
    "hindcast": {"charts": ["skill-chart", "crps-chart", "coverage-chart", *(f"ranks-{i}" for i in range(2))], "drawn": []},
    "learn": {"charts": ["traps-chart"], "drawn": ["map", "unknowns"]},
    "verify": {"charts": [], "drawn": ["positions"]},
}
MOST_BYTES = 2_000_000
MOST_MS = 1000  # from the start of navigation to the page's own mark, when all is drawn and controls work; best of four


def url(path):
    return "file://" + str(path)


def check_whole(browser, path):
    """Opened: script ran to its end, said nothing on the console, asked for nothing."""
    browser.open(path)
    assert browser.run("document.documentElement.dataset.ready"), (path.name, browser.problems)
    assert not browser.problems, (path.name, browser.problems)
    assert browser.requests == [url(path)], (path.name, browser.requests)


def check_width(browser, path, width):
    over = browser.run("document.documentElement.scrollWidth - document.documentElement.clientWidth")
    assert over <= 0, f"{path.name}: {over} px too wide at {width}"


def check_marks(browser, name):
    for part in PAGES[name]["charts"] + PAGES[name]["drawn"]:
        assert int(browser.run(f"document.getElementById('{part}').dataset.marks")) > 0, (name, part)
    for chart in PAGES[name]["charts"]:
        drawn = browser.run(f"""(() => {{ const c = document.querySelector('#{chart} canvas');
            const d = c.getContext('2d').getImageData(0, 0, c.width, c.height).data;
            return new Set(new Uint32Array(d.buffer)).size; }})()""")
        assert drawn > 20, f"{name}: {chart} shows {drawn} colours"
    if "map" in PAGES[name]["drawn"]:
        assert browser.run("document.querySelectorAll('#map path').length") >= 8, name
    for row in browser.run("[...document.querySelectorAll('svg.strip, svg.place')].map(s => s.childElementCount)"):
        assert row >= 2, name


def check_ready(ready, name, path):
    size = path.stat().st_size
    assert size < MOST_BYTES, f"{path.name} is {size} bytes"
    assert ready < MOST_MS, f"{path.name} is ready after {ready} ms"
    print(f"{name}: {size / 1000:.0f} kB, ready after {ready} ms")


def check_access(browser, name):
    browser.run(axe.read_text(encoding="utf-8") + "; 0")
    faults = browser.run("axe.run().then(r => r.violations.map(v => [v.impact, v.id, v.nodes.map(n => n.target.join(' '))]))")
    serious = [fault for fault in faults if fault[0] in ("serious", "critical")]
    assert not serious, (name, serious)


def check_keys(browser, name):
    """Tab goes through every control."""
    wanted = browser.run("""(() => { const all = [...document.querySelectorAll('a[href], button, summary, select, input, [tabindex="0"]')]
        .filter(e => e.checkVisibility()); all.forEach((e, i) => e.dataset.nr = i); return all.length; })()""")
    browser.run("document.body.focus()")
    missing = {str(i) for i in range(wanted)}
    for _ in range(4 * wanted):  # shapes on the map can be reached too
        browser.key("Tab", 9)
        missing.discard(browser.run("document.activeElement.dataset.nr ?? ''"))
        if not missing:
            break
    assert not missing, (name, [browser.run(f"document.querySelector('[data-nr=\"{i}\"]').outerHTML") for i in missing])


def check_theme(browser, name):
    """The reader's own choice of light or dark, by key."""
    paper = "getComputedStyle(document.documentElement).backgroundColor"
    before = browser.run(paper)
    browser.run("document.getElementById('theme').focus()")
    browser.key("Enter", 13)
    assert browser.run(paper) != before, name
    assert not browser.problems, (name, browser.problems)


def check_text_stays_text(browser, name):
    path = folder / f"hostile-{name}.html"
    check_whole(browser, path)
    assert browser.run("document.querySelectorAll('img').length") == 0, name
    assert browser.run("document.querySelectorAll('script').length") == browser.run("document.scripts.length")
    assert "<img src=x onerror=alert(1)> </script>" in browser.run("document.body.innerText"), name
    check_width(browser, path, 390)


def check_map_by_keys(browser, path):
    """Enter on a card's button opens that trap on the map; the map zooms by its buttons without a request."""
    browser.run("document.querySelector('#cards button').focus()")
    browser.key("Enter", 13)
    assert "Trap 1," in (browser.run("document.querySelector('.leaflet-popup')?.textContent ?? ''"))
    scale = "document.querySelector('#map .leaflet-control-scale-line').textContent"
    before = browser.run(scale)
    browser.run("document.querySelector('.leaflet-control-zoom-in').focus()")
    for _ in range(4):
        browser.key("Enter", 13)
    browser.run("new Promise(done => setTimeout(done, 600))")
    assert browser.run(scale) != before
    assert browser.requests == [url(path)], browser.requests


def check_page(browser, name):
    path = folder / f"{name}.html"
    ready = []
    for width, height in ((390, 844), (1440, 900)):
        for scheme in ("light", "dark"):
            browser.screen(width, height, scheme)
            check_whole(browser, path)
            ready.append(int(browser.run("document.documentElement.dataset.ready")))
            check_width(browser, path, width)
            check_marks(browser, name)
            browser.picture(folder / f"{name}-{width}-{scheme}.png")
            check_access(browser, f"{name} at {width}, {scheme}")
    check_ready(min(ready), name, path)
    FIGURES[name](browser, folder)
    check_keys(browser, name)
    if name == "plan":
        check_map_by_keys(browser, path)
    check_theme(browser, name)
    browser.screen(390, 844, "light")
    check_text_stays_text(browser, name)


def check_paper(browser):
    """The plan on paper, from a dark screen: two sheets of A4."""
    browser.screen(1440, 900, "dark")
    check_whole(browser, folder / "plan.html")
    browser.paper(folder / "plan.pdf")
    sheets = (folder / "plan.pdf").read_bytes().count(b"/Type /Page\n")
    assert sheets == 2, f"the plan prints on {sheets} sheets"


browser = Browser()
try:
    for wanted in sys.argv[3:] or PAGES:
        check_page(browser, wanted)
    check_paper(browser)
    print("the pages stand in all views")
finally:
    browser.close()
