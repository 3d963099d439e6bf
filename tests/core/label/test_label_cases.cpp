#include <catch2/catch.hpp>

#include "label_cases.h"

#include <set>

using namespace nettare;

TEST_CASE("every topic of the case file is checked by a test, every row cites its rule",
          "[label]") {
    const std::set<std::string> checked{
        "us_calories",     "us_fat",           "us_trans_fat",     "us_saturated_fat",
        "us_cholesterol",  "us_sodium",        "us_carbohydrate",  "us_fiber",
        "us_total_sugars", "us_added_sugars",  "us_protein",       "us_vm_amount",
        "us_pctdv_drv",    "us_pctdv_basis",   "us_pctdv_vm",      "us_pctdv_rdi",
        "us_servings",     "us_label_measure", "us_household_tie", "us_discrete_unit",
    };
    std::set<std::string> found;
    std::set<std::string> ids;
    for (const LabelCase& row : labelCases()) {
        CAPTURE(row.id);
        found.insert(row.topic);
        CHECK(ids.insert(row.id).second);
        CHECK_FALSE(row.source.empty());
        CHECK_FALSE(row.lawful.empty());
    }
    CHECK(found == checked);
}
