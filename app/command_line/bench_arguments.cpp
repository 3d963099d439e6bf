#include "app/command_line/bench_arguments.h"

#include <fmt/core.h>
#include <CLI/CLI.hpp>

#include <algorithm>
#include <charconv>

#include "app/command_line/bench_help.h"
#include "app/scale/shown_number.h"
#include "core/support/text.h"

namespace nettare {

namespace {

constexpr std::size_t kLongestNumber = 40;
constexpr int kMostPiecesTogether = 9999;
constexpr int kMostOthers = 1'000'000;
constexpr double kLeastWithin_g = 0.001, kMostWithin_g = 1e6;

/// A number between two ends, typed as a scale's are; a comma is made a point.
CLI::Validator numberFrom(double least, double most) {
    return CLI::Validator{[least, most](std::string& text) {
                              const auto number = readShown(text, groupMarkHere());
                              if (!number || number->value() < least || number->value() > most)
                                  return fmt::format("“{}” is no number from {} to {:.0f}",
                                                     shortened(text, kLongestNumber), least, most);
                              text = number->text();
                              return std::string{};
                          },
                          {}};
}

/// A count of pieces.
CLI::Validator countUpTo(int most) {
    return CLI::Validator{[most](std::string& text) {
                              int count = 0;
                              const auto [end, wrong] =
                                  std::from_chars(text.data(), text.data() + text.size(), count);
                              const bool whole =
                                  wrong == std::errc{} && end == text.data() + text.size();
                              if (whole && count >= 1 && count <= most) return std::string{};
                              return fmt::format("“{}” is no whole number from 1 to {}",
                                                 shortened(text, kLongestNumber), most);
                          },
                          {}};
}

}  // namespace

void BenchArguments::addTo(CLI::App& app) {
    readingCommand_ = app.add_subcommand("reading", "Record what a scale shows");
    scaleCommand_ = app.add_subcommand("scale", "Keep a scale, check it, or list all");
    vesselCommand_ = app.add_subcommand("vessel", "Keep the tare of an empty vessel");
    seriesCommand_ = app.add_subcommand("series", "Show what a yield series says, or list all");
    ledgerCommand_ = app.add_subcommand("ledger", "Print the ledger");
    verifyCommand_ = app.add_subcommand("verify", "Check that a kitchen is whole");
    commands_ = {readingCommand_, scaleCommand_,  vesselCommand_,
                 seriesCommand_,  ledgerCommand_, verifyCommand_};
    addReading();
    addReadingSeries();
    addReadingSpeaksOf();
    addEquipment();
    addSeries();
    addLedger();
}

void BenchArguments::addReading() {
    readingCommand_->footer(std::string{kReadingExamples});
    readingCommand_->add_option("WHAT", reading_.what, "What lies on the scale, in your own words");
    readingCommand_->add_option("GROSS", reading_.gross, "What the scale shows");
    readingCommand_->add_option("--scale", reading_.scale, "Its name, where you have several")
        ->type_name("NAME");
    CLI::Option* tare = readingCommand_->add_option(
        "--tare", reading_.tare, "What it showed with the empty vessel (default: zeroed)");
    CLI::Option* vessel = readingCommand_->add_option("--vessel", reading_.vessel,
                                                      "The vessel below, by its known tare");
    CLI::Option* after = readingCommand_->add_option(
        "--after", reading_.after, "Reading that showed the bowl before this was added");
    CLI::Option* from = readingCommand_->add_option(
        "--from", reading_.from, "Reading that showed the jar before this was taken from it");
    tare->type_name("GROSS")->excludes(vessel)->excludes(after)->excludes(from);
    vessel->type_name("NAME")->excludes(after)->excludes(from);
    after->type_name("ID")->excludes(from);
    from->type_name("ID");
    readingCommand_->add_option("--pieces", reading_.pieces, "Pieces weighed together")
        ->check(CLI::Range(1, kMostPiecesTogether))
        ->default_str("1");
    readingCommand_->add_option("--state", reading_.state, "As what it was weighed")
        ->check(CLI::IsMember({"empty", "as purchased", "edible portion", "cooked", "residue"}))
        ->default_str("edible portion");
    readingCommand_->add_option("--why", reading_.why, "What for")->type_name("TEXT");
    readingCommand_->add_option("--row", reading_.row, "Its row: table, release and number")
        ->type_name("\"TABLE RELEASE NUMBER\"");
}

void BenchArguments::addReadingSeries() {
    CLI::Option* perPiece = readingCommand_->add_option(
        "--per-piece", reading_.perPiece, "A reading of the yield series of pieces called so");
    CLI::Option* perMeasure = readingCommand_->add_option(
        "--per-measure", reading_.perMeasure, "The same of a household measure: cup, tbsp ...");
    CLI::Option* ratio = readingCommand_->add_option(
        "--ratio", reading_.ratio,
        "The same of what came out over what went in: \"edible / bought\", \"cooked / raw\" ...");
    CLI::Option* before = readingCommand_->add_option("--before", reading_.before,
                                                      "Reading of what went in, for --ratio");
    perPiece->type_name("WORD")->excludes(perMeasure)->excludes(ratio);
    perMeasure->type_name("UNIT")->excludes(ratio);
    ratio->type_name("TEXT")->needs(before);
    before->type_name("ID")->needs(ratio);
    readingCommand_
        ->add_option("--tag", reading_.tags, "Condition that splits the series; may come again")
        ->type_name("TEXT")
        ->allow_extra_args(false);
}

void BenchArguments::addReadingSpeaksOf() {
    CLI::Option* instead = readingCommand_->add_option(
        "--instead-of", reading_.insteadOf,
        "Reading that this one takes the place of; what is not said is taken over from it");
    CLI::Option* takeBack = readingCommand_->add_option("--take-back", reading_.takeBack,
                                                        "Reading that no longer counts");
    CLI::Option* leaveOut = readingCommand_->add_option("--leave-out", reading_.leaveOut,
                                                        "Reading that its series leaves out");
    CLI::Option* takeIn = readingCommand_->add_option("--take-in", reading_.takeIn,
                                                      "Reading that was left out and counts again");
    CLI::Option* asWeighed = readingCommand_->add_option(
        "--as-weighed", reading_.asWeighed, "Odd reading of a series that is right as it is");
    const std::vector<CLI::Option*> sayings{instead, takeBack, leaveOut, takeIn, asWeighed};
    for (std::size_t i = 0; i < sayings.size(); ++i) {
        sayings[i]->type_name("ID");
        for (std::size_t j = i + 1; j < sayings.size(); ++j) sayings[i]->excludes(sayings[j]);
    }
    readingCommand_->add_option("--because", reading_.because, "Why")->type_name("TEXT");
}

void BenchArguments::addEquipment() {
    scaleCommand_->footer(std::string{kScaleExamples});
    scaleCommand_->add_option("NAME", scale_.name, "What you call it");
    CLI::Option* step =
        scaleCommand_->add_option("--step", scale_.step, "Smallest step it shows; keeps the scale");
    scaleCommand_->add_option("--unit", scale_.unit, "What it shows")
        ->check(CLI::IsMember({"g", "kg", "mg", "oz", "lb"}))
        ->capture_default_str();
    scaleCommand_->add_option("--capacity", scale_.capacity, "The most it takes")->needs(step);
    CLI::Option* mass =
        scaleCommand_->add_option("--mass", scale_.mass, "Known mass that it was checked with");
    CLI::Option* showed =
        scaleCommand_->add_option("--showed", scale_.showed, "What it showed for that mass");
    mass->needs(showed)->excludes(step);
    showed->needs(mass);
    vesselCommand_->footer(std::string{kVesselExamples});
    vesselCommand_->add_option("NAME", vessel_.name, "What you call it")->required();
    vesselCommand_->add_option("SHOWN", vessel_.shown, "What the scale shows with it, empty")
        ->required();
    vesselCommand_->add_option("--scale", vessel_.scale, "Its name, where you have several")
        ->type_name("NAME");
}

void BenchArguments::addSeries() {
    seriesCommand_->footer(std::string{kSeriesExamples});
    CLI::Option* food =
        seriesCommand_->add_option("FOOD", series_.food, "The food, or the start of its name");
    seriesCommand_
        ->add_option("--of", series_.of, "Its piece, measure or ratio, where it has several")
        ->type_name("WORD");
    seriesCommand_->add_option("--tag", series_.tags, "Only readings with that condition")
        ->type_name("TEXT")
        ->allow_extra_args(false);
    CLI::Option* others =
        seriesCommand_->add_option("--others", series_.others, "How much that many others weigh")
            ->type_name("N")
            ->check(countUpTo(kMostOthers));
    seriesCommand_
        ->add_option("--within", series_.within,
                     "How many more weighings bring those others to ± so many grams")
        ->type_name("GRAMS")
        ->transform(numberFrom(kLeastWithin_g, kMostWithin_g))
        ->needs(others);
    CLI::Option* usual =
        seriesCommand_->add_flag("--pool", series_.pool, "Pool its spread with the assumed one");
    seriesCommand_
        ->add_option("--pool-with", series_.poolWith,
                     "Pool its spread with that of an earlier series of the same piece, measure or "
                     "ratio")
        ->type_name("\"FOOD[: OF]\"")
        ->excludes(usual);
    seriesCommand_
        ->add_option("--pool-tag", series_.poolTag,
                     "Of that series, or of the one shown, only readings with that condition")
        ->type_name("TEXT")
        ->excludes(usual);
    seriesCommand_
        ->add_option("--for", series_.recipe,
                     "How many more weighings keep the ceilings of that recipe of the kitchen")
        ->type_name("RECIPE")
        ->needs(food);
    seriesCommand_->add_flag("--json", series_.json, "The same for other programs, as JSON");
}

void BenchArguments::addLedger() {
    ledgerCommand_->footer(std::string{kLedgerExamples});
    ledgerCommand_->add_flag("--csv", ledger_.csv, "All that the ledger says, as CSV");
    ledgerCommand_->add_option("--out", ledger_.out, "File to write (default: standard output)")
        ->type_name("FILE");
    verifyCommand_->footer(std::string{kVerifyExamples});
    verifyCommand_->add_option("--head", verify_.head, "Hash that a printout names as the ledger's")
        ->type_name("HASH");
}

std::optional<Command> BenchArguments::given() const {
    if (*readingCommand_) return reading_;
    if (*scaleCommand_) return scale_;
    if (*vesselCommand_) return vessel_;
    if (*seriesCommand_) return series_;
    if (*ledgerCommand_) return ledger_;
    if (*verifyCommand_) return verify_;
    return std::nullopt;
}

// A name that a script leaves empty is no wish for what holds without one.
std::optional<std::string> BenchArguments::emptyArgument() const {
    for (const CLI::App* const command : commands_) {
        if (!*command) continue;
        for (const CLI::Option* const option : command->get_options()) {
            const auto& given = option->results();
            const bool isEmpty = std::ranges::any_of(
                given, [](const std::string& text) { return trimmed(text).empty(); });
            if (isEmpty)
                return option->get_name(option->get_positional()) + " is empty, say what is meant";
        }
    }
    return std::nullopt;
}

std::optional<std::string> BenchArguments::wrong() const {
    if (auto empty = emptyArgument()) return empty;
    if (*readingCommand_) return wrongReading();
    if (*scaleCommand_) return wrongScale();
    return std::nullopt;
}

std::optional<std::string> BenchArguments::wrongReading() const {
    const bool explains =
        !reading_.takeBack.empty() || !reading_.leaveOut.empty() || !reading_.takeIn.empty();
    const bool speaks = explains || !reading_.asWeighed.empty();
    const bool names = !reading_.what.empty() || !reading_.gross.empty();
    if (speaks && names)
        return "--take-back, --leave-out, --take-in and --as-weighed speak of a reading that is "
               "there, leave WHAT and GROSS out";
    if (!speaks && (reading_.what.empty() || reading_.gross.empty()))
        return "a reading is WHAT and GROSS, name both";
    const bool needsReason = explains || !reading_.insteadOf.empty();
    if (needsReason && reading_.because.empty()) return "--because TEXT is missing, say why";
    if (!needsReason && !speaks && !reading_.because.empty())
        return "--because says why a reading no longer counts, leave it out";
    const bool inSeries =
        !reading_.perPiece.empty() || !reading_.perMeasure.empty() || !reading_.ratio.empty();
    if (!inSeries && !reading_.tags.empty() && reading_.insteadOf.empty())
        return "--tag splits a series, name it with --per-piece, --per-measure or --ratio";
    return std::nullopt;
}

std::optional<std::string> BenchArguments::wrongScale() const {
    const bool asks = !scale_.step.empty() || !scale_.mass.empty();
    if (scale_.name.empty() && asks) return "the scale is not named, name it first";
    if (!scale_.name.empty() && !asks)
        return "--step keeps a scale, --mass and --showed check it, give one of them";
    const auto step = readShown(scale_.step, groupMarkHere());
    const auto most = readShown(scale_.capacity, groupMarkHere());
    if (step && most && *most <= *step)
        return "--capacity is not more than --step, look for “Max” on the plate of the scale";
    return std::nullopt;
}

}  // namespace nettare
