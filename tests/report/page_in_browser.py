"""The plan page in headless Chromium: no error, no request, charts and map have marks, figures equal the results
file's, nothing overflows at 390 and 1440 px, keys reach everything, no serious accessibility fault (axe-core).
Arguments: folder of the sample files, axe.min.js. Pictures of all four views are left in the folder."""
import pathlib
import sys

import h5py

from browser import Browser

folder, axe = (pathlib.Path(word).resolve() for word in sys.argv[1:3])
page = folder / "plan.html"


def check_view(browser, width, height, scheme):
    browser.screen(width, height, scheme)
    browser.open(page)
    assert browser.run("document.documentElement.dataset.ready"), browser.problems
    assert not browser.problems, browser.problems
    assert browser.requests == ["file://" + str(page)], browser.requests
    over = browser.run("document.documentElement.scrollWidth - document.documentElement.clientWidth")
    assert over <= 0, f"{over} px too wide at {width}"
    for chart in ("catch-chart", "net-chart", "season-chart", "map"):
        assert int(browser.run(f"document.getElementById('{chart}').dataset.marks")) > 0, chart
    for chart in ("catch-chart", "net-chart", "season-chart"):
        drawn = browser.run(f"""(() => {{ const c = document.querySelector('#{chart} canvas');
            const d = c.getContext('2d').getImageData(0, 0, c.width, c.height).data;
            return new Set(new Uint32Array(d.buffer)).size; }})()""")
        assert drawn > 20, f"{chart} shows {drawn} colours"
    assert browser.run("document.querySelectorAll('#map path').length") >= 8
    browser.picture(folder / f"page-{width}-{scheme}.png")


def check_figures(browser):
    """The tables of the page against the results file of the same plan."""
    cells = browser.run("[...document.querySelectorAll('#curve tbody tr')].map(r => [...r.cells].map(c => c.textContent))")
    with h5py.File(folder / "results.h5", "r") as file:
        curve = file["plan/curve"]
        best = int(file["plan/summary/recommended"][0])
        assert len(cells) == len(curve["traps"])
        for row, told in enumerate(cells):
            assert told[0] == str(curve["traps"][row])
            assert told[1] == f"{curve['catches_mean'][row]:.2f} ± {curve['catches_se'][row]:.2f}", told
            assert float(told[4]) == round(curve["cost_mean"][row]), told
            assert told[6] == f"{curve['net_mean'][row]:.0f} ± {curve['net_se'][row]:.0f}", told
        shown = browser.run("[...document.querySelectorAll('.figures dd')].map(d => d.firstChild.textContent)")
        assert shown[0] == str(best) and shown[1] == f"{curve['catches_mean'][best]:.1f}", shown
        names = [name.decode() for name in file["scenario/spots/name"][()]]
        used = [names[i] for i in file["plan/traps/spot"][()]]
    cards = browser.run("[...document.querySelectorAll('.cards h3 span:last-child')].map(s => s.textContent)")
    assert cards == used, (cards, used)


def check_text_stays_text(browser):
    assert browser.run("document.querySelectorAll('main img, header img, footer img').length") == 0
    assert "<img src=x onerror=alert(1)>" in browser.run("document.querySelector('#cards').textContent")


def check_keys(browser):
    """Tab goes through every control; Enter on a card's button opens that trap on the map."""
    wanted = browser.run("""(() => { const all = [...document.querySelectorAll('a[href], button, summary, [tabindex="0"]')]
        .filter(e => e.checkVisibility()); all.forEach((e, i) => e.dataset.nr = i); return all.length; })()""")
    browser.run("document.body.focus()")
    reached = set()
    for _ in range(3 * wanted):
        browser.key("Tab", 9)
        reached.add(browser.run("document.activeElement.dataset.nr ?? ''"))
    missing = {str(i) for i in range(wanted)} - reached
    assert not missing, [browser.run(f"document.querySelector('[data-nr=\"{i}\"]').outerHTML") for i in missing]
    browser.run("document.querySelector('#cards button').focus()")
    browser.key("Enter", 13)
    assert "Trap 1," in (browser.run("document.querySelector('.leaflet-popup')?.textContent ?? ''"))
    before = browser.run("document.querySelector('#map .leaflet-control-scale-line').textContent")
    browser.run("document.querySelector('.leaflet-control-zoom-in').focus()")
    for _ in range(4):
        browser.key("Enter", 13)
    browser.run("new Promise(done => setTimeout(done, 600))")
    assert browser.run("document.querySelector('#map .leaflet-control-scale-line').textContent") != before
    assert browser.requests == ["file://" + str(page)], browser.requests


def check_access(browser):
    browser.run(axe.read_text(encoding="utf-8") + "; 0")
    faults = browser.run("axe.run().then(r => r.violations.map(v => [v.impact, v.id, v.nodes.map(n => n.target.join(' '))]))")
    serious = [fault for fault in faults if fault[0] in ("serious", "critical")]
    assert not serious, serious


browser = Browser()
try:
    for width, height in ((390, 844), (1440, 900)):
        for scheme in ("light", "dark"):
            check_view(browser, width, height, scheme)
            check_access(browser)
    check_figures(browser)
    check_text_stays_text(browser)
    check_keys(browser)
    browser.screen(1440, 900, "dark")
    browser.open(page)
    browser.paper(folder / "page.pdf")
    assert not browser.problems, browser.problems
    print("the page stands in all four views")
finally:
    browser.close()
