"""The replay pages in headless Chromium: no error, no request, charts and canvas have marks, the slider moves what is
shown, play moves the clock, keys reach everything, names stay text, no serious accessibility fault (axe-core), nothing
overflows at 390 and 1440 px. Arguments: folder of the sample files, axe.min.js. Pictures are left in the folder."""
import json
import pathlib
import re
import sys

from browser import Browser

folder, axe = pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2])
CANVAS = """(() => { const c = document.querySelector('%s'); const copy = new OffscreenCanvas(c.width, c.height);
    const pen = copy.getContext('2d', { willReadFrequently: true }); pen.drawImage(c, 0, 0);
    const d = pen.getImageData(0, 0, c.width, c.height).data; let sum = 0; const kinds = new Set();
    new Uint32Array(d.buffer).forEach((v, i) => { if (v) { sum = (sum * 31 + v + i) %% 4294967291; kinds.add(v); } });
    return [kinds.size, sum]; })()"""
PAGES = {
    "replay_season": ("canvas.players", ["warmth", "flight", "forage", "bees", "own-bees", "own-urge", "map"]),
    "replay_hunt": ("canvas.scene", ["dances-0", "dances-1"]),
}


def island(page):
    text = page.read_text(encoding="utf-8")
    return json.loads(re.search(r'id="data">(.*?)</script>', text, re.S).group(1))


def set_slider(browser, value):
    browser.run(f"(() => {{ const s = document.getElementById('slider'); s.value = {value}; s.dispatchEvent(new Event('input')); }})()")


def check_view(browser, page, canvas, charts, width, height, scheme):
    browser.screen(width, height, scheme)
    browser.open(page)
    assert browser.run("Number(document.documentElement.dataset.ready) > 0"), browser.problems
    assert not browser.problems, browser.problems
    assert browser.requests == ["file://" + str(page)], browser.requests
    over = browser.run("document.documentElement.scrollWidth - document.documentElement.clientWidth")
    assert over <= 0, f"{over} px too wide at {width}"
    wider = browser.run("[...document.querySelectorAll('canvas')].filter(c => c.getBoundingClientRect().width > c.parentElement.clientWidth + 1).length")
    assert wider == 0, f"{wider} canvases wider than their place at {width}"
    for chart in charts:
        assert int(browser.run(f"document.getElementById('{chart}').dataset.marks")) > 0, chart
    set_slider(browser, browser.run("Number(document.getElementById('slider').max) * 0.55"))
    kinds, _ = browser.run(CANVAS % canvas)
    assert kinds > 8, f"{canvas} shows {kinds} colours"
    browser.picture(folder / f"{page.stem}-{width}-{scheme}.png")


def check_slider(browser, canvas):
    """Another moment shows another picture and another clock; arrow keys move it; play runs and stops."""
    states = []
    most = browser.run("Number(document.getElementById('slider').max)")
    for part in (0.03, 0.06, 0.09, 0.12, 0.4, 0.6, 0.7, 0.8):  # some may be nights, or after the swarm moved in
        set_slider(browser, most * part)
        states.append((browser.run("document.getElementById('clock').textContent"), tuple(browser.run(CANVAS % canvas))))
    assert len(set(states)) == 8 and len({s[1] for s in states}) >= 3, states
    browser.run("document.getElementById('slider').focus()")
    before = browser.run("Number(document.getElementById('slider').value)")
    browser.key("ArrowRight", 39)
    assert browser.run("Number(document.getElementById('slider').value)") == before + 1
    browser.run("document.getElementById('play').focus()")
    browser.key("Enter", 13)
    browser.run("new Promise(done => setTimeout(done, 700))")
    browser.key("Enter", 13)
    after = browser.run("Number(document.getElementById('slider').value)")
    assert after > before + 1, (before, after)
    browser.run("new Promise(done => setTimeout(done, 200))")
    assert browser.run("Number(document.getElementById('slider').value)") == after


def frames(browser):
    """Frames a second while playing, by the browser's own animation clock, and the longest script time of a frame."""
    set_slider(browser, browser.run("Number(document.getElementById('slider').max) * 0.3"))
    return browser.run("""new Promise(done => { document.getElementById('play').click(); const stamps = [];
        const step = (t) => { stamps.push(t); if (stamps.length < 121) requestAnimationFrame(step); else {
          document.getElementById('play').click();
          const gaps = stamps.slice(1).map((v, i) => v - stamps[i]).sort((a, b) => a - b);
          done([1000 * 120 / (stamps[120] - stamps[0]), gaps[60], gaps[114]]); } }; requestAnimationFrame(step); })""")


def check_keys(browser):
    wanted = browser.run("""(() => { const all = [...document.querySelectorAll('a[href], button, summary, input, select, [tabindex="0"]')]
        .filter(e => e.checkVisibility()); all.forEach((e, i) => e.dataset.nr = i); return all.length; })()""")
    browser.run("document.body.focus()")
    reached = set()
    for _ in range(3 * wanted):
        browser.key("Tab", 9)
        reached.add(browser.run("document.activeElement.dataset.nr ?? ''"))
    missing = {str(i) for i in range(wanted)} - reached
    assert not missing, [browser.run(f"document.querySelector('[data-nr=\"{i}\"]').outerHTML") for i in missing]


