#include "app/sheet/refusal_line.h"

#include "app/theme/spacing.h"

namespace nettare {

RefusalLine::RefusalLine(QWidget* parent) : QLabel{parent} {
    setProperty("tone", QStringLiteral("error"));
    setWordWrap(true);
    setTextFormat(Qt::PlainText);
    setContentsMargins(0, kSpace1Px, 0, kSpace1Px);
    hide();
}

void RefusalLine::tell(QObject* field, const QString& sentence) {
    if (sentence.isEmpty()) {
        sentences_.erase(field);
    } else {
        if (!sentences_.contains(field))
            connect(field, &QObject::destroyed, this, [this, field] {
                sentences_.erase(field);
                follow();
            });
        sentences_[field] = sentence;
    }
    follow();
}

void RefusalLine::follow() {
    setText(sentences_.empty() ? QString{} : sentences_.begin()->second);
    setVisible(!sentences_.empty());
}

}  // namespace nettare
