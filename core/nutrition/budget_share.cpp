#include "core/nutrition/budget_share.h"

#include <fmt/core.h>

#include <algorithm>
#include <map>

#include "core/nutrition/share_name.h"

namespace nettare {

namespace {

using BySubject = std::map<ShareSubject, std::vector<Contribution>>;

/// Two lines of garlic whose size is not said are told apart by their places.
void tellApart(const std::vector<ShareSubject>& subjects, const Dossier& dossier,
               std::vector<BudgetShare>& shares) {
    std::map<std::string, int> named;
    for (const BudgetShare& share : shares) ++named[share.name];
    for (std::size_t i = 0; i < shares.size(); ++i) {
        if (named[shares[i].name] == 1) continue;
        const std::string site = shareSite(subjects[i], dossier);
        if (!site.empty()) shares[i].name = fmt::format("{} ({})", shares[i].name, site);
    }
}

double varianceOf(const std::vector<Contribution>& parts) {
    double variance = 0;
    for (const Contribution& part : parts) variance += part.share();
    return variance;
}

}  // namespace

std::vector<BudgetShare> budgetShares(Component component, const Figures& figures,
                                      const Dossier& dossier, const Cooked& cooked) {
    const auto all = contributionsTo(component, figures.block, cooked.compositions);
    const double total = varianceOf(all);
    if (total <= 0) return {};
    const auto ofIndications = subjectsOfIndications(dossier);
    BySubject bySubject;
    for (const Contribution& part : all)
        bySubject[subjectOf(part.source, cooked, ofIndications)].push_back(part);
    std::vector<BudgetShare> shares;
    std::vector<ShareSubject> subjects;
    for (auto& [subject, parts] : bySubject) {
        BudgetShare share{kindOf(subject),
                          shareName(subject, component, parts, dossier),
                          varianceOf(parts) / total,
                          {}};
        share.parts = std::move(parts);
        shares.push_back(std::move(share));
        subjects.push_back(subject);
    }
    tellApart(subjects, dossier, shares);
    std::ranges::sort(shares, [](const BudgetShare& a, const BudgetShare& b) {
        return a.share != b.share ? a.share > b.share : a.name < b.name;
    });
    return shares;
}

std::vector<BudgetShare> largestShares(std::vector<BudgetShare> shares, std::size_t most,
                                       double least) {
    std::size_t kept = 0;
    while (kept < shares.size() && kept < most && shares[kept].share >= least) ++kept;
    if (kept == shares.size()) return shares;
    BudgetShare rest{shares[kept].kind, "everything else", 0, {}};
    for (std::size_t i = kept; i < shares.size(); ++i) {
        rest.share += shares[i].share;
        rest.parts.insert(rest.parts.end(), shares[i].parts.begin(), shares[i].parts.end());
    }
    shares.erase(shares.begin() + static_cast<std::ptrdiff_t>(kept), shares.end());
    shares.push_back(std::move(rest));
    return shares;
}

}  // namespace nettare
