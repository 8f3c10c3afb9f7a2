"""The feed budget in vectorised numpy: docs/method/feed-budget.md.

Python 3.11.2 and numpy 1.24.2, both Debian's (python3-numpy). Run by compare.sh; see docs/performance.md.
"""

from types import SimpleNamespace

import grid_numpy
import numpy as np

OTHER = np.array([0.4, 0.7, 0.85, 0.95, 1.0, 1.05])
BELOW = np.array([0.35, 0.6, 0.75, 0.87])
START_DRY_KG = 2000.0
TOLERANCE_KG = 1e-6
MOST_YEARS = 100


def settings(farm, x):
    """The drawn numbers of the feed budget, [draw] each."""
    return SimpleNamespace(
        bound=x[farm.at_leaf_area_bound],
        penalty=x[farm.at_leaf_area_penalty],
        met=x[farm.at_demand_multiplier] * (1 - x[farm.at_condition_deficit]),
        dry_loss=x[farm.at_dry_loss_multiplier],
    )


def feed_year(farm, feed, draw, season, w, o, eaten=None):
    """Energy bought in a year that repeats itself, MJ/ha: one value for each lane (draw, season, w, o)."""
    factor = np.where(farm.winter[:, None], w, o)
    grown_full = farm.growth[season].T * factor
    decay = 1 - np.sqrt(1 - np.minimum(1, farm.dry_lost_per_month[:, None] * feed.dry_loss))[:, draw]
    dying = 1 - np.sqrt(1 - farm.dying_per_month)
    appetite = farm.ewe_kg + farm.other_kg
    need = farm.ewe_mj + farm.other_mj
    bound, penalty, met = feed.bound[draw], feed.penalty[draw], feed.met[draw]
    per_kg, rise = farm.availability_per_kg, farm.availability_rise
    result = np.empty(len(draw))
    lanes = np.arange(len(draw))
    green, dry = np.zeros(len(draw)), np.full(len(draw), START_DRY_KG)
    for _ in range(MOST_YEARS):
        green_start, dry_start = green, dry
        bought = np.zeros(len(lanes))
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
            eaten_green = np.minimum(there, filled * (appetite[p] * farm.green_quality[p]))
            filled_dry = available(dry * per_kg, rise)
            filled_dry *= np.maximum(0, 1 - filled)
            filled_dry *= appetite[p] * farm.dry_quality[p]
            eaten_dry = np.minimum(dry, filled_dry)
            there -= eaten_green
            green = there * (1 - dying[p])
            there *= dying[p]
            dry = dry - eaten_dry
            dry *= 1 - decay[p]
            dry += there
            short = need[p] * met
            short -= eaten_green * farm.green_mj_per_kg[p]
            short -= eaten_dry * farm.dry_mj_per_kg[p]
            bought += np.maximum(0, short)
            if eaten is not None:
                eaten[0][p, lanes] = eaten_green
                eaten[1][p, lanes] = eaten_dry
        result[lanes] = bought
        goes_on = (np.abs(green - green_start) > TOLERANCE_KG) | (np.abs(dry - dry_start) > TOLERANCE_KG)
        if not goes_on.any():
            break
        if not goes_on.all():
            lanes, green, dry = lanes[goes_on], green[goes_on], dry[goes_on]
            bound, penalty, met = bound[goes_on], penalty[goes_on], met[goes_on]
            grown_full, decay = grown_full[:, goes_on], decay[:, goes_on]
    return result


def available(b, rise):
    return (1 - np.exp(-b)) * (1 + rise * np.exp(-b * b))


def green_share(farm, x, feed, now):
    """Strength of intake by half-month as the farm stands, dry feed by its own factor: [24, draw]."""
    seasons, draws = len(farm.season_chance), len(now)
    eaten = np.zeros((2, 24, seasons * draws))
    feed_year(
        farm,
        feed,
        np.tile(np.arange(draws), seasons),
        np.repeat(np.arange(seasons), draws),
        np.tile(now, seasons),
        np.ones(seasons * draws),
        eaten,
    )
    green, dry = eaten.reshape(2, 24, seasons, draws)
    both = green + dry
    share = np.where(both > 0, (green + x[farm.at_dry_factor] * dry) / np.where(both > 0, both, 1), 0)
    return (share * farm.season_chance[:, None]).sum(1)


def read(farm, feed, now, w, o):
    """Energy bought at w and o, mean over season types, read between nodes: the shape of w."""
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
    size = (len(nodes), len(OTHER), len(now))

    def fill(at):
        node_a, node_b, draw = np.unravel_index(at, size)
        seasons = len(farm.season_chance)
        bought = feed_year(
            farm,
            feed,
            np.tile(draw, seasons),
            np.repeat(np.arange(seasons), len(at)),
            np.tile(nodes[node_a, draw], seasons),
            np.tile(OTHER[node_b], seasons),
        )
        return (farm.season_chance @ bought.reshape(seasons, -1),)

    return grid_numpy.between(a, b, u, v, size, fill)[0]
