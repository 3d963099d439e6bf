#include <QApplication>
#include <QFormLayout>
#include <QLineEdit>
#include <QMainWindow>
#include <QTableWidget>
#include <QTimer>

/// A window with a form and a table and nothing else, which closes after its first paint: what the
/// start of any program of this kind costs.
class BareWindow : public QMainWindow {
public:
    BareWindow() {
        auto* const page = new QWidget{this};
        auto* const form = new QFormLayout{page};
        form->addRow(QStringLiteral("Title"), new QLineEdit{page});
        form->addRow(new QTableWidget{10, 5, page});
        setCentralWidget(page);
    }

protected:
    void paintEvent(QPaintEvent* event) override {
        QMainWindow::paintEvent(event);
        QTimer::singleShot(0, qApp, &QApplication::quit);
    }
};

int main(int argc, char** argv) {
    const QApplication application{argc, argv};
    BareWindow window;
    window.resize(1280, 800);
    window.show();
    return QApplication::exec();
}
