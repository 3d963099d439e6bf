#pragma once

#include <QFrame>
#include <QString>

class QLabel;

namespace nettare {

/// What a card says: "Energy, per portion", "−30 kcal", "174 → 144 · ± 2, a real change".
struct CardWords {
    QString subject, change, detail;
    QString spoken;  ///< all of it as a sentence, without arrows

    friend bool operator==(const CardWords&, const CardWords&) = default;
};

/// One figure's change on a card.
class ChangeCard : public QFrame {
    Q_OBJECT

public:
    explicit ChangeCard(QWidget* parent = nullptr);

    void show(const CardWords& words);
    [[nodiscard]] const CardWords& words() const { return words_; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QLabel *subject_, *change_, *detail_;
    CardWords words_;
};

}  // namespace nettare
