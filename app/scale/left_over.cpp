#include "app/scale/left_over.h"

#include <algorithm>
#include <array>

#include "app/scale/step_lines.h"
#include "app/sheet/document_texts.h"

namespace nettare {

namespace {

std::vector<std::string> idsIn(const Json& object, std::string_view list) {
    std::vector<std::string> ids;
    for (const Json& id : entriesIn(object, list))
        if (id.text() != nullptr) ids.push_back(*id.text());
    return ids;
}

bool hasTrue(const Json& object, std::string_view key) {
    return object.find(key) != nullptr;
}

bool isLine(const Json& document, const std::string& id) {
    return entryIn(document, "lines", id) != nullptr;
}

/// The lines in the order of the recipe.
std::vector<std::string> inOrder(const Json& document, const std::vector<std::string>& ids) {
    std::vector<std::string> ordered;
    for (const Json& line : entriesIn(document, "lines"))
        if (std::ranges::find(ids, memberText(&line, "id")) != ids.end())
            ordered.push_back(memberText(&line, "id"));
    return ordered;
}

LeftOver mixtureOf(const Json& document, const Json& residue) {
    LeftOver left;
    left.kind = ResidueKind::Mixture;
    left.lines = inOrder(document, idsIn(residue, "mixture"));
    for (const Json& share : entriesIn(residue, "shares"))
        left.shares.push_back({memberText(&share, "line"), memberText(&share, "share")});
    if (const std::string step = memberText(&residue, "mixed_at"); !step.empty())
        left.mixedAt = QString::fromStdString(step).toInt();
    return left;
}

/// Id of the document's food that is that row; empty where it has none.
std::string foodOfRow(const Json& document, const TableRow& row) {
    for (const Json& food : entriesIn(document, "foods"))
        if (const Json* table = food.find("table"); memberText(table, "number") == row.number &&
                                                    memberText(table, "table") == row.table &&
                                                    memberText(table, "release") == row.release)
            return memberText(&food, "id");
    return {};
}

}  // namespace

LeftOver leftOverOf(const Json& document, const Json& residue) {
    LeftOver left;
    if (residue.find("mixture") != nullptr) left = mixtureOf(document, residue);
    if (const std::string line = memberText(&residue, "line"); !line.empty()) {
        left.kind = ResidueKind::Line;
        left.lines = {line};
    }
    if (const std::string food = memberText(&residue, "drip"); !food.empty()) {
        left.kind = ResidueKind::Drip;
        left.drip.existing = food;
        left.drip.name = memberText(entryIn(document, "foods", food), "name");
    }
    if (hasTrue(residue, "water")) left.kind = ResidueKind::Water;
    if (hasTrue(residue, "not_eaten")) left.kind = ResidueKind::NotEaten;
    left.called = memberText(&residue, "called");
    return left;
}

bool isSame(const LeftOver& a, const LeftOver& b) {
    const bool named = !a.called.empty() && !b.called.empty();
    return a.kind == b.kind && a.drip.existing == b.drip.existing &&
           (!named || a.called == b.called) && std::ranges::is_permutation(a.lines, b.lines);
}

bool isSame(const ResidueEntry& residue, const LeftOver& left) {
    LeftOver there;
    there.kind = residue.kind;
    there.lines = residue.lines;
    there.drip.existing = residue.food.value_or("");
    there.called = residue.called;
    return isSame(there, left);
}

std::optional<std::size_t> residueLike(const Json& document, const LeftOver& left) {
    const Json::Array& residues = entriesIn(document, "residues");
    for (std::size_t i = 0; i < residues.size(); ++i)
        if (isSame(leftOverOf(document, residues[i]), left)) return i;
    return std::nullopt;
}

LeftOver suggestedLeftOver(const Json& document, const std::string& line) {
    const Json::Array& residues = entriesIn(document, "residues");
    for (auto residue = residues.rbegin(); residue != residues.rend(); ++residue)
        if (residue->find("mixture") != nullptr) return leftOverOf(document, *residue);
    LeftOver left;
    const Json::Array& steps = entriesIn(document, "steps");
    for (std::size_t i = 0; i < steps.size(); ++i) {
        left.lines = linesNamedIn(document, memberText(&steps[i], "text"));
        if (left.lines.size() < 2) continue;
        left.kind = ResidueKind::Mixture;
        left.mixedAt = static_cast<int>(i) + 1;
        return left;
    }
    left.lines.clear();
    if (!isLine(document, line)) return left;
    left.kind = ResidueKind::Line;
    left.lines = {line};
    return left;
}

LeftOver stillThere(const Json& document, LeftOver left) {
    left.lines = inOrder(document, left.lines);
    std::erase_if(left.shares, [&](const ShareEntry& share) {
        return std::ranges::find(left.lines, share.line) == left.lines.end();
    });
    if (left.mixedAt &&
        static_cast<std::size_t>(*left.mixedAt) > entriesIn(document, "steps").size())
        left.mixedAt.reset();
    if (!left.drip.existing.empty() && entryIn(document, "foods", left.drip.existing) == nullptr)
        left.drip.existing.clear();
    if (left.drip.existing.empty() && left.drip.row.number.empty()) left.drip = {};
    // A row that came into the recipe with a weighing is one of its foods now.
    if (left.drip.existing.empty() && !left.drip.name.empty())
        left.drip.existing = foodOfRow(document, left.drip.row);
    return left;
}

bool isComplete(const LeftOver& left) {
    switch (left.kind) {
        case ResidueKind::Line:
        case ResidueKind::Mixture:
            return !left.lines.empty();
        case ResidueKind::Drip:
            return !left.drip.name.empty();
        default:
            return true;
    }
}

}  // namespace nettare
