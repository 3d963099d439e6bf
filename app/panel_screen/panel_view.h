#pragma once

#include "app/panel_screen/panel_paper.h"
#include "app/panel_screen/true_size.h"

#include <QScrollArea>

namespace nettare {

/// How large the panel is shown.
enum class PanelZoom { TrueSize, Fit, Double };

/// The panel on its paper, scrolled where it is larger than the view.
class PanelView : public QScrollArea {
    Q_OBJECT

public:
    explicit PanelView(QWidget* parent = nullptr);

    void show(PanelLayout layout);
    void setZoom(PanelZoom zoom);
    [[nodiscard]] PanelZoom zoom() const { return zoom_; }
    /// Of the screen that the view is on.
    [[nodiscard]] TrueSize trueSize() const;
    [[nodiscard]] PanelPaper& paper() const { return *paper_; }

signals:
    /// The view came to another screen, or its screen measures otherwise now.
    void trueSizeChanged();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    void rescale();
    void watchScreen();

    PanelPaper* paper_;
    PanelZoom zoom_ = PanelZoom::TrueSize;
    QMetaObject::Connection screenChange_;
};

}  // namespace nettare
