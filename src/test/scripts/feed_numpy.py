"""The feed budget in vectorised numpy: docs/method/feed-budget.md.

Python 3.11.2 and numpy 1.24.2, both Debian's (python3-numpy). Run by compare.sh; see docs/performance.md.
"""

from types import SimpleNamespace

import grid_numpy
import numpy as np

OTHER = np.array([0.4, 0.7, 0.85, 0.9, 0.95, 0.975, 1.0, 1.05])
BELOW = np.array([0.35, 0.6, 0.75, 0.87, 0.94, 0.97])
START_DRY_KG = 2000.0
CLOSE_KG = 1e-6
NEAR_KG = 1e-3
CARRIED_KG = 0.3
MOST_YEARS = 100
MOST_LEFT = 0.9
TRUSTED_YEARS = 20


def settings(farm, x):
    """The drawn numbers of the feed budget, [draw] each, and what half-months have, [24, season, draw]."""
    later = np.where(farm.at_break[:, None] < 0, 0, farm.later_break[:, None] * x[farm.at_break])
    per_season = (len(farm.season_chance), 1)

    def move(usual):
        return moved(farm, np.broadcast_to(usual.T[..., None], (24, *per_season)) if usual.ndim > 1 else usual, later)

    return SimpleNamespace(
        bound=x[farm.at_leaf_area_bound],
        penalty=x[farm.at_leaf_area_penalty],
        met=x[farm.at_demand_multiplier] * (1 - x[farm.at_condition_deficit]),
        dry_loss=x[farm.at_dry_loss_multiplier],
        growth=move(farm.growth_per_day) * (farm.days * farm.farm_index)[:, None, None] * x[farm.at_growth_multiplier],
        green=eaten(farm, move(farm.green_eaten_digestibility) + x[farm.at_green_digestibility], x),
        dry=eaten(farm, move(farm.dry_standing_digestibility) + x[farm.at_dry_selection], x),
        dying=1 - (1 - move(farm.dying_per_month)) ** (x[farm.at_green_dying_multiplier] / 2),
        dry_lost=move(farm.dry_lost_per_month),
    )


def eaten(farm, digestibility, x):
    """Intake relative to unlimited good feed, and MJ/kg DM, of what is eaten: [24, season, draw] each."""
    d = np.clip(digestibility, 0, 1)
    quality = 1 - farm.intake_quality_slope * (farm.intake_quality_full - d) + farm.intake_legume * farm.farm_clover
    energy = farm.forage_energy_slope * 100 * d + farm.forage_energy_intercept
    return np.maximum(0, quality) * x[farm.at_intake_multiplier], np.maximum(0, energy)


def moved(farm, usual, later):
    """What half-months have whose break comes later: usual [24] or [24, season, 1], later [season, draw]."""
    start, length = int(farm.break_half_month), int(farm.to_end_of_winter)
    usual = np.broadcast_to(usual.reshape(24, -1, 1), (24, *later.shape))
    move = np.clip(later, length - 24, length - 1)
    speed = length / (length - move)
    first = np.minimum(0, np.floor(move)).astype(int)
    until_of = np.where(move > 0, start - 1, start + first) % 24
    until = np.take_along_axis(usual, until_of[None], 0)[0]
    sums = np.zeros((length + 1, *later.shape))
    for k in range(length):
        sums[k + 1] = sums[k] + usual[(start + k) % 24]

    def up_to(end):
        time = np.clip((end - move) * speed, 0, length)
        whole = np.minimum(np.floor(time).astype(int), length - 1)
        below = np.take_along_axis(sums, whole[None], 0)[0]
        above = np.take_along_axis(sums, whole[None] + 1, 0)[0]
        return until * (np.minimum(end, move) - first) + (below + (time - whole) * (above - below)) / speed

    into = usual.copy()
    for k in range(first.min(), length):
        p = (start + k) % 24
        into[p] = np.where((later == 0) | (k < first), into[p], up_to(k + 1) - up_to(k))
    return into


def usual(farm):
    """Start of the likely year without old cultivars, by season type: green and dry on 1 January."""
    seasons = len(farm.season_chance)
    feed = settings(farm, farm.likely[:, None])
    one = np.ones(seasons)
    start = np.zeros(seasons), np.full(seasons, START_DRY_KG)
    year = repeat(farm, feed, np.zeros(seasons, dtype=int), np.arange(seasons), one, one, False, *start)
    return year.green, year.dry


