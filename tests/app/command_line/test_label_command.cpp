#include <catch2/catch.hpp>
#include <fstream>
#include <iterator>

#include "command_line/bad_input.h"
#include "command_line/scratch_kitchen.h"
#include "core/support/text.h"
#include "db/kitchen/kitchen.h"

namespace nettare {

namespace {

const std::string kExamplePath = NETTARE_RESOURCES "/demo/thick-yogurt.label.json";

/// A label document: 100 g have so many kilocalories, all else as the parts make it.
std::string labelOf(const std::string& calories, const std::string& more = "") {
    return R"({"format": "nettare label", "version": 1, "name": "Hill cheese",
        "label": {"rules": "us", "serving_grams": "30", "date": "2026-05-16",
            "declares": [{"component": "ENERC_KCAL", "printed": ")" +
           calories + R"("}, {"component": "FAT", "printed": "9"},
                {"component": "CHOCDF", "printed": "1"}, {"component": "PROCNT", "printed": "7"}])" +
           more + "}}";
}

/// Cheese and nothing else: 300 g make ten pieces, a portion is two.
std::string cheeseDish(const std::string& number) {
    return R"({"format": "nettare recipe", "version": 1, "title": "Cheese plate", "measures": "us",
        "makes": {"pieces": "10", "piece": "slice", "plural": "slices"},
        "portion": {"pieces": "2"},
        "foods": [{"id": "cheese", "name": "cheese",
            "table": {"table": "own", "release": "1", "number": ")" +
           number + R"("}}],
        "lines": [{"id": "cheese", "amount": "300", "unit": "g", "food": "cheese"}]})";
}

/// The run must end so; answers what it wrote.
std::string ran(const std::vector<std::string>& arguments, int code = 0) {
    const Outcome outcome = run(arguments);
    INFO(outcome.err);
    CHECK(outcome.err.empty());
    CHECK(outcome.code == code);
    return outcome.out;
}

std::vector<std::string> atLabelHome(std::vector<std::string> arguments) {
    arguments.insert(arguments.begin(), {"--kitchen", "home.nettare"});
    return arguments;
}

bool says(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

/// An empty kitchen home.nettare in a folder of its own.
class EmptyHome {
public:
    EmptyHome() { REQUIRE(Kitchen::create("home.nettare", "2026-05-16T12:00:00+02:00")); }
    void write(const std::string& name, std::string_view bytes) const {
        folder_.write(name, bytes);
    }
    [[nodiscard]] static std::string read(const std::string& name) {
        std::ifstream stream{name, std::ios::binary};
        return {std::istreambuf_iterator<char>{stream}, std::istreambuf_iterator<char>{}};
    }

private:
    ScratchKitchen folder_;
};

std::size_t labelsAtHome() {
    const auto foods = Kitchen::open("home.nettare", KitchenAccess::Read)->ownFoods();
    REQUIRE(foods);
    return foods->size();
}

}  // namespace

TEST_CASE("a label is shown with what its amounts stand for and come to", "[commandline][label]") {
    CHECK(ran({"label", kExamplePath}) ==
          "Thick yogurt, whole milk\n"
          "rules    United States, 21 CFR 101.9\n"
          "amounts  per 2/3 cup (170 g), as sold\n"
          "pack     about 5 servings\n"
          "source   package label\n"
          "read     2026-05-16\n"
          "note     Invented for this example.\n"
          "                                   printed      stands for           per 100 g\n"
          "  Calories                             170      165–175 kcal          100 kcal\n"
          "  Total Fat                              9 g    8.5–9.5 g                5.3 g\n"
          "    Saturated Fat                        6 g    5.5–6.5 g                3.5 g\n"
          "    Trans Fat                            0 g    < 0.5 g            up to 0.3 g\n"
          "  Cholesterol                           25 mg   22.5–27.5 mg             15 mg\n"
          "  Sodium                                60 mg   57.5–62.5 mg             35 mg\n"
          "  Total Carbohydrate                     7 g    6.5–7.5 g                4.1 g\n"
          "    Dietary Fiber                        0 g    < 0.5 g            up to 0.3 g\n"
          "    Total Sugars                         6 g    5.5–6.5 g                3.5 g\n"
          "      Includes Added Sugars              0 g    < 0.5 g            up to 0.3 g\n"
          "  Protein                               15 g    14.5–15.5 g              8.8 g\n"
          "  Calcium                              190 mg   185–195 mg              112 mg\n"
          "Nothing in it contradicts the rest.\n");
}

