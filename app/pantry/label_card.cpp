#include "app/pantry/label_card.h"

#include <QHBoxLayout>
#include <QLabel>

#include "app/pantry/cells_model.h"
#include "app/pantry/entry_words.h"
#include "app/pantry/label_words.h"
#include "app/pantry/photo_view.h"
#include "app/pantry/whole_table.h"
#include "app/session/kitchen_session.h"
#include "app/theme/spacing.h"
#include "app/theme/type.h"
#include "app/widgets/way_mark.h"
#include "core/label/label_interval.h"
#include "core/label/label_values.h"
#include "core/publish/label_basis_text.h"
#include "core/publish/measure_text.h"

namespace nettare {

namespace {

QLabel* packText(const char* name) {
    auto* label = new QLabel;
    label->setObjectName(QLatin1String{name});
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setMinimumWidth(1);
    label->setProperty("tone", QStringLiteral("secondary"));
    return label;
}

CellsModel::Row lineRow(const LabelFacts& label, const LabelAmount& amount) {
    const QString unit = calledUnit(label.rules, amount.line);
    Cell stands = numberCell(standsFor(label, amount).text);
    stands.ink = Role::Ink2;
    Cell per100g = noDataCell();
    if (const auto interval = labelInterval(label, amount); interval && labelGrams(label) > 0)
        per100g = numberCell(QString::fromStdString(shortNumber(printedFigure(amount, *interval) *
                                                                100 / labelGrams(label))),
                             unit);
    return {textCell(calledName(label.rules, amount.line)),
            numberCell(QString::fromStdString(amount.printed), unit), stands, per100g};
}

CellsModel::Row versionRow(const OwnFood& version) {
    const auto& label = version.food.label;
    const std::string* const energy = label ? label->printed(Component::ENERC_KCAL) : nullptr;
    return {
        textCell(LabelCard::tr("version %1").arg(QString::fromStdString(version.food.row.release))),
        textCell(QString::fromStdString(version.origin.date)),
        textCell(label ? labelBasis(*label) : LabelCard::tr("not from a package")),
        energy != nullptr ? numberCell(QString::fromStdString(*energy), QStringLiteral("kcal"))
                          : noDataCell()};
}

QString sugarsRemark(const AddedSugars& added) {
    const QString reason = isolated(added.reason);
    if (added.kind == AddedSugarKind::Stated)
        return LabelCard::tr("Added sugars: %1 g per 100 g, %2")
            .arg(QString::fromStdString(shortNumber(added.statedPer100g)), reason);
    return LabelCard::tr("Added sugars where the package prints none: %1, %2")
        .arg(addedSugarsName(added.kind), reason);
}

}  // namespace

QString labelHeading(const OwnFoodRecord& record) {
    const OwnFood& own = record.current;
    return LabelCard::tr("%1 · version %2 of %3")
        .arg(labelBasis(*own.food.label), QString::fromStdString(own.food.row.release),
             isolated(own.origin.date));
}

QString labelRemarks(const OwnFood& own) {
    const LabelFacts& label = *own.food.label;
    QStringList lines;
    if (label.per != LabelPer::Serving && label.servingSize)
        lines += LabelCard::tr("Serving: %1").arg(isolated(labelServingText(label)));
    if (!label.servingsPerPack.empty())
        lines += LabelCard::tr("Servings per pack: %1").arg(isolated(label.servingsPerPack));
    if (label.density)
        lines += LabelCard::tr("1 mL weighs %1 g ± %2")
                     .arg(QString::fromStdString(label.density->gramsPerMl.text()),
                          QString::fromStdString(label.density->within.text()));
    lines += label.declarationSpread
                 ? LabelCard::tr("Declaration spread: ± %1")
                       .arg(QString::fromStdString(percent(label.declarationSpread->value())))
                 : LabelCard::tr("Declaration spread: rounding only");
    if (label.printed(Component::SUGAD) == nullptr) lines += sugarsRemark(own.food.addedSugars);
    for (const LabelAssent& assent : label.assents)
        lines += LabelCard::tr("As printed, though %1: %2")
                     .arg(findingTitle(assent.kind).toLower(), isolated(assent.about));
    if (label.photo) lines += LabelCard::tr("Photograph: %1").arg(isolated(label.photo->fileName));
    return lines.join(u'\n');
}

LabelCard::LabelCard(KitchenSession& kitchen, QWidget* parent)
    : QWidget{parent},
      kitchen_{kitchen},
      mark_{new WayMark},
      basis_{packText("labelBasis")},
      rest_{packText("labelRemarks")},
      versionHead_{new QLabel{tr("Packs")}},
      photo_{new PhotoView},
      lines_{
          new CellsModel{{tr("On the package"), tr("Printed"), tr("Stands for"), tr("Per 100 g")},
                         {1, 2, 3},
                         this}},
      versions_{
          new CellsModel{{tr("Version"), tr("Read on"), tr("Package"), tr("Energy")}, {3}, this}},
      lineTable_{new WholeTable{0}},
      versionTable_{new WholeTable{2}} {
    build();
}

void LabelCard::build() {
    mark_->setMark(Mark::Label);
    lineTable_->setObjectName(QStringLiteral("labelLines"));
    lineTable_->setAccessibleName(tr("Lines of the label"));
    lineTable_->setModel(lines_);
    versionTable_->setObjectName(QStringLiteral("labelVersions"));
    versionTable_->setAccessibleName(tr("Packs, the newest first"));
    versionTable_->setModel(versions_);
    versionHead_->setFont(typeFont(TypeSize::Body, Weight::Bold));
    basis_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    auto* head = new QHBoxLayout;
    head->setSpacing(kSpace2Px);
    head->addWidget(mark_, 0, Qt::AlignTop);
    head->addWidget(basis_, 1);
    auto* column = new QVBoxLayout{this};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(kSpace2Px);
    column->addLayout(head);
    column->addWidget(lineTable_);
    column->addWidget(rest_);
    column->addWidget(photo_);
    column->addSpacing(kSpace3Px);
    column->addWidget(versionHead_);
    column->addWidget(versionTable_);
}

void LabelCard::show(const OwnFoodRecord& record) {
    id_ = record.id();
    basis_->setText(labelHeading(record));
    rest_->setText(labelRemarks(record.current));
    showLines(*record.current.food.label);
    showPhoto(*record.current.food.label);
    showVersions({});
    if (record.versions < 2) return;
    kitchen_.ownFoods().askVersions(id_, this,
                                    [this, id = id_](const std::vector<OwnFood>& versions) {
                                        if (id == id_) showVersions(versions);
                                    });
}

void LabelCard::showPhoto(const LabelFacts& label) {
    const std::string hash = label.photo ? label.photo->sha256 : std::string{};
    if (hash == hash_) return;
    hash_ = hash;
    photo_->show({});
    if (hash.empty()) return;
    kitchen_.ownFoods().askPhoto(hash, this, [this, hash](const QImage& image) {
        if (hash == hash_) photo_->show(image);
    });
}

void LabelCard::showLines(const LabelFacts& label) {
    std::vector<CellsModel::Row> rows;
    rows.reserve(label.amounts.size());
    for (const LabelAmount& amount : label.amounts) rows.push_back(lineRow(label, amount));
    lines_->show(std::move(rows));
    lineTable_->fit();
}

void LabelCard::showVersions(const std::vector<OwnFood>& versions) {
    std::vector<CellsModel::Row> rows;
    rows.reserve(versions.size());
    for (auto version = versions.rbegin(); version != versions.rend(); ++version)
        rows.push_back(versionRow(*version));
    versionHead_->setVisible(!rows.empty());
    versionTable_->setVisible(!rows.empty());
    versions_->show(std::move(rows));
    versionTable_->fit();
}

}  // namespace nettare
