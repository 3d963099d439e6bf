#!/usr/bin/env python3
"""Makes the text form of the starter table from the reference tables in one folder.

    python3 make_starter.py FOLDER

FOLDER holds starter_foods.csv, starter_measures.csv, starter_uncertainty.csv and
starter_other_names.csv: 597 everyday foods taken from the SR28 release, with a header row and an
empty cell where the release has no value. Written beside this script, sorted by number:

    table.txt        which table this is, its citation, the SHA-256 of each input
    foods.txt        name, group, refuse, nitrogen and energy factors
    components.txt   one line a food: values per 100 g edible part, in the order of core/food
    spreads.txt      data points and standard error of a value
    measures.txt     household measures with their grams
    other_names.txt  other kitchen names

Values keep the decimals they were printed with; a missing value is "-", never 0. traits.txt,
kitchen_names.txt and everyday.txt are kept by hand and never written here. The build does not run
this script: its output is what we keep and review.
"""
import csv
import hashlib
import pathlib
import sys

HERE = pathlib.Path(__file__).resolve().parent
INPUTS = ("starter_foods.csv", "starter_measures.csv", "starter_other_names.csv",
          "starter_uncertainty.csv")
CITATION = ("US Department of Agriculture, Agricultural Research Service, Nutrient Data Laboratory. "
            "USDA National Nutrient Database for Standard Reference, Release 28. "
            "Version current: September 2015.")


def rows_of(folder, name):
    with open(folder / name, encoding="utf-8", newline="") as file:
        return sorted(csv.DictReader(file), key=lambda row: row["ndb_no"])


def cell(text):
    """One field as written; '-' where the source has nothing."""
    if "|" in text or "\n" in text or text == "-":
        raise SystemExit(f"cannot be written as a field: {text!r}")
    return text if text else "-"


def write(name, comment, columns, rows):
    lines = [f"# {line}" for line in comment] + ["|".join(columns)]
    lines += ["|".join(cell(field) for field in row) for row in rows]
    (HERE / name).write_text("\n".join(lines) + "\n", encoding="utf-8", newline="\n")


def write_table(folder):
    rows = [["table", "usda-sr"], ["release", "28"], ["citation", CITATION]]
    for name in INPUTS:
        digest = hashlib.sha256((folder / name).read_bytes()).hexdigest()
        rows.append([f"sha256 of {name}", digest])
    write("table.txt",
          ["A selection of 597 foods. A work of the US government, in the public domain.",
           "Names, groups, notes and traits are this project's own."], ["key", "value"], rows)


def write_foods(foods):
    columns = ["number", "name", "group", "refuse_percent", "refuse_note", "nitrogen_factor",
               "protein_kcal_per_g", "fat_kcal_per_g", "carbohydrate_kcal_per_g"]
    taken = ["ndb_no", "name", "group", "refuse_percent", "refuse_note", "n_factor", "pro_factor",
             "fat_factor", "cho_factor"]
    write("foods.txt",
          ["Number as in SR28. Refuse in percent of the weight as purchased; the note says of what.",
           "Factors: grams of protein per gram of nitrogen, and kcal per gram, as published."],
          columns, [[food[key] for key in taken] for food in foods])


def write_components(foods):
    headers = [key for key in foods[0] if key.endswith(")")]
    write("components.txt",
          ["Per 100 g edible part, by INFOODS tagname. Units: " +
           ", ".join(f"{h.split(' ')[0]} {h.split('(')[1][:-1]}" for h in headers) + "."],
          ["number"] + [header.split(" ")[0] for header in headers],
          [[food["ndb_no"]] + [food[header] for header in headers] for food in foods])


def write_spreads(rows):
    write("spreads.txt",
          ["Data points and standard error of the mean, in the unit of the value (components.txt)."],
          ["number", "tagname", "n", "standard_error"],
          [[row["ndb_no"], row["tagname"], row["n"], row["std_error"]] for row in rows])


def write_measures(rows):
    columns = ["amount", "unit", "qualifier", "grams", "n", "standard_deviation_grams"]
    taken = ["amount", "unit", "qualifier", "grams", "n_data_points", "std_dev"]
    write("measures.txt",
          ["Grams of the whole amount, edible part; standard deviation of those grams."],
          ["number"] + columns, [[row["ndb_no"]] + [row[key] for key in taken] for row in rows])


def main():
    if len(sys.argv) != 2:
        raise SystemExit("usage: make_starter.py FOLDER")
    folder = pathlib.Path(sys.argv[1])
    foods = rows_of(folder, "starter_foods.csv")
    write_table(folder)
    write_foods(foods)
    write_components(foods)
    write_spreads(rows_of(folder, "starter_uncertainty.csv"))
    write_measures(rows_of(folder, "starter_measures.csv"))
    write("other_names.txt", ["Other names a kitchen uses for the food."], ["number", "name"],
          [[row["ndb_no"], row["other_name"]] for row in rows_of(folder, "starter_other_names.csv")])


if __name__ == "__main__":
    main()
