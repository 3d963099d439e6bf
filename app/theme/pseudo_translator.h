#pragma once

#include <QTranslator>

namespace nettare {

/// A language that nobody speaks: every text in brackets, with accents, some 40 % longer. A text
/// without brackets was not handed to tr(); one that is cut has no room for other languages.
/// %1, %n, mnemonics, tags and names in braces stay whole.
class PseudoTranslator : public QTranslator {
    Q_OBJECT

public:
    using QTranslator::QTranslator;

    [[nodiscard]] QString translate(const char* context, const char* source,
                                    const char* disambiguation = nullptr,
                                    int n = -1) const override;
    [[nodiscard]] bool isEmpty() const override { return false; }
};

/// What the translator makes of a text.
[[nodiscard]] QString pseudoText(const QString& source);

}  // namespace nettare
