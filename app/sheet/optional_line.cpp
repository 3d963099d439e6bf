#include "app/sheet/optional_line.h"

#include <QCoreApplication>
#include <QStringList>

#include "app/sheet/document_texts.h"
#include "core/edit/counting_edits.h"

namespace nettare {

namespace {

struct OptionalWords {
    Q_DECLARE_TR_FUNCTIONS(OptionalLine)
};

bool isOptional(const Json& line) {
    const Json* optional = line.find("optional");
    return optional != nullptr && *optional == Json{true};
}

}  // namespace

Result<void> toggleOptional(DraftSession& draft, const std::string& line) {
    const Json* entry = entryIn(draft.document(), "lines", line);
    if (entry == nullptr) return {};
    const auto edit = setOptional(draft.document(), line, !isOptional(*entry));
    if (!edit) return fail(edit.error());
    draft.endTyping();
    return draft.apply(edit->edit);
}

QString withOptional(const Json& line, const QString& preparation) {
    QStringList parts;
    if (isOptional(line)) parts += OptionalWords::tr("optional");
    if (!preparation.isEmpty()) parts += preparation;
    return parts.join(QStringLiteral(" · "));
}

}  // namespace nettare
