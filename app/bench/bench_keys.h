#pragma once

#include <QObject>
#include <QTimer>

class QKeyEvent;
class QLineEdit;

namespace nettare {

/// The keys of the bench: digits go to the number wherever the focus is, Enter and the space bar
/// record, Backspace edits, and held on an empty number it takes the last reading back.
class BenchKeys : public QObject {
    Q_OBJECT

public:
    /// Watches the number field; both must outlive it.
    BenchKeys(QLineEdit& number, QObject* parent);

    /// Keys of that widget that are the bench's do not reach it: for lists, which would search.
    void watch(QWidget* widget);
    /// A key that nobody took; true where it is one of the bench's.
    bool take(QKeyEvent* event);
    bool takeRelease(QKeyEvent* event);

signals:
    void recordAsked();
    void takeBackAsked();

protected:
    bool eventFilter(QObject* object, QEvent* event) override;

private:
    bool takeBackspace(const QKeyEvent& event);

    QLineEdit& number_;
    QTimer held_;
};

}  // namespace nettare
