#pragma once

#include <QString>

namespace nettare {

class DraftSession;

/// The title as the draft has it now, with or without figures; empty without a draft.
[[nodiscard]] QString draftTitle(const DraftSession* draft);

}  // namespace nettare
