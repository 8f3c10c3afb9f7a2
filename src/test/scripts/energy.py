"""What a ewe needs, MJ ME a day, by SCA 1990 and AFRC 1993: docs/method/energy.md."""

from math import exp, log

import checkfile

AGE = 4
M_D = 10.0
DIGESTIBILITY = 0.68
TERRAIN = 1
GREEN = 1.5


def sca_dry(w):
    km = 0.02 * M_D + 0.5
    maintenance = 0.28 * w**0.75 * exp(-0.03 * min(AGE, 6)) / km
    dmi = 0.02 * w
    grazing = (0.05 * dmi * (0.9 - DIGESTIBILITY) + 0.05 * TERRAIN / (GREEN + 3)) * w / km
    return maintenance + grazing


def afrc_dry(w, activity=0.0107, m_d=M_D):
    q = m_d / 18.4
    return (0.23 * (w / 1.08) ** 0.75 + activity * w) / (0.35 * q + 0.503)


def conceptus(day, litter):
    """Slope of the Gompertz curve by central difference, not by its formula."""

    def uterus(t):
        return 10 ** (3.322 - 4.979 * exp(-0.00643 * t))

    h = 1e-3
    slope = (8 * (uterus(day + h) - uterus(day - h)) - (uterus(day + 2 * h) - uterus(day - 2 * h))) / (12 * h)
    return litter / 4 * slope / 0.133


def sca_milk(kg):
    return 1.1 * kg * 4.7 / (0.02 * M_D + 0.4)


def afrc_milk(kg):
    return kg * 4.6 / (0.35 * M_D / 18.4 + 0.420)


def main():
    rows = []
    for w in (38.0, 45.0, 50.0, 57.5, 66.0, 80.0):
        rows.append(["SCA_1990", "dry", w, 0, 0, sca_dry(w)])
        rows.append(["AFRC_1993", "dry", w, 0, 0, afrc_dry(w)])
        for day in (20, 63, 100, 133, 147):
            for litter in (4.2, 7.7):
                rows.append(["SCA_1990", "pregnant", w, day, litter, sca_dry(w) + 1.1 * conceptus(day, litter)])
                rows.append(["AFRC_1993", "pregnant", w, day, litter, afrc_dry(w) + conceptus(day, litter)])
        for milk in (0.5, 1.4, 2.3):
            rows.append(["SCA_1990", "milk", w, 0, milk, sca_dry(w) + sca_milk(milk)])
            rows.append(["AFRC_1993", "milk", w, 0, milk, afrc_dry(w) + afrc_milk(milk)])
    checkfile.write(
        "energy.csv", "energy.py", "docs/method/energy.md", ["method", "state", "weight_kg", "day", "kg", "mj_per_day"], rows
    )


if __name__ == "__main__":
    main()
