#pragma once

#include <QWidget>

#include <string>

#include "db/kitchen/own_food_record.h"

class QLabel;

namespace nettare {

class CellsModel;
class KitchenSession;
class PhotoView;
class WayMark;
class WholeTable;

/// What the card of a labelled food shows of its package: whose rules and per what, every line as
/// printed with what it stands for and what it comes to per 100 g, and the packs before this one.
class LabelCard : public QWidget {
    Q_OBJECT

public:
    explicit LabelCard(KitchenSession& kitchen, QWidget* parent = nullptr);

    /// The food must have a label.
    void show(const OwnFoodRecord& record);

private:
    void build();
    void showLines(const LabelFacts& label);
    void showPhoto(const LabelFacts& label);
    void showVersions(const std::vector<OwnFood>& versions);

    KitchenSession& kitchen_;
    std::string id_, hash_;  ///< of the food, and of its photograph
    WayMark* mark_;
    QLabel *basis_, *rest_, *versionHead_;
    PhotoView* photo_;
    CellsModel *lines_, *versions_;
    WholeTable *lineTable_, *versionTable_;
};

/// "United States, per serving 1 tbsp (14 g) · version 2 of 2026-05-16"
[[nodiscard]] QString labelHeading(const OwnFoodRecord& record);

/// What a label says beside its amounts: serving, servings per pack, added sugars, declaration
/// spread, what is as printed.
[[nodiscard]] QString labelRemarks(const OwnFood& own);

}  // namespace nettare
