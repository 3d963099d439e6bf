#include "app/theme/pseudo_translator.h"

#include <QRegularExpression>
#include <QStringList>

#include <cmath>

namespace nettare {

namespace {

constexpr double kLonger = 1.4;

QChar accented(QChar letter) {
    static const QString plain = QStringLiteral("aceinosuyzACEINOSUYZ");
    static const QString dressed = QStringLiteral("áçéîñöšûýžÁÇÉÎÑÖŠÛÝŽ");
    const qsizetype at = plain.indexOf(letter);
    return at < 0 ? letter : dressed[at];
}

/// What must arrive as it was: placeholders, tags, names in braces, entities, mnemonics.
const QRegularExpression& wholeParts() {
    static const QRegularExpression parts{
        QStringLiteral(R"(%L?\d+|%n|<[^>]*>|\{[^}]*\}|&\w+;|&.)")};
    return parts;
}

QString dressedText(QStringView text) {
    QString dressed;
    for (const QChar letter : text) dressed += accented(letter);
    return dressed;
}

/// Filler in short words, so that what wraps still can.
QString filler(qsizetype letters) {
    static const QString words = QStringLiteral(" lörém îpsum dölör sît ámét");
    QString text;
    while (text.size() < letters) text += words;
    text.truncate(letters);
    if (text.endsWith(u' ')) text.back() = u'~';
    return text;
}

}  // namespace

QString pseudoText(const QString& source) {
    if (source.trimmed().isEmpty()) return source;
    QString text;
    qsizetype from = 0;
    for (auto parts = wholeParts().globalMatch(source); parts.hasNext();) {
        const QRegularExpressionMatch part = parts.next();
        text += dressedText(QStringView{source}.sliced(from, part.capturedStart() - from));
        text += part.captured();
        from = part.capturedEnd();
    }
    text += dressedText(QStringView{source}.sliced(from));
    const auto wanted =
        static_cast<qsizetype>(std::lround(static_cast<double>(source.size()) * kLonger));
    constexpr qsizetype kBrackets = 2;
    return u'[' + text + filler(wanted - text.size() - kBrackets) + u']';
}

QString PseudoTranslator::translate(const char*, const char* source, const char*, int) const {
    return pseudoText(QString::fromUtf8(source));
}

}  // namespace nettare
