#include "app/path/figure_plot.h"

#include <QCoreApplication>

#include <algorithm>
#include <charconv>
#include <cmath>

#include "app/path/path_texts.h"
#include "app/path/share_bars.h"
#include "core/publish/number_text.h"
#include "core/simulation/figure_model.h"

namespace nettare {

namespace {

struct PlotWords {
    Q_DECLARE_TR_FUNCTIONS(FigurePlot)
};

constexpr std::size_t kMostLineBars = 12, kMostShareBars = 8;
constexpr double kLeastShareBar = 0.02;
constexpr std::size_t kBins = 60;

void eraseAll(std::string& text, std::string_view part) {
    for (auto at = text.find(part); at != std::string::npos; at = text.find(part))
        text.erase(at, part.size());
}

const PathStep* batchIn(const PathStep& step) {
    if (step.kind == PathKind::Batch) return &step;
    for (const PathStep& below : step.below)
        if (const PathStep* found = batchIn(below)) return found;
    return nullptr;
}

QString nameOfStep(const PathStep& step, const Recipe& recipe) {
    if (step.line && *step.line < recipe.lines.size())
        return QString::fromStdString(recipe.lines[*step.line].name);
    return QString::fromStdString(step.words);
}

/// Those beyond the most become one last bar.
void gatherRest(std::vector<PlotBar>& bars, std::size_t most) {
    if (bars.size() <= most) return;
    PlotBar rest;
    const std::size_t kept = most - 1;
    // Always two or more.
    rest.name = PlotWords::tr("%n more lines", nullptr, static_cast<int>(bars.size() - kept));
    for (std::size_t i = kept; i < bars.size(); ++i) rest.value += bars[i].value;
    bars.resize(kept);
    bars.push_back(rest);
}

std::vector<PlotBar> lineBars(const PathStep& path, const Recipe& recipe, const FigurePlot& plot) {
    const PathStep* const batch = batchIn(path);
    std::vector<PlotBar> bars;
    double sum = 0;
    for (const PathStep& step : batch == nullptr ? path.below : batch->below) {
        const auto value = printedNumber(step.value);
        if (!value) continue;
        bars.push_back({nameOfStep(step, recipe), {}, *value});
        sum += *value;
    }
    std::ranges::stable_sort(bars, [](const PlotBar& a, const PlotBar& b) {
        return std::abs(a.value) > std::abs(b.value);
    });
    gatherRest(bars, kMostLineBars);
    for (PlotBar& bar : bars) {
        bar.value *= sum > 0 ? plot.value / sum : 0;
        bar.text = PlotWords::tr("%1 %2").arg(
            QString::fromStdString(numberAt(plot.decimals, bar.value)), plot.unit);
    }
    return bars;
}

std::vector<PlotBar> shareBarsOf(const std::vector<BudgetShare>& shares) {
    std::vector<PlotBar> bars;
    for (const BudgetShare& share : largestShares(shares, kMostShareBars, kLeastShareBar))
        bars.push_back(
            {QString::fromStdString(share.name), shareText(share.share), 100 * share.share});
    return bars;
}

void addTargets(FigurePlot& plot, PathQuestion question, const Evaluation& evaluation) {
    for (const TargetEntry& target : evaluation.dossier.main().targets) {
        if (target.component != question.component || target.per != question.basis) continue;
        if (target.atMost) {
            plot.ceiling = target.atMost->value();
            plot.ceilingText = QString::fromStdString(target.atMost->text());
        }
        if (target.atLeast) {
            plot.floor = target.atLeast->value();
            plot.floorText = QString::fromStdString(target.atLeast->text());
        }
    }
}

/// Only the middle 99.8 %: the rarest trials would leave no room for the others.
void addTrials(FigurePlot& plot, const Figure& figure, const Simulation& simulation) {
    plot.simulated = intervalOf(figure, simulation);
    plot.simulatedText = endsText(figure.component, *plot.simulated);
    const auto& sorted = simulation.sorted;
    if (sorted.size() < 1000) return;
    plot.trialsFrom = sorted[sorted.size() / 1000];
    plot.trialsTo = sorted[sorted.size() - 1 - sorted.size() / 1000];
    if (!(plot.trialsTo > plot.trialsFrom)) return;
    const double step = (plot.trialsTo - plot.trialsFrom) / static_cast<double>(kBins);
    auto from = std::ranges::lower_bound(sorted, plot.trialsFrom);
    double most = 1;
    for (std::size_t bin = 1; bin <= kBins; ++bin) {
        const double end = plot.trialsFrom + step * static_cast<double>(bin);
        const auto to = std::lower_bound(from, sorted.end(), end);
        plot.trials.push_back(static_cast<double>(to - from));
        most = std::max(most, plot.trials.back());
        from = to;
    }
    for (double& bin : plot.trials) bin /= most;
}

}  // namespace

std::optional<double> printedNumber(std::string text) {
    constexpr std::string_view kMinus = "\u2212", kNarrow = "\u202F";
    const bool negative = text.starts_with(kMinus);
    if (negative) text.erase(0, kMinus.size());
    eraseAll(text, kNarrow);
    double value = 0;
    const char* const end = text.data() + text.size();
    const auto [stop, error] = std::from_chars(text.data(), end, value);
    if (error != std::errc{} || stop != end) return {};
    return negative ? -value : value;
}

FigurePlot figurePlotOf(PathQuestion question, const Evaluation& evaluation, const PathStep& path,
                        const std::vector<BudgetShare>& shares, const Simulation* simulation) {
    const Figure& figure = (*evaluation[question.basis])[question.component];
    const ComponentFacts& facts = factsOf(question.component);
    FigurePlot plot;
    plot.unit = QString::fromUtf8(facts.unit.data(), static_cast<qsizetype>(facts.unit.size()));
    plot.decimals = facts.decimals;
    plot.value = figure.complete() ? figure.value : figure.atLeast;
    plot.interval = intervalOf(figure);
    plot.intervalText = endsText(question.component, plot.interval);
    plot.lines = lineBars(path, evaluation.dossier.main(), plot);
    plot.shares = shareBarsOf(shares);
    addTargets(plot, question, evaluation);
    if (simulation != nullptr) addTrials(plot, figure, *simulation);
    return plot;
}

}  // namespace nettare
