#include "command_line/bench_kitchen.h"

#include <catch2/catch.hpp>
#include <regex>

#include "db/kitchen/kitchen.h"

BenchKitchen::BenchKitchen() {
    REQUIRE(nettare::Kitchen::create("bench.nettare", "2026-05-16T12:00:00+02:00"));
    (*this)({"scale", "counter", "--step", "0.1", "--capacity", "3000"});
}

std::vector<std::string> BenchKitchen::here(std::vector<std::string> arguments) {
    arguments.insert(arguments.begin(), {"--kitchen", "bench.nettare"});
    return arguments;
}

std::string BenchKitchen::operator()(std::vector<std::string> arguments) const {
    const Outcome outcome = run(here(std::move(arguments)));
    INFO(outcome.err);
    CHECK(outcome.code == 0);
    CHECK(outcome.err.empty());
    return outcome.out;
}

std::string BenchKitchen::reading(std::vector<std::string> arguments) const {
    arguments.insert(arguments.begin(), "reading");
    const std::string text = (*this)(std::move(arguments));
    const std::size_t at = text.find("\n  id ");
    REQUIRE(at != std::string::npos);
    return text.substr(at + 6, 36);
}

std::string withoutIds(const std::string& text) {
    const std::string hex = "[0-9a-f]";
    std::string plain = std::regex_replace(text, std::regex{hex + "{64}"}, "HASH");
    plain = std::regex_replace(
        plain, std::regex{hex + "{8}-" + hex + "{4}-" + hex + "{4}-" + hex + "{4}-" + hex + "{12}"},
        "ID");
    plain = std::regex_replace(
        plain, std::regex{"[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9:]{8}([+-][0-9]{2}:[0-9]{2}|Z)"}, "TIME");
    return std::regex_replace(plain, std::regex{"\\b" + hex + "{8}\\b"}, "id");
}
