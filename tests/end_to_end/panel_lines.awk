# What a US panel of these amounts says, line by line: the rounding of 21 CFR 101.9(c) and the
# percents of (d)(7)(ii) and (c)(8)(iii), daily values of (c)(9) and (c)(8)(iv). A third small
# implementation that shares no code with the program.
#
# Input, tab separated: tagname, amount per serving; and "household", "serving_grams", "servings".
# Every step is to the nearest, ties up on the value written with 12 significant digits; where the
# law leaves a choice: 0 below the floor, then "less than", then the step. Percents from the
# unrounded amount, (d)(7)(ii) allows it.

BEGIN { FS = "\t" }
{ amount[$1] = $2 }

function nearest(value, step,    steps) {
    steps = sprintf("%.12g", value / step) + 0.5
    return step * (steps - steps % 1)
}
function calories(kcal) { return kcal < 5 ? 0 : nearest(kcal, kcal <= 50 ? 5 : 10) }
function fat(grams) { return grams < 0.5 ? 0 : nearest(grams, grams < 5 ? 0.5 : 1) }
function cholesterol(mg) { return mg < 2 ? 0 : mg < 5 ? "less than 5" : nearest(mg, 5) }
function sodium(mg) { return mg < 5 ? 0 : nearest(mg, mg <= 140 ? 5 : 10) }
function carbohydrate(grams) {
    return grams < 0.5 ? 0 : grams < 1 ? "less than 1" : nearest(grams, 1)
}
# The law gives a mineral the digits of its table; the steps are FDA's recommendation.
function vitamin(value, rdi) {
    return nearest(value, rdi < 25 ? 0.1 : rdi < 250 ? 1 : rdi < 500 ? 5 : 10)
}

function percent(value, drv) { return " " nearest(100 * value / drv, 1) "%" }
function vitamin_percent(value, rdi,    share) {
    share = 100 * value / rdi
    return " " (share < 2 ? 0 : nearest(share, share <= 10 ? 2 : share <= 50 ? 5 : 10)) "%"
}
function vitamin_line(name, tag, unit, rdi) {
    print name " " vitamin(amount[tag], rdi) unit vitamin_percent(amount[tag], rdi)
}
function metric(grams) { return nearest(grams, grams < 2 ? 0.1 : grams < 5 ? 0.5 : 1) }
function servings(number,    printed) {
    printed = nearest(number, number >= 2 && number < 5 ? 0.5 : 1)
    return (printed == sprintf("%.12g", number) + 0 ? "" : "about ") printed \
        (printed == 1 ? " serving" : " servings")
}

END {
    print servings(amount["servings"]) " per container"
    print "Serving size " amount["household"] " (" metric(amount["serving_grams"]) "g)"
    print "Calories " calories(amount["ENERC_KCAL"])
    print "Total Fat " fat(amount["FAT"]) "g" percent(amount["FAT"], 78)
    print "Saturated Fat " fat(amount["FASAT"]) "g" percent(amount["FASAT"], 20)
    print "Trans Fat " fat(amount["FATRN"]) "g"
    print "Cholesterol " cholesterol(amount["CHOLE"]) "mg" percent(amount["CHOLE"], 300)
    print "Sodium " sodium(amount["NA"]) "mg" percent(amount["NA"], 2300)
    print "Total Carbohydrate " carbohydrate(amount["CHOCDF"]) "g" percent(amount["CHOCDF"], 275)
    print "Dietary Fiber " carbohydrate(amount["FIBTG"]) "g" percent(amount["FIBTG"], 28)
    print "Total Sugars " carbohydrate(amount["SUGAR"]) "g"
    print "Includes " carbohydrate(amount["SUGAD"]) "g Added Sugars" percent(amount["SUGAD"], 50)
    print "Protein " carbohydrate(amount["PROCNT"]) "g"
    vitamin_line("Vitamin D", "VITD", "mcg", 20)
    vitamin_line("Calcium", "CA", "mg", 1300)
    vitamin_line("Iron", "FE", "mg", 18)
    vitamin_line("Potassium", "K", "mg", 4700)
}
