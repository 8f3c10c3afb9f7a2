"""Ewes in lamb in vectorised numpy: docs/method/reproduction.md.

Python 3.11.2 and numpy 1.24.2, both Debian's (python3-numpy). Run by compare.sh; see docs/performance.md.
"""

import grid_numpy
import numpy as np

STRENGTHS = 49
SEASON_DAYS = 180
CYCLE = 17
RUN_UP_DAYS = 120


def more_in_lamb(farm, x, g, green, strongest, kept, sums):
    """Ewes of a mob in lamb beyond those as paddocks are grazed now, share of those joined: [plan, year, draw]."""
    story, steepness = np.rint(x[farm.at_story]), x[farm.at_steepness]
    d50 = np.where(story == 2, x[farm.at_d50_outbreaks], np.where(story == 1, x[farm.at_d50], np.inf))
    q = np.where(story == 2, x[farm.at_sterility_q_outbreaks], x[farm.at_sterility_q])
    reference = np.where(story == 0, 1, 1 - 1 / (1 + (x[farm.at_sterility_reference_dose] / d50) ** steepness))
    green_power = green**steepness
    held = farm.held[g][:, None]
    weeks = farm.joining_weeks[g]

    def effects(strength, strength_held, draw):
        power = (strength / d50[draw]) ** steepness[draw]
        power_held = (strength_held / d50[draw]) ** steepness[draw]
        return 1 - 1 / (1 + green_power[:, draw] * np.where(held, power_held, power))

    def exposure(effect, draw):
        return farm.days @ effect / SEASON_DAYS / reference[draw]

    def spared(season):
        return (1 - q) ** season

    now = kept[f"dose {g}"] / np.where(kept[f"grazed {g}"] > 0, kept[f"grazed {g}"], 1)
    draws = np.arange(len(now))
    effect = effects(now, now, draws)
    multiplier = joining(farm, x, g, effect, draws)
    sterile = 1 - whole_share(farm, g, spared(exposure(effect, draws)))
    told = x[farm.at_pregnant_percent[g]] / 100
    unaffected = unaffected_share(told, weeks, multiplier, sterile) if farm.observed[g] else told
    per_cycle = per_cycle_conception(unaffected, weeks)

    spacing = np.maximum(1e-6, strongest) / (STRENGTHS - 1)
    strength = ratio(sums[f"dose {g}"], sums[f"grazed {g}"], 0.0)
    strength_held = ratio(sums[f"dose held {g}"], sums[f"grazed held {g}"], strength)
    shape = strength.shape
    strength = np.concatenate([strength.reshape(-1, len(now)), now[None]]) / spacing
    strength_held = np.concatenate([strength_held.reshape(-1, len(now)), now[None]]) / spacing
    a = np.minimum(STRENGTHS - 2, strength.astype(int))
    b = np.minimum(STRENGTHS - 2, strength_held.astype(int))
    size = (STRENGTHS, STRENGTHS, len(now))

    def fill(at):
        node_a, node_b, draw = np.unravel_index(at, size)
        effect = effects(node_a * spacing[draw], node_b * spacing[draw], draw)
        in_lamb = pregnant_share(per_cycle[draw], weeks, joining(farm, x, g, effect, draw), 0)
        return exposure(effect, draw), in_lamb

    season, fertile = grid_numpy.between(a, b, np.minimum(1, strength - a), np.minimum(1, strength_held - b), size, fill)
    spared_now = spared(season[-1])
    now_in_lamb = whole_share(farm, g, spared_now) * fertile[-1]
    spared_years = spared(season[:-1]).reshape(shape)
    fertile = fertile[:-1].reshape(shape)
    share = np.empty(shape)
    for year in range(shape[1]):
        whole = 0
        product = 1
        for age, of in enumerate(farm.age_shares[g]):
            before = year - 1 - age
            product = product * (spared_years[:, before] if before >= 0 else spared_now)
            whole = whole + of * product
        share[:, year] = whole * fertile[:, year]
    return share - now_in_lamb


