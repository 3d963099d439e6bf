#include <catch2/catch.hpp>

#include "command_line/bad_input.h"
#include "command_line/scratch_kitchen.h"
#include "core/support/text.h"

using nettare::replaced;

namespace {

/// An example recipe made bad, and the sentence that refuses it, after the file's name.
struct BadInput {
    std::vector<DocumentEdit> edits;
    std::string rest;
};

void checkAll(const std::string& document, const std::vector<BadInput>& cases) {
    for (const BadInput& bad : cases)
        checkRefused(edited(document, bad.edits), "doc.json" + bad.rest);
}

const std::vector<BadInput> kBadShapes{
    {{{"/lines/2/unit", R"("cupp")"}},
     ", /lines/2/unit: the unit “cupp” is not known; use one of: g, kg, mg, oz, lb, ml, mL, cl, "
     "dl, l, L, tsp, tbsp, dessertspoon, cup, fl oz, pint, quart, gal, stick, pinch, dash, drop, "
     "us fl oz, us pint, us quart, us gal, imp fl oz, imp pint, imp quart, imp gal."},
    {{{"/lines/2/amount", "3"}},
     ", /lines/2/amount: text in quotes is expected here, not a number; change it."},
    {{{"/note", "null"}}, ", /note: text in quotes is expected here, not null; change it."},
    {{{"/lines", "{}"}},
     ", /lines: a list in square brackets is expected here, not an object; change it."},
    {{{"/lines", "[]"}}, ", /lines: the list is empty; give at least one entry."},
    {{{"/lines/0", R"("prawns")"}},
     ", /lines/0: an object in curly brackets is expected here, not text; change it."},
    {{{"/foods/2/label/rules", R"("uk")"}},
     ", /foods/2/label/rules: “uk” is not known here; write one of: us, eu."},
    {{{"/format", R"("other recipe")"}},
     ", /format: the format “other recipe” is not a recipe document; it must say “nettare "
     "recipe”."},
    {{{"/version", "2"}},
     ", /version: version 2 of this kind of file is not known, this program reads version 1; "
     "update the program or correct the number."},
    {{{"/version", "1.5"}},
     ", /version: version 1.5 of this kind of file is not known, this program reads version 1; "
     "update the program or correct the number."},
    {{{"/version", R"("1")"}}, ", /version: a number is expected here, not text; change it."},
    {{{"/version", ""}}, ": the key “version” is missing; add it."},
    {{{"/title", ""}}, ": the key “title” is missing; add it."},
    {{{"/makes", ""}}, ": the key “makes” is missing; add it."},
    {{{"/colour", R"("red")"}},
     ", /colour: the key “colour” is not known here; correct or remove it."},
    {{{"/lines/0/colour~1hue~0", R"("red")"}},
     ", /lines/0/colour~1hue~0: the key “colour/hue~” is not known here; correct or remove it."},
    {{{"/", "1"}}, ", /: a key here is empty; give it a name or remove it."},
    {{{"/" + std::string(300, 'k'), "1"}},
     ", "
     "/kkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkk"
     "kkkkkkkkkkkkkkkkkkkkkkkkkkk…: the key "
     "“kkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkk…” is not known here; correct "
     "or remove it."},
    {{{"/title", R"("")"}}, ", /title: the text is empty; write what is meant."},
    {{{"/title", R"("  ")"}}, ", /title: the text is empty; write what is meant."},
    {{{"/title", R"("a\u001bb")"}},
     ", /title: the text “a b” holds an invisible control character, such as a line break or a "
     "change of writing direction; remove it."},
    {{{"/title", R"("a\u202eb")"}},
     ", /title: the text “a b” holds an invisible control character, such as a line break or a "
     "change of writing direction; remove it."},
    {{{"/title", R"("a\u009b31mb")"}},
     ", /title: the text “a 31mb” holds an invisible control character, such as a line break or a "
     "change of writing direction; remove it."},
    {{{"/title", '"' + replaced(std::string(201, 'e'), "e", "é") + '"'}},
     ", /title: the text “éééééééééééééééééééééééééééééééééééééééééééééééééééééééééééé…” is longer "
     "than 200 characters; shorten it."},
    {{{"/a\x01\x1b[31mb", "1"}},
     ", /a  [31mb: the key “a  [31mb” is not known here; correct or remove it."},
    {{{"/portion", "{}"}}, ", /portion: exactly one of these keys is needed here: pieces, grams."},
    {{{"/portion", R"({"grams":"1","pieces":"1"})"}},
     ", /portion: exactly one of these keys is needed here: pieces, grams."},
    {{{"/lines/2/piece", R"("spoon")"}},
     ", /lines/2: exactly one of these keys is needed here: unit, piece."},
    {{{"/foods/1/recipe", R"("x.json")"}},
     ", /foods/1: exactly one of these keys is needed here: table, label, stated; or recipe "
     "alone."},
    {{{"/lines/0/id", R"("Prawns!")"}},
     ", /lines/0/id: “Prawns!” cannot be an id; use a to z, 0 to 9 and -, at most 64."},
    {{{"/cooked/readings", "[1]"}},
     ", /cooked/readings/0: text in quotes is expected here, not a number; change it."},
    {{{"/indications/0/at", R"("yesterday")"}},
     ", /indications/0/at: “yesterday” is no time with an offset; write it like "
     "2026-05-16T17:41:07+02:00."},
    {{{"/lines/0/as_purchased", R"("yes")"}},
     ", /lines/0/as_purchased: true or false is expected here, not text; change it."},
    {{{"/residues/0", R"({"unknown":false,"readings":["marinade-left"]})"}},
     ", /residues/0/unknown: “false” is not known here; write one of: true."},
    {{{"/targets/0/per", R"("week")"}},
     ", /targets/0/per: “week” is not known here; write one of: piece, portion, 100g, batch."},
    {{{"/targets/0/component", R"("KCAL")"}},
     ", /targets/0/component: “KCAL” is no component that can be used here; write an INFOODS "
     "tagname such as ENERC_KCAL."},
    {{{"/lines/2/way", R"("guess")"}},
     ", /lines/2/way: “guess” is not known here; write one of: weighed, series, label, table, "
     "density, assumed."},
};

const std::vector<BadInput> kBadAmounts{
    {{{"/measures", R"("metric")"}, {"/lines/2/unit", R"("pint")"}},
     ", /lines/2/unit: the recipe's measures have no “pint”; write us pint or imp pint, or another "
     "unit."},
    {{{"/lines/2/amount", R"("1,500")"}},
     ", /lines/2/amount: “1,500” can mean 1.500 or 1500; write 1500 or leave the zeros out."},
    {{{"/lines/2/amount", R"("three")"}},
     ", /lines/2/amount: “three” is no amount; write it like 2, 1/2, 1 1/2, 1.5 or 2-3."},
    {{{"/lines/2/amount", R"("2-")"}},
     ", /lines/2/amount: “2-” is no amount; write it like 2, 1/2, 1 1/2, 1.5 or 2-3."},
    {{{"/lines/2/amount", R"("NaN")"}},
     ", /lines/2/amount: “NaN” is no amount; write it like 2, 1/2, 1 1/2, 1.5 or 2-3."},
    {{{"/lines/2/amount", R"("-3")"}},
     ", /lines/2/amount: the amount “-3” is not more than zero; correct it."},
    {{{"/lines/2/amount", R"("3-2")"}},
     ", /lines/2/amount: the range “3-2” runs backwards; write the smaller one first."},
    {{{"/lines/2/amount", R"("1/0")"}},
     ", /lines/2/amount: “1/0” is no amount; write it like 2, 1/2, 1 1/2, 1.5 or 2-3."},
    {{{"/lines/2/amount", R"("1234567890")"}},
     ", /lines/2/amount: the amount “1234567890” has too many digits; shorten it."},
    {{{"/lines/2/amount", R"("  ")"}},
     ", /lines/2/amount: the text is empty; write what is meant."},
    {{{"/makes/pieces", R"("0")"}},
     ", /makes/pieces: the amount “0” is not more than zero; correct it."},
    {{{"/portion/pieces", R"("2-3")"}},
     ", /portion/pieces: a range, “2-3”, cannot be used here; write one number."},
    {{{"/portion/pieces", R"("0")"}},
     ", /portion/pieces: the amount “0” is not more than zero; correct it."},
    {{{"/portion", R"({"grams":"0"})"}},
     ", /portion/grams: “0” is not more than zero; correct it."},
    {{{"/readings/0/pieces", R"("0")"}},
     ", /readings/0/pieces: “0” lies outside 1 to 9999; correct it."},
    {{{"/scales/0/readability", "0.1"}},
     ", /scales/0/readability: text in quotes is expected here, not a number; change it."},
    {{{"/scales/0/readability", R"("0,1")"}},
     ", /scales/0/readability: “0,1” is no decimal number; write it with a point, such as “12.5”, "
     "with at most six digits before and six after it."},
    {{{"/scales/0/readability", R"("1234567")"}},
     ", /scales/0/readability: “1234567” is no decimal number; write it with a point, such as "
     "“12.5”, with at most six digits before and six after it."},
    {{{"/scales/0/readability", R"("0")"}},
     ", /scales/0/readability: “0” is not more than zero; correct it."},
    {{{"/lines/4/assumed/grams", R"("-5")"}},
     ", /lines/4/assumed/grams: “-5” is less than zero; write it without the minus."},
    {{{"/scales/0/unit", R"("ml")"}},
     ", /scales/0/unit: “ml” is no unit of mass that scales show; use g, kg, mg, oz or lb."},
    {{{"/scales/0/unit", R"("stick")"}},
     ", /scales/0/unit: “stick” is no unit of mass that scales show; use g, kg, mg, oz or lb."},
    {{{"/foods/2/label/serving_grams", R"("0")"}},
     ", /foods/2/label/serving_grams: “0” is not more than zero; correct it."},
    {{{"/foods/2/label/serving/amount", R"("0")"}},
     ", /foods/2/label/serving/amount: the amount “0” is not more than zero; correct it."},
    {{{"/foods/2/label/declares/0/printed", R"("52")"}},
     ", /foods/2/label/declares/0/printed: the label of olive oil cannot lawfully print “52” for "
     "energy; compare it with the pack."},
    {{{"/foods/2/label/declares/0/printed", R"("lots")"}},
     ", /foods/2/label/declares/0/printed: “lots” on the label of olive oil is no amount; write it "
     "like 1.5, 1,5, 1 567 or <0.5, and leave a mere trace empty."},
    {{{"/foods/2/label/declares/1/printed", R"("16")"}},
     ", /foods/2/label/declares/1/printed: the label of olive oil cannot lawfully print “16” for "
     "fat; compare it with the pack."},
    {{{"/foods/2/label/declares/1/component", R"("WATER")"}},
     ", /foods/2/label/declares/1/component: “WATER” is no component that can be used here; write "
     "an INFOODS tagname such as ENERC_KCAL."},
    {{{"/foods/2/label/declares/1/component", R"("ENERC_KCAL")"}},
     ", /foods/2/label/declares/1: “ENERC_KCAL” stands twice here; remove or rename one."},
};

const std::vector<BadInput> kBadReferences{
    {{{"/lines/2/food", R"("oliv")"}},
     ", /lines/2/food: nothing fitting in this document is called “oliv”; correct the name or add "
     "what it names."},
    {{{"/lines/2/weighed", R"(["oill"])"}},
     ", /lines/2/weighed/0: nothing fitting in this document is called “oill”; correct the name or "
     "add what it names."},
    {{{"/lines/0/series/id", R"("x")"}},
     ", /lines/0/series/id: nothing fitting in this document is called “x”; correct the name or "
     "add what it names."},
    {{{"/vessels/0/scale", R"("x")"}},
     ", /vessels/0/scale: nothing fitting in this document is called “x”; correct the name or add "
     "what it names."},
    {{{"/readings/0/gross", R"("x")"}},
     ", /readings/0/gross: nothing fitting in this document is called “x”; correct the name or add "
     "what it names."},
    {{{"/cooked/readings", R"(["dish","dish"])"}},
     ", /cooked/readings/1: “dish” stands twice here; remove or rename one."},
    {{{"/residues/0/mixture", R"(["x"])"}},
     ", /residues/0/mixture/0: nothing fitting in this document is called “x”; correct the name or "
     "add what it names."},
    {{{"/residues/0", R"({"drip":"x","readings":["marinade-left"]})"}},
     ", /residues/0/drip: nothing fitting in this document is called “x”; correct the name or add "
     "what it names."},
    {{{"/scales/1/id", R"("pocket")"}},
     ", /scales/1/id: “pocket” stands twice here; remove or rename one."},
    {{{"/lines/1/id", R"("prawns")"}},
     ", /lines/1/id: “prawns” stands twice here; remove or rename one."},
    {{{"/foods/0/stated/-", R"({"component":"VITD","per_100g":"1","reason":"twice"})"}},
     ", /foods/0/stated/1: “VITD” stands twice here; remove or rename one."},
    {{{"/foods/1/table/number", R"("99999")"}},
     ", /foods/1/table: no table at hand has the food usda-sr 28 99999 (table, release, number); "
     "correct them."},
    {{{"/foods/1/table/table", R"("nosuch")"}},
     ", /foods/1/table: no table at hand has the food nosuch 28 11957 (table, release, number); "
     "correct them."},
};

const std::vector<BadInput> kBadWeighings{
    {{{"/indications/0/shown", R"("200")"}},
     ", /readings/0: reading “prawn-1” has a tare of 212.2 above its gross of 200; exchange the "
     "two or correct one."},
    {{{"/indications/0/shown", R"("212.2")"}},
     ", /series/0/readings/0: “prawn-1” holds nothing to weigh; correct the reading."},
    {{{"/scales/-", R"({"id":"third","name":"third","unit":"oz","readability":"1"})"},
      {"/indications/6/scale", R"("third")"}},
     ", /readings/6: reading “fennel” takes gross and tare from scales with different units; weigh "
     "both on one scale."},
    {{{"/lines/2/series", R"({"id":"prawn-meat","use":"others"})"}},
     ", /lines/2/series/id: series “prawn-meat” weighs prawn, the line needs tbsp; choose another "
     "series."},
    {{{"/lines/1/trim", R"("prawn-meat")"}},
     ", /lines/1/trim: series “prawn-meat” weighs prawn, the line needs a ratio; choose another "
     "series."},
    {{{"/lines/0/amount", R"("6")"}, {"/lines/0/series/use", R"("among")"}},
     ", /lines/0: line “prawns” has 6 pieces, fewer than the 11 of the series that are said to be "
     "among them; write “others”."},
    {{{"/indications/10/shown", R"("900")"}},
     ", /residues/0: 687.8 g are left over of the 67.2 g that went in; correct the reading or the "
     "lines."},
    {{{"/indications/7/shown", R"("5000")"},
      {"/lines/1/weighed", ""},
      {"/residues/0", R"({"drip":"olive-oil","readings":["fennel"]})"}},
     ", /residues/0: 4660.0 g are left over of the 888.7 g that went in; correct the reading or "
     "the lines."},
    {{{"/indications/9/shown", R"("0")"}},
     ", /lines/2: line “oil”: olive oil weighs nothing; correct the reading or remove the line."},
    {{{"/cooked/not_eaten", R"(["dish"])"}},
     ", /cooked: what is not eaten weighs as much as the dish or more; correct one of the "
     "readings."},
    {{{"/indications/14/shown", R"("5000")"}},
     ", /cooked: what is not eaten weighs as much as the dish or more; correct one of the "
     "readings."},
    {{{"/lines/1/weighed", ""}, {"/lines/1/piece", R"("crate")"}},
     ", /lines/1: line “fennel”: nothing says what one crate of fennel weighs; weigh it, give a "
     "label or table measure, or assume grams with a reason."},
    {{{"/lines/2/way", R"("density")"}},
     ", /lines/2: line “oil”: the way to grams “density” is not open for olive oil; choose another "
     "or leave the key out."},
    {{{"/cooked", ""}, {"/portion", R"({"grams":"100"})"}},
     ", /portion/grams: the cooked weight is missing; weigh the dish or give the portion in "
     "pieces."},
};

const std::string kBareBeetroot =
    R"({"id":"beetroot","name":"beetroot","stated":)"
    R"([{"component":"FAT","per_100g":"1","reason":"from the pack"}]})";

const std::vector<BadInput> kBadPatties{
    {{{"/lines/1/series", R"({"id":"beet-trim","use":"others"})"}},
     ", /lines/1/series/id: series “beet-trim” weighs a ratio, the line needs beet; choose another "
     "series."},
    {{{"/indications/1/shown", R"("0")"}, {"/indications/2/shown", R"("0")"}},
     ", /series/0/pairs/0/before: “whole-1” holds nothing to weigh; correct the reading."},
    {{{"/foods/1", kBareBeetroot}, {"/lines/1/trim", ""}},
     ", /lines/1: line “beetroot”: beetroot is weighed as purchased and nothing says how much of "
     "it is eaten; add a trim series or weigh the edible portion."},
    {{{"/foods/1", kBareBeetroot},
      {"/lines/1",
       R"({"id":"beetroot","amount":"100","unit":"g","food":"beetroot","as_purchased":true})"}},
     ", /lines/1: line “beetroot”: beetroot is weighed as purchased and nothing says how much of "
     "it is eaten; add a trim series or weigh the edible portion."},
};

}  // namespace

TEST_CASE("a document of the wrong shape is refused at its place", "[badinput]") {
    checkAll(skewers(), kBadShapes);
}

TEST_CASE("amounts, weights and label figures that cannot be are refused", "[badinput]") {
    checkAll(skewers(), kBadAmounts);
}

TEST_CASE("names that stand twice or name nothing are refused", "[badinput]") {
    checkAll(skewers(), kBadReferences);
}

TEST_CASE("weighings and ways to grams that do not fit the line are refused", "[badinput]") {
    checkAll(skewers(), kBadWeighings);
}

TEST_CASE("food weighed as purchased needs a yield", "[badinput]") {
    checkAll(patties(), kBadPatties);
}