def check_access(browser):
    browser.run(axe.read_text(encoding="utf-8") + "; 0")
    faults = browser.run("axe.run().then(r => r.violations.map(v => [v.impact, v.id, v.nodes.map(n => n.target.join(' '))]))")
    serious = [fault for fault in faults if fault[0] in ("serious", "critical")]
    assert not serious, serious


def check_season(browser, data):
    """At the end of the season the tally equals the swarms' fates; a chosen colony tells its own story."""
    set_slider(browser, browser.run("Number(document.getElementById('slider').max)"))
    told = dict(browser.run("[...document.querySelectorAll('#tally dt')].map(d => [d.textContent, d.nextSibling.textContent])"))
    fates = [swarm["fate"] for swarm in data["swarms"]]
    last = int(browser.run("document.getElementById('slider').max")) * 240
    if all(swarm["ended"] <= last for swarm in data["swarms"]):
        assert told["Swarms so far"] == str(len(fates)), told
        for words, fate in (("caught in traps", "caught"), ("in natural cavities", "settled"), ("hived by somebody", "hived"), ("lost", "lost")):
            assert told[words] == str(fates.count(fate)), (told, fate)
    parent = next(swarm["colony"] for swarm in data["swarms"] if swarm["fate"] == "caught")
    browser.run(f"(() => {{ const c = document.getElementById('chosen'); c.value = '{parent}'; c.dispatchEvent(new Event('change')); }})()")
    story = browser.run("document.getElementById('story').textContent")
    assert "began queen cells" in story and "caught in trap" in story, story
    assert browser.run("document.querySelectorAll('#parts progress').length") == 5
    fixed = browser.run("document.getElementById('parts').textContent")
    browser.run("document.getElementById('follow').click()")
    told = set()
    for day in (60, 120, 125):
        set_slider(browser, day)
        told.add(browser.run("document.getElementById('parts-title').textContent + document.getElementById('parts').textContent"))
    assert len(told) == 3, told
    browser.run("document.getElementById('follow').click()")
    assert browser.run("document.getElementById('parts').textContent") == fixed
    assert "<img src=x onerror=alert(2)>" in browser.run("document.getElementById('swarms').textContent")


def check_lives(browser):
    """What the page makes of the events: no scout is in two places, no dance or visit is lost, and the gauge of the chosen
    site is full when the quorum is told."""
    overlaps, danced, dances, visited, visits, full = browser.run("""(() => { const all = sides.flatMap(s => s.lives);
        const count = (kind) => sides.flatMap(s => s.events).filter(e => e.kind === kind).length;
        const made = (what) => all.flat().filter(s => s[2] === what).length;
        const full = sides.filter(s => s.run.chosen >= 0).map(s => { const m = Math.floor(s.run.decision / 2);
          return Math.max(...s.counts.outside[s.run.chosen].slice(m - 45, m + 1)) >= s.run.quorum; });
        return [all.filter(l => l.some((s, i) => s[1] <= s[0] || (i > 0 && s[0] < l[i - 1][1]))).length,
          count('danced'), made(doing.dance), count('visited'), made(doing.there), full]; })()""")
    assert overlaps == 0, overlaps
    assert danced > 100 and 0.99 * danced <= dances <= danced, (danced, dances)
    # A few visits are so short that the way home takes all of the time that the events leave.
    assert 0.9 * visited <= visits <= visited, (visited, visits)
    assert full and all(full), full


def check_hunt(browser, data):
    """At the end both runs say where the swarm went; the state's words are the data's."""
    set_slider(browser, browser.run("Number(document.getElementById('slider').max)"))
    check_lives(browser)
    said = browser.run("[...document.querySelectorAll('.state')].map(p => p.textContent)")
    for run, words in zip(data["runs"], said):
        if run["chosen"] >= 0:
            assert words == f"Home: the swarm has moved into {run['sites'][run['chosen']]['name']}.", words
    assert "<img src=x onerror=alert(2)>" in browser.run("document.getElementById('sites').textContent")


browser = Browser()
try:
    for name, (canvas, charts) in PAGES.items():
        page = folder / f"{name}.html"
        for width, height in ((390, 844), (1440, 900)):
            for scheme in ("light", "dark"):
                check_view(browser, page, canvas, charts, width, height, scheme)
                check_access(browser)
        assert browser.run("document.querySelectorAll('main img, header img').length") == 0
        check_slider(browser, canvas)
        check_keys(browser)
        (check_season if name == "replay_season" else check_hunt)(browser, island(page))
        print(f"{name}: %.1f frames a second playing at 1440 px; median gap %.1f ms, 95 %% under %.1f ms" % tuple(frames(browser)))
        assert not browser.problems, browser.problems
    print("the replays stand in all four views")
finally:
    browser.close()
