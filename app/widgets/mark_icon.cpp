#include "app/widgets/mark_icon.h"

#include "app/widgets/way_mark.h"

#include <QApplication>
#include <QIconEngine>
#include <QPainter>

namespace nettare {

namespace {

class MarkEngine : public QIconEngine {
public:
    explicit MarkEngine(Mark mark) : mark_{mark} {}

    void paint(QPainter* painter, const QRect& rect, QIcon::Mode, QIcon::State) override {
        // As much air around it as a sign has in its drawing.
        const int air = rect.width() / 8;
        paintMark(*painter, mark_, rect.adjusted(air, air, -air, -air),
                  shadeOf(QApplication::palette()));
    }
    QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
        QPixmap drawn{size};
        drawn.fill(Qt::transparent);
        QPainter painter{&drawn};
        paint(&painter, drawn.rect(), mode, state);
        return drawn;
    }
    [[nodiscard]] QIconEngine* clone() const override { return new MarkEngine{mark_}; }

private:
    Mark mark_;
};

}  // namespace

QIcon iconOf(Mark mark) {
    return QIcon{new MarkEngine{mark}};
}

}  // namespace nettare
