#pragma once

#include <QPointer>
#include <QVBoxLayout>
#include <QWidget>

#include <optional>
#include <vector>

#include "core/support/error.h"

namespace nettare {

class DraftSession;
class DraftText;
class EntryLine;
class RefusalLine;

/// The steps of the method, numbered, each edited where it stands.
class MethodList : public QWidget {
    Q_OBJECT

public:
    explicit MethodList(QWidget* parent = nullptr);

    void setDraft(DraftSession* draft);
    /// The field that adds a step.
    void addStep();
    /// The step that has the focus, if one has.
    [[nodiscard]] std::optional<std::size_t> focusedStep() const;
    void removeStep(std::size_t step);
    void moveStep(std::size_t step, bool up);

signals:
    void failed(const nettare::Error& error);

private:
    struct Row {
        QWidget* whole;
        DraftText* text;
    };
    void follow();
    void addRow();
    void enter(const QString& text);
    void focusStep(std::size_t step);
    [[nodiscard]] std::size_t stepCount() const;

    QPointer<DraftSession> draft_;
    QVBoxLayout* rows_;
    std::vector<Row> steps_;
    EntryLine* entry_;
    RefusalLine* refusal_;
};

}  // namespace nettare
