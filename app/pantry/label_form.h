#pragma once

#include <QTimer>
#include <QWidget>

#include <vector>

#include "app/pantry/label_finding_bar.h"
#include "core/label/label_entry.h"

class QGridLayout;
class QLineEdit;
class QScrollArea;

namespace nettare {

class KitchenSession;
class LabelLineFields;
class LabelPackFields;
class LabelRestFields;
class PhotoField;

/// What a label of a known food begins with: the amounts of the version that counts, for another
/// pack; or all of that version, for a slip in it.
enum class LabelStart { NewPack, Correction };

/// Where a package label is typed, in the order in which packages print. Enter goes to the next
/// field, Ctrl+S saves, F2 takes the other rules, F9 takes the likely slip of a finding, Shift+F9
/// says that it is as printed. What was typed stays until it is saved or dropped.
class LabelForm : public QWidget {
    Q_OBJECT

public:
    explicit LabelForm(KitchenSession& kitchen, QWidget* parent = nullptr);
    /// What is not saved by then is there again when the kitchen is opened next.
    ~LabelForm() override;

    /// A new label where `before` has none; else the next version of that food.
    void begin(const OwnFood& before, LabelStart start = LabelStart::NewPack);
    /// Goes on with what was not saved when the window of this kitchen closed. False where there is
    /// nothing.
    bool resume();
    /// Whether something was typed that is not saved.
    [[nodiscard]] bool isChanged() const;
    /// To the first field that is empty.
    void enter();
    /// Another label was asked for before this one is saved or dropped.
    void sayUnfinished();
    /// A photograph of the package, from a file.
    void takePhoto(const QString& path);

signals:
    void saved(const nettare::TableRow& row);
    void left();
    /// A file with a photograph is to be chosen.
    void photoAsked();

protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void build();
    QWidget* buildBody();
    QWidget* buildFoot();
    void arrange(bool wide);
    void connectParts();
    void show(const LabelTyped& typed);
    [[nodiscard]] LabelTyped typed() const;
    void followRules();
    void followEdit();
    void followFocus(const QWidget* old, QWidget* now);
    /// Checks what was typed and shows what is found.
    void look();
    void showFindings(const LabelFacts& facts);
    void takeSlip();
    void sayAsPrinted();
    /// Waits for a photograph that is being read.
    void save();
    void wasSaved(const LabelTyped& version);
    void refuse(const Error& error);
    /// Above the buttons, until something is typed.
    void tell(const QString& words, const char* tone = "error");
    void drop();
    /// Writes what is not saved to the settings of this machine.
    void keepTyped() const;
    void findLike();
    void sayTitle();
    [[nodiscard]] QWidget* fieldAt(const std::string& pointer) const;
    [[nodiscard]] QWidget* questionedField() const;
    /// The fields that Enter leads through, and the button that saves.
    [[nodiscard]] std::vector<QWidget*> stops() const;
    void advance();

    KitchenSession& kitchen_;
    OwnFood before_;
    LabelStart start_ = LabelStart::NewPack;
    LabelTyped begun_;
    std::vector<LabelAssent> assents_;
    std::vector<LabelFinding> findings_;
    std::optional<LikeDensity> like_;
    QString likeName_;  ///< that like_ is of
    QTimer keepTimer_;
    QLabel *title_, *about_, *refusal_;
    LabelPackFields* pack_;
    LabelLineFields* lines_;
    LabelRestFields* rest_;
    PhotoField* photo_;
    LabelFindingBar* bar_;
    QPushButton *save_, *leave_, *drop_;
    QScrollArea* scroll_ = nullptr;
    QGridLayout* body_ = nullptr;
    bool wide_ = false, showing_ = false, waiting_ = false;
    bool saveWhenRead_ = false;  ///< saved as soon as the photograph is there
};

}  // namespace nettare
