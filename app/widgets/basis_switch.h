#pragma once

#include <QStringList>
#include <QWidget>

class QButtonGroup;
class QPushButton;

namespace nettare {

/// A row of choices of which one holds: piece, portion, 100 g, batch. One stop of the Tab key; the
/// arrow keys choose.
class BasisSwitch : public QWidget {
    Q_OBJECT

public:
    explicit BasisSwitch(QWidget* parent = nullptr);

    /// In order; the index that holds stays where it can.
    void setTexts(const QStringList& texts);

    /// -1 without texts.
    [[nodiscard]] int index() const;
    /// Emits nothing.
    void setIndex(int index);

signals:
    /// By the user.
    void chosen(int index);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void choose(int index);
    [[nodiscard]] QPushButton* buttonAt(int index) const;

    QButtonGroup* group_;
};

}  // namespace nettare