TEST_CASE("a slip on a label is told with what it likely was, and ends with 1",
          "[commandline][label]") {
    const ScratchKitchen folder;
    folder.write("slip.json", labelOf("1100"));
    const std::string text = ran({"label", "slip.json"}, 1);
    CHECK(says(text, "  ! Total Fat 9 g, Total Carbohydrate 1 g and Protein 7 g make "));
    CHECK(says(text, " kcal; the label says 1095 to 1105. Was it Calories 110?"));
    CHECK(
        text.ends_with("    if it is printed so: \"as_printed\": [{\"about\":\"ENERC_KCAL 1100, "
                       "FAT 9, CHOCDF 1, PROCNT 7\",\"finding\":\"energy\"}]\n"));
}

TEST_CASE("what the document says is as printed is no finding any more", "[commandline][label]") {
    const ScratchKitchen folder;
    folder.write("doc.json", labelOf("1100"));
    const std::string text = ran({"label", "doc.json"}, 1);
    const std::string key = "\"as_printed\": ";
    const std::size_t at = text.find(key);
    REQUIRE(at != std::string::npos);
    folder.write("doc.json", labelOf("1100", ", " + text.substr(at, text.find('\n', at) - at)));
    CHECK(says(ran({"label", "doc.json"}), "    as printed, says who read it\n"));
}

TEST_CASE("labels are told to other programs as JSON", "[commandline][label]") {
    const ScratchKitchen folder;
    folder.write("doc.json", labelOf("1100"));
    const auto json = parseJson(ran({"label", "doc.json", "--json"}, 1));
    REQUIRE(json);
    const Json& label = json->find("labels")->items()->front();
    CHECK(*label.find("name") == Json{"Hill cheese"});
    const Json& fat = (*label.find("lines")->items())[1];
    CHECK(*fat.find("component") == Json{"FAT"});
    CHECK(*fat.find("printed") == Json{"9"});
    CHECK(*fat.find("unit") == Json{"g"});
    CHECK(*fat.find("low") == Json{8.5});
    CHECK(*fat.find("high") == Json{9.5});
    CHECK(*fat.find("per_100g") == Json{30.0});
    const Json& finding = label.find("findings")->items()->front();
    CHECK(*finding.find("finding") == Json{"energy"});
    CHECK(*finding.find("as_printed") == Json{false});
    CHECK(*finding.find("likely_slip")->find("printed") == Json{"1100"});
}

TEST_CASE("the labels of a recipe's foods are shown one after the other", "[commandline][label]") {
    const ScratchKitchen folder;
    folder.write("skewers.json", skewers());
    const std::string text = ran({"label", "skewers.json"});
    CHECK(
        text.starts_with("olive oil\nrules    United States, 21 CFR 101.9\namounts  per 1 tbsp "
                         "(14 g), as sold\n"));
    CHECK_FALSE(says(text, "\n\n"));
    folder.write("plate.json", cheeseDish("3f2b8c1e-0d4a-4b6f-9e21-7c5d8a90b1f2"));
    CHECK(ran({"label", "plate.json"}) == "No food of this recipe states a label.\n");
}

TEST_CASE("a label is kept, and the next pack tells which figures it moves",
          "[commandline][label]") {
    const EmptyHome home;
    home.write("pack.json", labelOf("110"));
    home.write("pack.png", std::string_view{"\x89PNG\r\n\x1a\n with a label", 21});
    const std::string kept =
        ran(atLabelHome({"label", "pack.json", "--keep", "--photo", "pack.png"}));
    CHECK(kept.starts_with("Kept the label of “Hill cheese” as version 1 (own 1 "));
    const std::string number = kept.substr(kept.find("own 1 ") + 6, 36);
    CHECK(kept.ends_with(number + ")\n"));
    CHECK(says(ran(atLabelHome({"label", "hill"})), "Hill cheese\n"));
    CHECK(says(ran(atLabelHome({"label", "hill"})), "photo    pack.png, "));
    home.write("dish.json", cheeseDish(number));
    CHECK(ran(atLabelHome({"add", "dish.json"})) ==
          "Added “Cheese plate” as cheese-plate, revision 1, with 0 indications\n");
    const std::string again = "Kept the label of “Hill cheese” as version ";
    home.write("next.json", labelOf("120"));
    CHECK(ran(atLabelHome({"label", "next.json", "--keep", "--of", "hill cheese"})) ==
          again + "2 (own 2 " + number +
              ")\nPublished figures that move by more than their rounding:\n"
              "  Cheese plate (cheese-plate), revision 1\n"
              "    energy per slice: 110 kcal, now 120 kcal\n"
              "    energy in kJ per slice: 460 kJ, now 502 kJ\n"
              "    energy per portion: 220 kcal, now 240 kcal\n"
              "    energy in kJ per portion: 920 kJ, now 1004 kJ\n"
              "    energy per 100 g: 367 kcal, now 400 kcal\n"
              "    energy in kJ per 100 g: 1534 kJ, now 1674 kJ\n");
    CHECK(ran(atLabelHome({"label", "pack.json", "--keep", "--of", "hill cheese"})) ==
          again + "3 (own 3 " + number +
              ")\nNo published figure moves by more than its rounding.\n");
    CHECK(says(ran(atLabelHome({"verify"})), "No fault found.\n"));
}

