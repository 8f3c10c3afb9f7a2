"""Writes the plan at likely values as a spreadsheet with live formulas (flat OpenDocument).

Python 3.11.2 and numpy 1.24.2, both Debian's; opened with LibreOffice 7.4.7. Run by compare.sh; see
docs/performance.md. Sheets: Cash (a row a year, net present value), Inputs, Paddocks (what the plan does to each,
given), Year (half-months), Feed (the budget by half-month of every year and season type until it repeats).
"""

from xml.sax.saxutils import quoteattr

SEASONS = ("poor", "average", "good")
FEED_YEARS = 12
HALF_MONTHS = 24
LANE = ("grown", "filled", "eaten green", "filled dry", "eaten dry", "green", "dry", "bought")
TOP = 5  # first row of the feed budget's half-months, from 0; the row above holds the start
INPUTS = (
    "supplement_price",
    "supplement_energy",
    "supplement_dry_matter",
    "supplement_waste",
    "discount_rate",
    "condition_deficit",
    "leaf_area_penalty",
    "leaf_area_bound",
    "demand_multiplier",
    "dry_loss_multiplier",
)
YEAR = (
    "winter",
    "growth poor",
    "growth average",
    "growth good",
    "appetite",
    "need",
    "green_quality",
    "dry_quality",
    "green_mj_per_kg",
    "dry_mj_per_kg",
    "dying",
    "decay",
)
PADDOCKS = ("winter", "other", "held", "cost", "margin")


def column(number):
    name = ""
    number += 1
    while number:
        number, digit = divmod(number - 1, 26)
        name = chr(65 + digit) + name
    return name


def at(col, row, sheet=""):
    return f"[{sheet}.{column(col)}{row + 1}]"


def fixed(col, row, sheet):
    return f"[${sheet}.${column(col)}${row + 1}]"


def along(col, first, last, sheet, last_col=None):
    end = column(col if last_col is None else last_col)
    return f"[${sheet}.${column(col)}${first + 1}:.${end}${last + 1}]"


def given(name):
    return fixed(1, INPUTS.index(name), "Inputs")


class Sheet:
    def __init__(self):
        self.cells = {}

    def put(self, col, row, value):
        """A number, a text, or a formula that starts with =."""
        self.cells[row, col] = value

    def xml(self, name):
        rows = {}
        for (row, col), value in self.cells.items():
            rows.setdefault(row, {})[col] = value
        yield f"<table:table table:name={quoteattr(name)}>"
        row = 0
        for number in sorted(rows):
            if number > row:
                yield f'<table:table-row table:number-rows-repeated="{number - row}"><table:table-cell/></table:table-row>'
            row = number + 1
            yield "<table:table-row>"
            col = 0
            for place in sorted(rows[number]):
                if place > col:
                    yield f'<table:table-cell table:number-columns-repeated="{place - col}"/>'
                col = place + 1
                yield cell(rows[number][place])
            yield "</table:table-row>"
        yield "</table:table>"


def cell(value):
    if isinstance(value, str) and value.startswith("="):
        return f"<table:table-cell table:formula={quoteattr('of:' + value)} office:value-type=\"float\"/>"
    if isinstance(value, str):
        return f'<table:table-cell office:value-type="string"><text:p>{value}</text:p></table:table-cell>'
    return f'<table:table-cell office:value-type="float" office:value="{float(value)!r}"/>'


def inputs_sheet(farm):
    sheet = Sheet()
    for row, name in enumerate(INPUTS):
        sheet.put(0, row, name.replace("_", " "))
        sheet.put(1, row, farm.likely[getattr(farm, "at_" + name)].item())
    return sheet


def year_sheet(farm):
    sheet = Sheet()
    for col, name in enumerate(YEAR):
        sheet.put(col, 0, name)
    for p in range(HALF_MONTHS):
        values = (
            farm.winter[p],
            *farm.growth[:, p],
            farm.ewe_kg[p] + farm.other_kg[p],
            farm.ewe_mj[p] + farm.other_mj[p],
            farm.green_quality[p],
            farm.dry_quality[p],
            farm.green_mj_per_kg[p],
            farm.dry_mj_per_kg[p],
            f"=1-SQRT(1-{farm.dying_per_month[p].item()!r})",
            f"=1-SQRT(1-MIN(1;{farm.dry_lost_per_month[p].item()!r}*{given('dry_loss_multiplier')}))",
        )
        for col, value in enumerate(values):
            sheet.put(col, p + 1, value)
    return sheet


