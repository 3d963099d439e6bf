#pragma once

#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/edit/edit_draft.h"
#include "core/ledger/ledger_reading.h"
#include "core/recipe/recipe_document.h"

namespace nettare {

/// Puts readings of the ledger into a document, with the scales, vessels and indications that it
/// lacks. What is there already is used again: the same moment at a scale is one source. The tare
/// of a vessel that the ledger weighed empty becomes a vessel of the document.
class LedgerReadings {
public:
    /// Both outlive this.
    LedgerReadings(const Json& document, EditDraft& draft);
    /// Readings that others may refer to; they outlive this.
    void know(const std::vector<LedgerReading>& readings);

    /// The reading of an entry, or what took its place since; null where it is not known or was
    /// taken back.
    [[nodiscard]] const LedgerReading* standing(const std::string& entry) const;
    /// The document's id of a reading that it holds; nothing where it does not.
    [[nodiscard]] std::optional<std::string> idOf(const LedgerReading& reading) const;
    /// Its id after it was added where it was not there; nothing where it has no net, or where an
    /// indication that it needs is not known.
    [[nodiscard]] std::optional<std::string> add(const LedgerReading& reading);

private:
    /// The two indications of a net; no tare where that of a vessel is known, and no vessel where
    /// only its tare is told.
    struct Parts {
        const LedgerReading* gross = nullptr;
        const LedgerReading* tare = nullptr;
        const LedgerReading* vessel = nullptr;  ///< as it was weighed empty
    };
    using Entries = std::unordered_multimap<std::string_view, const Json*>;

    [[nodiscard]] const LedgerReading* known(const std::string& entry) const;
    [[nodiscard]] std::optional<Parts> partsOf(const LedgerReading& reading) const;
    [[nodiscard]] std::optional<std::string> scaleOf(const LedgerEntry& entry) const;
    [[nodiscard]] std::string_view unitOfScale(std::string_view id) const;
    [[nodiscard]] std::optional<std::string> vesselOf(const Parts& parts) const;
    [[nodiscard]] bool isVessel(const Json& vessel, const Parts& parts) const;
    [[nodiscard]] std::optional<std::string> indicationOf(const LedgerReading& reading) const;
    [[nodiscard]] bool isSameMoment(const Json& indication, const LedgerEntry& entry) const;
    [[nodiscard]] const Json* readingAt(const LedgerReading& reading, const Parts& parts) const;
    std::string addScale(const LedgerEntry& entry);
    std::string addVessel(const Parts& parts);
    std::string addIndication(const LedgerReading& reading);

    const Json& document_;
    EditDraft& draft_;
    std::unordered_map<std::string_view, const LedgerReading*> known_;
    Json equipment_;       ///< scales and vessels of the document, and those that were added
    Entries indications_;  ///< of the document, by id
    Entries readings_;     ///< of the document, by their gross
    std::map<std::string, std::string> added_;  ///< readings, by the ids of their entries
    std::set<std::string> indicated_;           ///< entries whose indications were added
};

}  // namespace nettare
