#pragma once

#include <QComboBox>
#include <QWidget>

#include <string>
#include <vector>

class QPushButton;

namespace nettare {

class KitchenSession;

/// Asks which other own food is the same thing as this one, and which of the two stays.
class MergeBar : public QWidget {
    Q_OBJECT

public:
    explicit MergeBar(KitchenSession& kitchen, QWidget* parent = nullptr);

    /// Shows itself; the foods in use but this one are to choose from.
    void ask(const std::string& id);

signals:
    void merged(const QString& stays);

private:
    void follow();
    void merge();

    KitchenSession& kitchen_;
    std::string id_;
    std::vector<std::string> others_;
    QComboBox *other_, *stays_;
    QPushButton *merge_, *leave_;
};

}  // namespace nettare