def repeat(farm, feed, draw, season, w, o, near, green, dry):
    """Runs the year until it repeats itself, one lane for each (draw, season, w, o, start); near: one of very many."""
    factor = np.where(farm.winter[:, None], w, o)
    grown_full = feed.growth[:, season, draw] * factor
    decay = 1 - np.sqrt(1 - np.minimum(1, feed.dry_lost * feed.dry_loss))[:, season, draw]
    dying = feed.dying[:, season, draw]
    green_quality, green_mj, dry_quality, dry_mj = (of[:, season, draw] for of in (*feed.green, *feed.dry))
    appetite = farm.ewe_kg + farm.other_kg
    need = farm.ewe_mj + farm.other_mj
    bound, penalty, met = feed.bound[draw], feed.penalty[draw], feed.met[draw]
    per_kg, rise = farm.availability_per_kg, farm.availability_rise
    lanes = np.arange(len(draw))
    out = SimpleNamespace(
        bought=np.empty(len(draw)),
        green=np.empty(len(draw)),
        dry=np.empty(len(draw)),
        eaten=np.empty((2, 24, len(draw))),
    )
    eaten = np.empty((2, 24, len(draw)))
    for year in range(1, MOST_YEARS + 1):
        green_start, dry_start = green, dry
        bought = np.zeros(len(lanes))
        dry_more = np.ones(len(lanes))
        bought_more = np.zeros(len(lanes))
        for p in range(24):
            grown = np.minimum(1, green / bound)
            grown -= 1
            grown *= penalty
            grown += 1
            grown *= grown_full[p]
            there = green + grown
            b = grown
            b *= 0.5
            b += green
            b *= per_kg
            filled = available(b, rise)
            eaten_green = np.minimum(there, filled * (appetite[p] * green_quality[p]))
            filled_dry, slope = available_and_slope(dry * per_kg, rise)
            hungry = np.maximum(0, 1 - filled)
            hungry *= appetite[p] * dry_quality[p]
            filled_dry *= hungry
            slope *= hungry
            slope *= per_kg
            eaten_more = dry_more * np.where(filled_dry > dry, 1, slope)
            eaten_dry = np.minimum(dry, filled_dry)
            there -= eaten_green
            green = there * (1 - dying[p])
            there *= dying[p]
            dry = dry - eaten_dry
            dry *= 1 - decay[p]
            dry += there
            dry_more -= eaten_more
            dry_more *= 1 - decay[p]
            short = need[p] * met
            short -= eaten_green * green_mj[p]
            short -= eaten_dry * dry_mj[p]
            bought += np.maximum(0, short)
            eaten_more *= short > 0
            eaten_more *= dry_mj[p]
            bought_more -= eaten_more
            eaten[0, p] = eaten_green
            eaten[1, p] = eaten_dry
        move_green, move = np.abs(green - green_start), dry - dry_start
        repeats = (move_green <= CLOSE_KG) & (np.abs(move) <= CLOSE_KG)
        move = move / (1 - np.where(dry_more < MOST_LEFT, dry_more, 0)) if year < TRUSTED_YEARS else move
        if near:
            carried = (move_green <= NEAR_KG) & (np.abs(move) <= CARRIED_KG)
            bought = np.where(carried, np.maximum(0, bought + move * bought_more), bought)
            repeats |= carried
        if year == MOST_YEARS:
            repeats[:] = True
        done = lanes[repeats]
        out.bought[done], out.green[done], out.dry[done] = bought[repeats], green[repeats], dry[repeats]
        out.eaten[:, :, done] = eaten[:, :, repeats]
        if repeats.all():
            break
        dry = np.maximum(0, dry_start + move)
        if repeats.any():
            on = ~repeats
            lanes, green, dry = lanes[on], green[on], dry[on]
            bound, penalty, met = bound[on], penalty[on], met[on]
            grown_full, decay, dying = grown_full[:, on], decay[:, on], dying[:, on]
            green_quality, green_mj = green_quality[:, on], green_mj[:, on]
            dry_quality, dry_mj = dry_quality[:, on], dry_mj[:, on]
            eaten = np.empty((2, 24, len(lanes)))
    return out


def available(b, rise):
    return (1 - np.exp(-b)) * (1 + rise * np.exp(-b * b))


def available_and_slope(b, rise):
    """Availability and what it gains with b."""
    kept = np.exp(-b)
    bell = rise * np.exp(-b * b)
    slope = kept * (1 + bell)
    kept = 1 - kept
    slope -= 2 * b * bell * kept
    bell += 1
    bell *= kept
    return bell, slope


def as_it_stands(farm, feed, now):
    """The year of every season type as the farm stands: arrays [season, draw]."""
    seasons, draws = len(farm.season_chance), len(now)
    season = np.repeat(np.arange(seasons), draws)
    draw = np.tile(np.arange(draws), seasons)
    w, o = np.tile(now, seasons), np.ones(seasons * draws)
    year = repeat(farm, feed, draw, season, w, o, False, *(of[season] for of in farm.usual))
    return SimpleNamespace(
        green=year.green.reshape(seasons, draws),
        dry=year.dry.reshape(seasons, draws),
        eaten=year.eaten.reshape(2, 24, seasons, draws),
    )


def green_share(farm, x, stands):
    """Strength of intake by half-month as the farm stands, dry feed by its own factor: [24, draw]."""
    green, dry = stands.eaten
    both = green + dry
    share = np.where(both > 0, (green + x[farm.at_dry_factor] * dry) / np.where(both > 0, both, 1), 0)
    return (share * farm.season_chance[:, None]).sum(1)


def read(farm, feed, stands, now, season, w, o):
    """Energy bought in a season type at w and o, read between nodes: the shape of w, the draws last."""
    low = np.minimum(now, 1)
    nodes = np.concatenate(
        [
            BELOW[:, None] * low,
            [
                low,
                np.where(low < 1, (low + 1) / 2, 1.005),
                np.where(low < 1, 1, 1.01),
                np.maximum(1.05, now + 0.05),
            ],
        ]
    )
    a = np.zeros(w.shape, dtype=int)
    for node in nodes[1:-1]:
        a += w >= node
    b = np.searchsorted(OTHER[1:-1], o, side="right")
    draws = np.arange(len(now))
    left = nodes[a, draws]
    u = np.clip((w - left) / (nodes[a + 1, draws] - left), 0, 1)
    v = np.clip((o - OTHER[b]) / (OTHER[b + 1] - OTHER[b]), 0, 1)
    size = (len(farm.season_chance) * len(nodes), len(OTHER), len(now))

    def fill(at):
        place, node_b, draw = np.unravel_index(at, size)
        of, node_a = np.divmod(place, len(nodes))
        start = stands.green[of, draw], stands.dry[of, draw]
        year = repeat(farm, feed, draw, of, nodes[node_a, draw], OTHER[node_b], True, *start)
        return (year.bought,)

    return grid_numpy.between(a + season * len(nodes), b, u, v, size, fill)[0]
