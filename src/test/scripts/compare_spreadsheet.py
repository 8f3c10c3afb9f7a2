"""Values the plan at likely values in a spreadsheet: largest difference, time to recalculate, and the ratio.

    /usr/bin/python3 src/test/scripts/compare_spreadsheet.py FOLDER

Python 3.11.2, numpy 1.24.2 and LibreOffice 7.4.7, all Debian's (python3-numpy, libreoffice-calc-nogui,
python3-uno). FOLDER is filled by compare.sh. The workbook is left in it for whoever wants to look.
"""

import csv
import os
import pathlib
import subprocess
import sys
import time

import farm_numpy
import numpy as np
import uno
import workbook_fods
from com.sun.star.beans import PropertyValue
from com.sun.star.connection import NoConnectException
from com.sun.star.lang import DisposedException

RECALCULATIONS = 5
INNER = {"leaf_area_penalty": 1, "supplement_price": 50}
OFFICE = ("soffice", "--headless", "--norestore", "--nologo")


def profile(folder):
    return "-env:UserInstallation=" + (folder / "office").as_uri()


def converted(folder, book):
    """The first sheet as LibreOffice computes it, every digit, and the seconds of the whole command."""
    start = time.perf_counter()
    raw = "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false"
    command = [*OFFICE, profile(folder), "--convert-to", raw, "--outdir", folder, book]
    subprocess.run(command, check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    seconds = time.perf_counter() - start
    with open(folder / (book.stem + ".csv"), encoding="utf-8", newline="") as file:
        return list(csv.reader(file)), seconds


def recalculated(folder, book, years):
    """Least seconds of processor time from a changed input to the new net present value, the workbook being open.

    One for a number of the feed budget, on which nearly every cell hangs, and one for a price.
    """
    pipe = f"swardcase-{os.getpid()}"
    office = subprocess.Popen(
        [*OFFICE, profile(folder), f"--accept=pipe,name={pipe};urp;"],
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    )
    try:
        desktop = connect(pipe)
        hidden = PropertyValue("Hidden", 0, True, 0)
        document = desktop.loadComponentFromURL(book.as_uri(), "_blank", 0, (hidden,))
        seconds = [least_seconds(office.pid, document, years, name) for name in ("leaf_area_penalty", "supplement_price")]
        document.close(True)
        try:
            desktop.terminate()
        except DisposedException:
            pass  # it was gone before it could answer
        office.wait(30)
        return seconds
    finally:
        if office.poll() is None:
            office.terminate()
            office.wait(30)


def least_seconds(process, document, years, name):
    inputs, cash = (document.Sheets.getByName(sheet) for sheet in ("Inputs", "Cash"))
    number = inputs.getCellByPosition(1, workbook_fods.INPUTS.index(name))
    result = cash.getCellByPosition(1, years + 3)
    likely, first = number.Value, result.Value
    seconds = []
    for turn in range(1, RECALCULATIONS + 1):
        before = processor_seconds(process)
        for step in range(INNER[name]):
            number.Value = likely * (1 + 0.001 * (turn + step / INNER[name]))
            document.calculate()
            assert result.Value != first
        seconds.append((processor_seconds(process) - before) / INNER[name])
    number.Value = likely
    document.calculate()
    assert result.Value == first
    return min(seconds)


def processor_seconds(process):
    """Of a process and those it started, counted in hundredths."""
    spent, parents = {}, {}
    for stat in pathlib.Path("/proc").glob("[0-9]*/stat"):
        try:
            fields = stat.read_text().rpartition(")")[2].split()
        except OSError:
            continue  # ended meanwhile
        number = int(stat.parent.name)
        parents[number] = int(fields[1])
        spent[number] = int(fields[11]) + int(fields[12])
    total = 0
    for number in spent:
        of = number
        while of != process and of in parents:
            of = parents[of]
        total += spent[number] if of == process else 0
    return total / os.sysconf("SC_CLK_TCK")


def connect(pipe):
    resolver = uno.getComponentContext().ServiceManager.createInstance("com.sun.star.bridge.UnoUrlResolver")
    for _ in range(240):
        try:
            context = resolver.resolve(f"uno:pipe,name={pipe};urp;StarOffice.ComponentContext")
            return context.ServiceManager.createInstance("com.sun.star.frame.Desktop")
        except NoConnectException:
            time.sleep(0.5)
    sys.exit("LibreOffice does not answer")


def main(folder):
    farm = farm_numpy.load(folder)
    book = folder / "plan.fods"
    formulas = workbook_fods.write(farm, book)
    cells, whole = converted(folder, book)
    bought = np.array([float(row[6]) for row in cells[1 : farm.years + 2]])
    flows = np.array([float(row[12]) for row in cells[1 : farm.years + 1]])
    npv = float(cells[farm.years + 3][1])
    far = max(
        np.abs(bought / farm.case_bought - 1).max(),
        np.abs(flows - farm.case_flows).max() / np.abs(farm.case_flows).max(),
        abs(npv / farm.case_npv - 1),
    )
    whole_budget, price = recalculated(folder, book, farm.years)
    java = farm.case_seconds
    print(
        f"spreadsheet: {formulas} formulas, net present value {npv:.2f}, largest relative difference {far:.1e};"
        f" {whole:.1f} s by the clock to start, load, calculate and write"
    )
    print(
        f"recalculated in {1000 * whole_budget:.0f} ms of processor time, after a price alone in {1000 * price:.1f} ms;"
        f" spreadsheet / Java {whole_budget / java:.0f} and {price / java:.1f}"
    )
    if far > 1e-9:
        sys.exit("spreadsheet and Java differ by more than rounding")


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]).resolve())