TEST_CASE("an own food of a kitchen is a food of documents that are added there, and of no other",
          "[commandline][label]") {
    const EmptyHome home;
    const std::string other = "3f2b8c1e-0d4a-4b6f-9e21-7c5d8a90b1f2";
    const std::string sentence = "dish.json, /foods/0/table: no table at hand has the food own 1 " +
                                 other + " (table, release, number); correct them.";
    home.write("dish.json", cheeseDish(other));
    checkRun(atLabelHome({"add", "dish.json"}), sentence);
    checkRun({"figures", "dish.json"}, sentence);
}

TEST_CASE("a label is found by the number that was told when it was kept", "[commandline][label]") {
    const EmptyHome home;
    home.write("pack.json", labelOf("110"));
    const std::string kept = ran(atLabelHome({"label", "pack.json", "--keep"}));
    const std::string number = kept.substr(kept.find("own 1 ") + 6, 36);
    CHECK(says(ran(atLabelHome({"label", "pack.json", "--keep"})), "version 1 (own 1 "));
    CHECK(says(ran(atLabelHome({"label", number})), "Hill cheese\n"));
    home.write("next.json", labelOf("120"));
    CHECK(says(ran(atLabelHome({"label", "next.json", "--keep", "--of", number})),
               "version 2 (own 2 " + number));
    CHECK(says(ran(atLabelHome({"label", "own 1 " + number})), "Hill cheese\n"));
}

TEST_CASE("a photograph keeps as much of its file's name as a label can hold",
          "[commandline][label]") {
    const EmptyHome home;
    home.write("pack.json", labelOf("110"));
    const std::string name = "a\ab" + std::string(220, 'x') + ".png";
    home.write(name, std::string_view{"\x89PNG\r\n\x1a\n with a label", 21});
    ran(atLabelHome({"label", "pack.json", "--keep", "--photo", name}));
    CHECK(says(ran(atLabelHome({"label", "hill"})), "photo    a b" + std::string(30, 'x')));
}

TEST_CASE("the photograph of a label is written out as it was kept", "[commandline][label]") {
    const EmptyHome home;
    const std::string photo{"\xff\xd8\xff\xe0 with a label\0\n", 19};
    home.write("pack.jpg", photo);
    home.write("pack.json", labelOf("110"));
    ran(atLabelHome({"label", "pack.json", "--keep", "--photo", "pack.jpg"}));
    CHECK(says(ran(atLabelHome({"label", "hill", "--write-photo", "copy.jpg"})), "Hill cheese\n"));
    CHECK(home.read("copy.jpg") == photo);
    home.write("bare.json", edited(labelOf("110"), {{"/name", R"("Bare cheese")"}}));
    ran(atLabelHome({"label", "bare.json", "--keep"}));
    checkRun(atLabelHome({"label", "bare", "--write-photo", "none.jpg"}),
             "home.nettare: the kitchen does not have the photograph of this label; add it with "
             "--photo or with the next version.");
    CHECK(says(ran(atLabelHome({"verify"})), "No fault found.\n"));
}