def paddocks_sheet(farm):
    """Area, index and their product, then the years of winter growth, other growth, held feed, cost and margin."""
    sheet = Sheet()
    for row, area in enumerate(farm.area_ha):
        sheet.put(0, row, area)
        sheet.put(1, row, farm.likely[farm.at_growth_index[row]].item())
        sheet.put(2, row, f"={at(0, row)}*{at(1, row)}")
        for k, name in enumerate(PADDOCKS):
            for t in range(farm.years):
                sheet.put(3 + k * farm.years + t, row, getattr(farm, "case_" + name)[row, t])
    return sheet


def feed_sheet(farm):
    """Lanes side by side: every year of the plan, then the farm as it stands, each with every season type."""
    sheet = Sheet()
    per_kg, rise = repr(farm.availability_per_kg), repr(farm.availability_rise)
    bound, penalty = given("leaf_area_bound"), given("leaf_area_penalty")
    met = f"{given('demand_multiplier')}*(1-{given('condition_deficit')})"
    for lane in range((farm.years + 1) * len(SEASONS)):
        first = lane * len(LANE)
        t, season = divmod(lane, len(SEASONS))
        sheet.put(first, 0, f"{SEASONS[season]} {t}")
        sheet.put(first, 1, "=" + fixed(4, t + 1, "Cash"))
        sheet.put(first, 2, "=" + fixed(5, t + 1, "Cash"))
        w, o = fixed(first, 1, "Feed"), fixed(first, 2, "Feed")
        for col, name in enumerate(LANE):
            sheet.put(first + col, TOP - 2, name)
        sheet.put(first + 5, TOP - 1, 0)
        sheet.put(first + 6, TOP - 1, 2000)
        for year in range(FEED_YEARS):
            for p in range(HALF_MONTHS):
                row = TOP + year * HALF_MONTHS + p

                def of(name, row=row):
                    return at(first + LANE.index(name), row)

                def half_month(name, p=p):
                    return fixed(YEAR.index(name), p + 1, "Year")

                green, dry = of("green", row - 1), of("dry", row - 1)
                b = f"({per_kg}*({green}+{of('grown')}/2))"
                b_dry = f"({per_kg}*{dry})"
                appetite = half_month("appetite")
                left = f"({green}+{of('grown')}-{of('eaten green')})"
                formulas = (
                    f"{half_month('growth ' + SEASONS[season])}*IF({half_month('winter')}=1;{w};{o})"
                    f"*IF({green}<{bound};1-{penalty}*(1-{green}/{bound});1)",
                    f"(1-EXP(-{b}))*(1+{rise}*EXP(-({b}*{b})))",
                    f"MIN({green}+{of('grown')};{appetite}*{of('filled')}*{half_month('green_quality')})",
                    f"MAX(0;1-{of('filled')})*(1-EXP(-{b_dry}))*(1+{rise}*EXP(-({b_dry}*{b_dry})))",
                    f"MIN({dry};{appetite}*{of('filled dry')}*{half_month('dry_quality')})",
                    f"{left}*(1-{half_month('dying')})",
                    f"({dry}-{of('eaten dry')})*(1-{half_month('decay')})+{left}*{half_month('dying')}",
                    f"MAX(0;{half_month('need')}*{met}-{of('eaten green')}*{half_month('green_mj_per_kg')}"
                    f"-{of('eaten dry')}*{half_month('dry_mj_per_kg')})",
                )
                for col, formula in enumerate(formulas):
                    sheet.put(first + col, row, "=" + formula)
        totals = TOP + FEED_YEARS * HALF_MONTHS + 1
        for year in range(FEED_YEARS):
            start = TOP + year * HALF_MONTHS - 1
            end = start + HALF_MONTHS
            sheet.put(first, totals + year, f"=SUM({along(first + 7, start + 1, end, 'Feed')})")
            moved = [f"ABS({at(first + col, end)}-{at(first + col, start)})<=0.000001" for col in (5, 6)]
            sheet.put(first + 1, totals + year, f"=IF(AND({moved[0]};{moved[1]});1;0)")
        last = totals + FEED_YEARS - 1
        sheet.put(
            first,
            last + 1,
            f"=INDEX({along(first, totals, last, 'Feed')};MATCH(1;{along(first + 1, totals, last, 'Feed')};0))",
        )
    return sheet


