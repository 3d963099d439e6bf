#!/usr/bin/env python3
"""Makes cooking_yields.txt, beside this script, from a CSV of the published spreadsheet.

    python3 make_cooking_yields.py YIELDS.csv

The CSV has a header row, one row a row of the sheet, and an empty cell where the sheet has "n/a" or
nothing. Numbers are written digit for digit; an empty cell becomes "-", never 0. Another number of
rows, or of rows of 1975, stops the script. The build does not run it: its output is what we keep
and review.
"""
import csv
import hashlib
import pathlib
import sys

HERE = pathlib.Path(__file__).resolve().parent
COMMENT = [
    "US Department of Agriculture, Agricultural Research Service, Nutrient Data Laboratory. USDA Table of",
    "Cooking Yields for Meat and Poultry, Release 2. September 2014. A work of the US government.",
    "Yield (mean, standard deviation, least, most) and the changes of moisture and fat are percent of the",
    "raw weight; n is the number of samples. A dash stands where the sheet has n/a or nothing: unknown,",
    "never 0. Descriptions, methods and numbers as published, with the row of the sheet; food_number is",
    "the number of the cooked food in USDA SR as a rule. Rows of 1975, by the sheet's own note: from",
    "Agriculture Handbook 102.",
]
COLUMNS = {
    "sheet_row": "sheet_row", "food_group": "fdgrp_cd", "food_number": "ndb_no",
    "description": "description", "method": "method", "yield_percent": "cooking_yield_percent",
    "n": "n", "standard_deviation_percent": "sd", "least_percent": "yield_min_percent",
    "most_percent": "yield_max_percent", "moisture_change_percent": "moisture_change_percent",
    "fat_change_percent": "fat_change_percent", "release_year": "release_year",
}
ROWS, ROWS_OF_1975 = 173, 16


def field(text):
    """One field as written; '-' where the source has nothing."""
    if text == "-" or "|" in text or "\n" in text or text != text.strip():
        raise SystemExit(f"cannot be written as a field: {text!r}")
    return text or "-"


def main():
    if len(sys.argv) != 2:
        raise SystemExit("usage: make_cooking_yields.py YIELDS.csv")
    source = pathlib.Path(sys.argv[1])
    with open(source, encoding="utf-8", newline="") as file:
        reader = csv.DictReader(file)
        if set(reader.fieldnames) != set(COLUMNS.values()):
            raise SystemExit(f"other columns: {reader.fieldnames}")
        rows = sorted(reader, key=lambda row: int(row["sheet_row"]))
    of_1975 = sum(row["release_year"] == "1975" for row in rows)
    if (len(rows), of_1975) != (ROWS, ROWS_OF_1975):
        raise SystemExit(f"{len(rows)} rows, {of_1975} of 1975")
    digest = hashlib.sha256(source.read_bytes()).hexdigest()
    lines = [f"# {line}" for line in COMMENT + [f"SHA-256 of {source.name}: {digest}"]]
    lines.append("|".join(COLUMNS))
    lines += ["|".join(field(row[key]) for key in COLUMNS.values()) for row in rows]
    (HERE / "cooking_yields.txt").write_text("\n".join(lines) + "\n", encoding="utf-8",
                                             newline="\n")


if __name__ == "__main__":
    main()