TEST_CASE("a label is not kept with a photograph that the kitchen does not have",
          "[commandline][label]") {
    const EmptyHome home;
    const auto naming = [](const std::string& hash) {
        return edited(labelOf("110"),
                      {{"/label/photo", R"({"name": "far.jpg", "sha256": ")" + hash + "\"}"}});
    };
    home.write("far.json", naming(std::string(64, 'a')));
    checkRun(atLabelHome({"label", "far.json", "--keep"}),
             "far.json, /label/photo: the kitchen does not have the photograph of this label; add "
             "it with --photo or with the next version.");
    CHECK(labelsAtHome() == 0);
    CHECK(says(ran({"label", "far.json"}), "photo    far.jpg, "));
    home.write("pack.jpg", std::string_view{"\xff\xd8\xff\xe0 with a label\0\n", 19});
    ran(atLabelHome({"label", "far.json", "--keep", "--photo", "pack.jpg"}));
    const std::string shown = ran(atLabelHome({"label", "hill"}));
    const std::string hash = shown.substr(shown.find("pack.jpg, ") + 10, 64);
    home.write("near.json", naming(hash));
    CHECK(says(ran(atLabelHome({"label", "near.json", "--keep"})), "Kept the label"));
    CHECK(labelsAtHome() == 2);
}