def ratio(dose, grazed, otherwise):
    some = grazed > 0
    return np.where(some, dose / np.where(some, grazed, 1), otherwise)


def whole_share(farm, g, spared):
    """Share of the joined ewes that are sound if every season spares so many."""
    return sum(of * spared ** (age + 1) for age, of in enumerate(farm.age_shares[g]))


def joining(farm, x, g, effect, draw):
    """Mean multiplier of each cycle of joining, [cycle, lane], from the full effect by half-month, [24, lane]."""
    lag = x[farm.at_lag_days][draw]
    whole_lag = np.floor(lag)
    half_life = x[farm.at_half_life_days][draw]
    lost_in_last_part = 1 - 2 ** (-(lag - whole_lag) / half_life)
    lost_in_rest = 1 - 2 ** (-(1 - (lag - whole_lag)) / half_life)
    rise = np.minimum(1, 1 / x[farm.at_ramp_days][draw])
    most_back = int(whole_lag.max()) + 1
    place = half_month_of_days(farm)
    days = max(1, int(np.ceil(7 * farm.joining_weeks[g] - 1e-9)))
    start = (int(farm.joining_day[g]) - RUN_UP_DAYS) % 365
    carried = effect[place[start]].copy()
    multiplier = np.zeros((cycles(farm.joining_weeks[g]), len(draw)))
    counted = np.zeros(len(multiplier))
    for known in range(1, RUN_UP_DAYS + days):
        target = effect[place[(start + known) % 365]]
        long_floor = target
        short_floor = target
        last = place[(start + known) % 365]
        for back in range(1, min(known, most_back) + 1):
            there = place[(start + known - back) % 365]
            if there != last:
                last = there
                long_floor = np.maximum(long_floor, effect[there] * (whole_lag + 1 >= back))
                short_floor = np.maximum(short_floor, effect[there] * (whole_lag >= back))
        risen = np.minimum(carried + target * rise, target)
        left = carried - np.maximum(0, carried - long_floor) * lost_in_last_part
        left -= np.maximum(0, left - short_floor) * lost_in_rest
        carried = np.maximum(risen, left)
        day = known - RUN_UP_DAYS
        if day >= 0:
            multiplier[day // CYCLE] += 1 - carried
            counted[day // CYCLE] += 1
    return multiplier / counted[:, None]


def half_month_of_days(farm):
    lengths = []
    for month in range(12):
        days = int(2 * farm.days[2 * month])
        lengths += [days // 2, days - days // 2]
    return np.repeat(np.arange(24), lengths)


def cycles(weeks):
    return max(1, int(np.ceil(7 * weeks / CYCLE - 1e-9)))


def per_cycle_conception(share, weeks):
    return 1 - (1 - share) ** (CYCLE / (7 * weeks))


def pregnant_share(per_cycle, weeks, multiplier, sterile):
    last = cycles(weeks) - 1
    empty = (1 - per_cycle * multiplier[last]) ** (7 * weeks / CYCLE - last)
    for of in multiplier[:last]:
        empty = empty * (1 - per_cycle * of)
    return (1 - sterile) * (1 - empty)


def unaffected_share(observed, weeks, multiplier, sterile):
    """Share in lamb without oestrogen, by bisection on the chance in one cycle."""
    highest = np.maximum(0.99, observed)
    low = per_cycle_conception(observed, weeks)
    high = per_cycle_conception(highest, weeks)
    none_hidden = pregnant_share(low, weeks, multiplier, sterile) >= observed
    never = pregnant_share(high, weeks, multiplier, sterile) <= observed
    for _ in range(52):
        middle = (low + high) / 2
        below = pregnant_share(middle, weeks, multiplier, sterile) < observed
        low = np.where(below, middle, low)
        high = np.where(below, high, middle)
    found = 1 - (1 - (low + high) / 2) ** (7 * weeks / CYCLE)
    return np.where(none_hidden, observed, np.where(never, highest, found))
