#include "app/session/draft_title.h"

#include "app/session/draft_session.h"

namespace nettare {

QString draftTitle(const DraftSession* draft) {
    const Json* const title = draft == nullptr ? nullptr : draft->document().find("title");
    const std::string* const text = title == nullptr ? nullptr : title->text();
    return text == nullptr ? QString{} : QString::fromStdString(*text);
}

}  // namespace nettare
