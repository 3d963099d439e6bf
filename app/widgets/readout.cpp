#include "app/widgets/readout.h"

#include <QAccessible>
#include <QAccessibleWidget>

namespace nettare {

namespace {

class SpokenReadout : public QAccessibleWidget {
public:
    explicit SpokenReadout(Readout* readout)
        : QAccessibleWidget{readout, QAccessible::StaticText}, readout_{readout} {}

    QString text(QAccessible::Text kind) const override {
        if (kind == QAccessible::Value) return readout_->spokenValue();
        const QString said = QAccessibleWidget::text(kind);
        return said.isEmpty() && kind == QAccessible::Name ? readout_->spokenValue() : said;
    }

private:
    const Readout* readout_;
};

QAccessibleInterface* spokenReadout(const QString&, QObject* object) {
    auto* const readout = qobject_cast<Readout*>(object);
    return readout == nullptr ? nullptr : new SpokenReadout{readout};
}

}  // namespace

Readout::Readout(QWidget* parent) : QWidget{parent} {
    [[maybe_unused]] static const bool kInstalled = [] {
        QAccessible::installFactory(&spokenReadout);
        return true;
    }();
}

void Readout::valueChanged() {
    if (QAccessible::isActive()) {
        QAccessibleValueChangeEvent event{this, spokenValue()};
        QAccessible::updateAccessibility(&event);
    }
    update();
}

}  // namespace nettare
