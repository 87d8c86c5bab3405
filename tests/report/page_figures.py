"""The figures that each page shows, read from the page and from the results file of the same run."""
import csv

import h5py

CELLS = "[...document.querySelectorAll('#{} tbody tr')].map(r => [...r.cells].map(c => c.textContent))"
FIRST = "[...document.querySelectorAll('.figures dd')].map(d => d.firstChild.textContent)"


def figure(value, decimals):
    """As the page writes a number: no -0."""
    text = f"{value:.{decimals}f}"
    return text[1:] if text.startswith("-") and not text.strip("-0.") else text


def with_error(table, name, row, decimals):
    return f"{figure(table[name + '_mean'][row], decimals)} ± {figure(table[name + '_se'][row], decimals)}"


def share(value):
    """As the page writes a share, ends apart."""
    return "<1 %" if 0 < value < 0.01 else ">99 %" if 0.99 < value < 1 else f"{figure(100 * value, 0)} %"


def rows_of(path):
    with open(path, newline="", encoding="utf-8") as file:
        return list(csv.DictReader(file))


def check_plan(browser, folder):
    cells = browser.run(CELLS.format("curve"))
    with h5py.File(folder / "results.h5", "r") as file:
        curve = file["plan/curve"]
        best = int(file["plan/summary/recommended"][0])
        assert len(cells) == len(curve["traps"])
        for row, told in enumerate(cells):
            assert told[0] == str(curve["traps"][row])
            assert told[1] == with_error(curve, "catches", row, 2), told
            assert float(told[4]) == round(curve["cost_mean"][row]), told
            assert told[6] == with_error(curve, "net", row, 0), told
        shown = browser.run(FIRST)
        assert shown[0] == str(best) and shown[1] == figure(curve["catches_mean"][best], 1), shown
        names = [name.decode() for name in file["scenario/spots/name"][()]]
        used = [names[i] for i in file["plan/traps/spot"][()]]
    cards = browser.run("[...document.querySelectorAll('.cards h3 span:last-child')].map(s => s.textContent)")
    assert cards == used, (cards, used)


def check_season(browser, folder):
    cells = browser.run(CELLS.format("fates"))
    decimals = [2, 1, 1, 3, 1, 1, 1, 0, 0, 0]
    with h5py.File(folder / "season.h5", "r") as file:
        table = file["season/estimates"]
        assert len(cells) == len(decimals)
        for row, told in enumerate(cells):
            assert told[1] == with_error(table, "estimate", row, decimals[row]), told
            assert told[3] == figure(table["estimate_sd_chance"][row], decimals[row]), told
        traps = browser.run("[...document.querySelectorAll('#by-trap .told')].map(s => s.textContent)")
        assert traps == [with_error(table, "estimate", len(decimals) + i, 2) + " a season" for i in range(len(traps))], traps
        none = sum(catches == 0 for catches in file["replicates/catches"][()]) / len(file["replicates/catches"])
        assert browser.run(FIRST)[2] == share(none)
        odds = browser.run("[...document.querySelectorAll('#odds .bar span:last-child')].map(s => s.textContent)")
        limits = zip(*(file[f"season/odds/share_of_seasons{end}"][()] for end in ("", "_low_95", "_high_95")), strict=True)
        assert odds == [f"{share(v)} ({100 * low:.0f} to {100 * high:.0f})" for v, low, high in limits if v >= 0.005], odds


def check_compare(browser, folder):
    cells = browser.run(CELLS.format("sides"))
    with h5py.File(folder / "compare.h5", "r") as file:
        table = file["compare/sides"]
        assert [told[1] for told in cells] == [name.decode() for name in table["name"][()]]
        for row, told in enumerate(cells):
            assert told[3] == with_error(table, "catches", row, 2), told
            assert told[7] == with_error(table, "net", row, 0), told
            if row:
                assert told[4] == with_error(table, "catches_less_first", row, 2), told
                assert told[8] == with_error(table, "net_less_first", row, 0), told
                assert told[9] == share(table["odds_better_than_first"][row]), told
        against = browser.run("[...document.querySelectorAll('#net-against .told')].map(s => s.textContent)")
        for row, told in enumerate(against, start=1):
            mean, half = table["net_less_first_mean"][row], table["net_less_first_half_width_95"][row]
            assert told == f"{figure(mean, 0)} ({figure(mean - half, 0)} to {figure(mean + half, 0)})", told