TEST_CASE("the next pack keeps what its document does not state", "[commandline][label]") {
    const EmptyHome home;
    home.write("pack.json", edited(labelOf("110"), {{"/note", R"("a note")"},
                                                    {"/group", R"("cheese")"},
                                                    {"/plant", "true"},
                                                    {"/source", R"("the hill dairy")"},
                                                    {"/added_sugars", R"({"kind": "none",
                                                        "reason": "milk has none"})"}}));
    home.write("pack.jpg", std::string_view{"\xff\xd8\xff\xe0 with a label\0\n", 19});
    ran(atLabelHome({"label", "pack.json", "--keep", "--photo", "pack.jpg"}));
    {
        auto kitchen = Kitchen::open("home.nettare", KitchenAccess::Write);
        REQUIRE(kitchen);
        auto foods = kitchen->ownFoods();
        REQUIRE(foods);
        OwnFood own = foods->front().current;
        own.food.refusePercent = 4;
        own.food.refuseNote = "rind";
        own.food.measures = {{1, "slice", "", 25, 0, {}}};
        REQUIRE(kitchen->saveOwnFood(own, "2026-05-17T12:00:00+02:00"));
    }
    home.write("next.json", labelOf("120"));
    ran(atLabelHome({"label", "next.json", "--keep", "--of", "hill"}));
    const auto foods = Kitchen::open("home.nettare", KitchenAccess::Read)->ownFoods();
    REQUIRE(foods->size() == 1);
    const OwnFood& own = foods->front().current;
    CHECK(own.food.row.release == "3");
    CHECK(*own.food.label->printed(Component::ENERC_KCAL) == "120");
    CHECK(own.food.group == "cheese");
    CHECK(own.food.plant);
    CHECK(own.food.addedSugars.kind == AddedSugarKind::None);
    CHECK(own.food.addedSugars.reason == "milk has none");
    CHECK(own.food.refusePercent == 4.0);
    CHECK(own.food.refuseNote == "rind");
    REQUIRE(own.food.measures.size() == 1);
    CHECK(own.food.measures.front().grams == 25);
    CHECK(own.origin.source == "the hill dairy");
    CHECK(own.origin.note == "a note");
    CHECK_FALSE(own.food.label->photo);
    home.write("last.json",
               edited(labelOf("120"), {{"/note", R"("another")"}, {"/plant", "false"}}));
    ran(atLabelHome({"label", "last.json", "--keep", "--of", "hill"}));
    const auto last = Kitchen::open("home.nettare", KitchenAccess::Read)->ownFoods();
    CHECK(last->front().current.origin.note == "another");
    CHECK_FALSE(last->front().current.food.plant);
}

TEST_CASE("a label that weighs more than its serving is not kept, whatever its document says",
          "[commandline][label]") {
    const EmptyHome home;
    const std::string heavy = edited(labelOf("110"), {{"/label/serving_grams", R"("7")"}});
    home.write("heavy.json", heavy);
    const std::string text = ran({"label", "heavy.json"}, 1);
    CHECK(says(text, " No food is so: correct it, or leave that line out."));
    CHECK_FALSE(says(text, "\"finding\":\"too-heavy\""));
    home.write("said.json", edited(heavy, {{"/label/as_printed",
                                            R"([{"finding": "too-heavy", "about":
                                   "FAT 9, CHOCDF 1, PROCNT 7, 7 g"}])"}}));
    CHECK(says(ran(atLabelHome({"label", "said.json", "--keep"}), 1), "Not kept: "));
    CHECK(labelsAtHome() == 0);
}

TEST_CASE("a number and its unit stand once, however the document writes them",
          "[commandline][label]") {
    const ScratchKitchen folder;
    folder.write("doc.json",
                 edited(labelOf("110"), {{"/label/servings_per_pack", R"("about 33 servings")"},
                                         {"/label/declares/1/printed", R"("9 g")"}}));
    const std::string text = ran({"label", "doc.json"});
    CHECK(says(text, "pack     about 33 servings\n"));
    CHECK(says(text, "  Total Fat                              9 g    8.5–9.5 g"));
}

TEST_CASE("a day that there is not is no date of a label", "[commandline][label]") {
    checkRefused(edited(labelOf("110"), {{"/label/date", R"("2026-02-31")"}}),
                 "doc.json, /label/date: “2026-02-31” is no date; write it like 2026-05-16.",
                 {"label", "doc.json"});
}

TEST_CASE("a label with an open finding is not kept", "[commandline][label]") {
    const EmptyHome home;
    home.write("slip.json", labelOf("1100"));
    const std::string text = ran(atLabelHome({"label", "slip.json", "--keep"}), 1);
    CHECK(text.ends_with(
        "Not kept: put these right, or say in the document that they are as printed.\n"));
    CHECK(labelsAtHome() == 0);
}

TEST_CASE("a photograph that is none leaves nothing kept", "[commandline][label]") {
    const EmptyHome home;
    home.write("pack.json", labelOf("110"));
    home.write("note.txt", "no photograph");
    checkRun(atLabelHome({"label", "pack.json", "--keep", "--photo", "note.txt"}),
             "note.txt: the photograph is neither a JPEG nor a PNG file; choose one of these.");
    home.write("huge.png", std::string(std::size_t{21} * 1024 * 1024, 'x'));
    checkRun(atLabelHome({"label", "pack.json", "--keep", "--photo", "huge.png"}),
             "huge.png: the photograph is larger than 20 MiB; choose a smaller one.");
    CHECK(labelsAtHome() == 0);
}

TEST_CASE("what is no label is refused with one sentence", "[commandline][badinput][label]") {
    const EmptyHome home;
    const std::string good = labelOf("110");
    checkRun({"label", "none.json"},
             "none.json: this file cannot be read, there is no such file; check the path and try "
             "again.");
    const auto refused = [&](const DocumentEdit& edit, const std::string& sentence) {
        checkRefused(edited(good, {edit}), "doc.json" + sentence, {"label", "doc.json"});
    };
    refused({"/format", R"("nettare columns")"},
            ", /format: the format “nettare columns” is not a label document; it must say “nettare "
            "label”.");
    refused({"/label/date", ""}, ", /label: the key “date” is missing; add it.");
    refused(
        {"/label/serving_grams", ""},
        ", /label/serving_grams: the label of Hill cheese gives no size of its serving; add its "
        "grams or millilitres as printed.");
    refused({"/name", R"("Hill\u202echeese")"},
            ", /name: the text “Hill cheese” holds an invisible control character, such as a line "
            "break or a change of writing direction; remove it.");
    checkRefused("{",
                 "doc.json, line 1: the document ends too early, a quote or bracket is still open; "
                 "complete it or take a whole copy.",
                 {"label", "doc.json"});
    checkRun(atLabelHome({"label", "hill"}),
             "home.nettare: this kitchen has no label called “hill”; leave the name out to add a "
             "new one.");
    home.write("good.json", good);
    checkRun(atLabelHome({"label", "good.json", "--keep", "--of", "hill"}),
             "home.nettare: this kitchen has no label called “hill”; leave the name out to add a "
             "new one.");
    CHECK(labelsAtHome() == 0);
}

TEST_CASE("markup and long text in a label are text and no more", "[commandline][label]") {
    const EmptyHome home;
    const std::string name = "<script>x</script> %s {0} & \\\"cheese\\\"";
    const std::string hostile = edited(labelOf("110"), {{"/name", '"' + name + '"'}});
    home.write("doc.json", hostile);
    const std::string shown = "<script>x</script> %s {0} & \"cheese\"";
    CHECK(ran({"label", "doc.json"}).starts_with(shown + "\n"));
    CHECK(says(ran(atLabelHome({"label", "doc.json", "--keep"})), "“" + shown + "”"));
    CHECK(ran(atLabelHome({"label", "<script>"})).starts_with(shown + "\n"));
    checkRefused(edited(labelOf("110"), {{"/note", '"' + std::string(10'000, 'x') + '"'}}),
                 "doc.json, /note: the text “" + std::string(60, 'x') +
                     "…” is longer than 4000 characters; shorten it.",
                 {"label", "doc.json"});
}

}  // namespace nettare
