#pragma once

#include <QLabel>

#include <map>

namespace nettare {

/// The line below a group of fields that says what is wrong in one of them. Takes no room while all
/// is well.
class RefusalLine : public QLabel {
    Q_OBJECT

public:
    explicit RefusalLine(QWidget* parent = nullptr);

    /// What a field says; empty once it is fine.
    void tell(QObject* field, const QString& sentence);
    /// Any field with a signal refused(sentence).
    template <class Field>
    void watch(Field* field) {
        connect(field, &Field::refused, this,
                [this, field](const QString& sentence) { tell(field, sentence); });
    }

private:
    void follow();
    std::map<QObject*, QString> sentences_;
};

}  // namespace nettare