def check_forecast(browser, folder):
    weeks = [row for row in rows_of(folder / "weeks.csv") if float(row["swarms"]) >= 0.05 or float(row["normal_swarms"]) >= 0.05]
    cells = browser.run(CELLS.format("weeks"))
    assert len(cells) == len(weeks)
    for row, told in zip(weeks, cells):
        assert told[1] == figure(float(row["swarms"]), 1) and told[3] == figure(float(row["normal_swarms"]), 1), told
        assert told[2] == f"{figure(float(row['swarms_low_10']), 0)} to {figure(float(row['swarms_high_90']), 0)}", told
        assert told[4] == figure(float(row["catches"]), 2), told
    for row, told in zip(rows_of(folder / "days.csv"), browser.run(CELLS.format("next")), strict=True):
        assert told[1:5] == [share(float(row["odds_swarm"])), share(float(row["odds_normal"])), figure(float(row["swarms"]), 2),
                             share(float(row["odds_fit"]))], told
        assert told[5:7] == [figure(float(row["tmax_c"]), 1), figure(float(row["rain_mm"]), 1)], told
    days = browser.run("[...document.querySelectorAll('#agenda time')].map(t => t.dateTime.replaceAll('-', ''))")
    calendar = (folder / "agenda.ics").read_text(encoding="utf-8")
    assert days and all("DTSTART;VALUE=DATE:" + day in calendar for day in days), days


def check_hindcast(browser, folder):
    rows = rows_of(folder / "hindcast.csv")
    simulated = [row for row in rows if row["against"] == "simulated"]
    for row, told in zip(simulated, browser.run(CELLS.format("scores")), strict=True):
        assert told[3:6] == [figure(float(row["crps_days"]), 2), figure(float(row["crps_normal_days"]), 2),
                             f"{figure(float(row['skill']), 2)} ± {figure(float(row['skill_se']), 2)}"], told
        assert told[6:9] == [figure(float(row["bias_days"]), 1), figure(float(row["width_80_days"]), 1), share(float(row["coverage_80"]))], told
    observed = [row for row in rows if row["against"] == "observed"]
    for row, told in zip(observed, browser.run(CELLS.format("observed")), strict=True):
        assert told[2] == figure(float(row["crps_days"]), 2) and told[5].startswith(figure(float(row["skill"]), 2)), told


def check_verify(browser, folder):
    rows = rows_of(folder / "verify.csv")
    cards = browser.run("""[...document.querySelectorAll('.finding')].map(f => ({
        told: Object.fromEntries([...f.querySelectorAll('dt')].map(d => [d.textContent, d.nextSibling.textContent])),
        text: f.textContent }))""")
    for row, card in zip(rows, cards, strict=True):
        told = card["told"]
        assert told["published"] == row["published"] and told["verdict"] == row["verdict"].lower(), (row, told)
        simulated = told["simulated"].split(" ± ")[0]
        value = float(row["simulated"]) if row["simulated"] not in ("n/a", "nan", "") else None
        assert (simulated == "n/a") if value is None or value != value else abs(float(simulated) - value) <= 0.005 * abs(value), (row, told)
        assert row["source"] in card["text"], row
    assert browser.run(FIRST)[0] == f"{sum(row['verdict'].startswith('agrees') for row in rows)} of {len(rows)}"


def check_learn(browser, folder):
    """Learning writes no results file: the page's figures against its own block of data, as far as they are rounded."""
    data = browser.run("JSON.parse(document.getElementById('data').textContent)")
    for trap, told in zip(data["traps"], browser.run(CELLS.format("traps")), strict=True):
        assert told[3:8] == [str(trap["swarms"]), figure(trap["before"], 2), figure(trap["after"], 2), share(trap["odds_so_few"]),
                             share(trap["odds_so_many"])], told
    for year, told in zip(data["years"], browser.run(CELLS.format("years")), strict=True):
        assert told[2:5] == [str(year["swarms"]), figure(year["before"], 2), figure(year["after"], 2)], told
    for odds, told in zip((data["next"][key] for key in ("before", "after", "overlay")), browser.run(CELLS.format("next")), strict=True):
        assert told[1] == figure(odds["mean"], 2) and told[3] == share(odds["odds_none"]), told


FIGURES = {"plan": check_plan, "season": check_season, "compare": check_compare, "forecast": check_forecast,
           "hindcast": check_hindcast, "learn": check_learn, "verify": check_verify}