def cash_sheet(farm):
    sheet = Sheet()
    names = ("year", "W", "O", "lost", "w", "o", "bought", "supplement", "lambs", "margin", "end value", "cost", "net")
    for col, name in enumerate(names):
        sheet.put(col, 0, name)
    last = len(farm.area_ha) - 1
    weights = along(2, 0, last, "Paddocks")
    areas = along(0, 0, last, "Paddocks")
    held = farm.held[0]
    grown, appetite = farm.profile[held].sum().item(), farm.other_kg[held].sum().item()
    per_mj = (
        f"{given('supplement_price')}/(1000*{given('supplement_dry_matter')}*{given('supplement_energy')}"
        f"*(1-{given('supplement_waste')}))"
    )
    bought_row = TOP + FEED_YEARS * HALF_MONTHS + 1 + FEED_YEARS
    for t in range(farm.years + 1):
        row = t + 1
        now = t == farm.years
        sheet.put(0, row, t)
        of = {name: along(3 + k * farm.years + (0 if now else t), 0, last, "Paddocks") for k, name in enumerate(PADDOCKS)}
        sheet.put(1, row, "=" + (repr(farm.case_now) if now else f"SUMPRODUCT({weights};{of['winter']})/SUM({weights})"))
        sheet.put(2, row, "=" + ("1" if now else f"SUMPRODUCT({weights};{of['other']})/SUM({weights})"))
        lost = f"MAX(0;SUMPRODUCT({weights};{of['held']})/SUM({weights})*{grown!r}-{appetite!r})/{farm.profile.sum().item()!r}"
        sheet.put(3, row, "=" + ("0" if now else lost))
        sheet.put(4, row, f"={at(1, row)}-{at(3, row)}")
        sheet.put(5, row, f"={at(2, row)}-{at(3, row)}")
        mean = "+".join(
            f"{chance.item()!r}*{fixed((t * len(SEASONS) + season) * len(LANE), bought_row, 'Feed')}"
            for season, chance in enumerate(farm.season_chance)
        )
        sheet.put(6, row, "=" + mean)
        if now:
            continue
        saved = f"({fixed(6, farm.years + 1, 'Cash')}-{at(6, row)})*SUM({areas})*{per_mj}"
        sheet.put(7, row, "=" + saved)
        sheet.put(8, row, farm.case_lambs[t])
        sheet.put(9, row, f"=SUMPRODUCT({areas};{of['margin']})")
        sheet.put(10, row, farm.case_end_value[t])
        sheet.put(11, row, f"=SUMPRODUCT({areas};{of['cost']})")
        sheet.put(12, row, f"=SUM({at(7, row)[:-1]}:{at(10, row)[1:]})-{at(11, row)}")
    flows = along(12, 2, farm.years, "Cash")
    sheet.put(0, farm.years + 3, "net present value")
    sheet.put(1, farm.years + 3, f"={at(12, 1)}+NPV({given('discount_rate')};{flows})")
    return sheet


def write(farm, path):
    """Writes the workbook and returns how many formulas it has."""
    sheets = {
        "Cash": cash_sheet(farm),
        "Inputs": inputs_sheet(farm),
        "Paddocks": paddocks_sheet(farm),
        "Year": year_sheet(farm),
        "Feed": feed_sheet(farm),
    }
    with open(path, "w", encoding="utf-8") as out:
        out.write(
            '<?xml version="1.0" encoding="UTF-8"?>\n'
            '<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0"'
            ' xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0"'
            ' xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0"'
            ' xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" office:version="1.3"'
            ' office:mimetype="application/vnd.oasis.opendocument.spreadsheet">'
            "<office:body><office:spreadsheet>\n"
        )
        for name, sheet in sheets.items():
            out.writelines(line + "\n" for line in sheet.xml(name))
        out.write("</office:spreadsheet></office:body></office:document>\n")
    return sum(isinstance(v, str) and v.startswith("=") for sheet in sheets.values() for v in sheet.cells.values())
