#include "app/pantry/label_pack_fields.h"

#include <QAction>
#include <QGridLayout>
#include <QLabel>

#include "app/pantry/label_line_fields.h"
#include "app/pantry/label_words.h"
#include "app/theme/spacing.h"
#include "app/widgets/basis_switch.h"

namespace nettare {

namespace {

constexpr int kPackNumber = 64;
constexpr int kLeastHousehold = 96;

QLabel* packLabel(const QString& text) {
    auto* label = new QLabel{text};
    label->setTextFormat(Qt::PlainText);
    label->setProperty("tone", QStringLiteral("secondary"));
    return label;
}

BasisSwitch* choiceOf(const char* name, const QString& spoken, const QStringList& texts) {
    auto* choice = new BasisSwitch;
    choice->setObjectName(QLatin1String{name});
    choice->setAccessibleName(spoken);
    choice->setTexts(texts);
    return choice;
}

}  // namespace

LabelPackFields::LabelPackFields(QWidget* parent)
    : QWidget{parent},
      rules_{choiceOf("labelRules", tr("Rules of the package"),
                      {rulesName(LabelRules::Us), rulesName(LabelRules::Eu)})},
      per_{choiceOf("labelPer", tr("Amounts per"),
                    {tr("serving"), QStringLiteral("100 g"), QStringLiteral("100 mL")})},
      state_{choiceOf("labelState", tr("Of the product"),
                      {stateName(LabelState::AsSold), stateName(LabelState::Prepared),
                       stateName(LabelState::Drained)})},
      sizeUnit_{choiceOf("labelSizeUnit", tr("Unit of the serving size"),
                         {QStringLiteral("g"), QStringLiteral("mL")})},
      name_{addField("labelName", tr("Name of the product"))},
      servings_{addField("labelServings", tr("Servings per pack, as printed"))},
      household_{addField("labelHousehold", tr("Serving as a household measure"))},
      size_{addField("labelSize", tr("Size of the serving, g or mL"), kPackNumber)},
      density_{addField("labelDensity", tr("What one millilitre weighs, g"), kPackNumber)},
      within_{addField("labelDensityWithin", tr("Plus or minus, g"), kPackNumber)} {
    build();
    connect(rules_, &BasisSwitch::chosen, this, [this] {
        emit rulesChosen();
        emit edited();
    });
    for (BasisSwitch* choice : {per_, state_, sizeUnit_})
        connect(choice, &BasisSwitch::chosen, this, [this] {
            follow();
            emit edited();
        });
    // The unit that was typed is chosen beside the field by now.
    connect(size_, &QLineEdit::editingFinished, this, [this] {
        LabelTyped typed;
        readInto(typed);
        size_->setText(QString::fromStdString(servingNumber(typed)));
    });
    follow();
}

// A field that goes with the focus says that it was edited, after these fields themselves are gone.
LabelPackFields::~LabelPackFields() {
    size_->disconnect(this);
}

QLineEdit* LabelPackFields::addField(const char* name, const QString& spoken, int width) {
    auto* made = new QLineEdit;
    made->setObjectName(QLatin1String{name});
    made->setAccessibleName(spoken);
    if (width > 0) made->setFixedWidth(width);
    connect(made, &QLineEdit::textEdited, this, [this] {
        follow();
        emit edited();
    });
    return made;
}

void LabelPackFields::addRow(QGridLayout& grid, const QString& label,
                             std::initializer_list<QWidget*> parts) {
    const int at = grid.rowCount();
    auto* row = new QHBoxLayout;
    row->setSpacing(kSpace2Px);
    bool stretches = false;
    for (QWidget* part : parts) {
        const bool wide = part == name_ || part == household_ || part == servings_;
        row->addWidget(part, wide ? 1 : 0);
        stretches = stretches || wide;
    }
    if (!stretches) row->addStretch(1);
    auto* head = packLabel(label);
    head->setWordWrap(true);
    head->setFixedWidth(kWordsPx);
    grid.addWidget(head, at, 0);
    grid.addLayout(row, at, 1);
    if (*parts.begin() == density_) {
        densityRow_.assign(parts.begin(), parts.end());
        densityRow_.push_back(head);
    }
}

// In the order of packages, which is that of the Tab key.
void LabelPackFields::build() {
    household_->setMinimumWidth(kLeastHousehold);
    household_->setPlaceholderText(tr("2 tbsp"));
    size_->setPlaceholderText(tr("14"));
    servings_->setPlaceholderText(tr("about 8"));
    for (QLineEdit* number : {size_, density_, within_}) number->setAlignment(Qt::AlignRight);
    auto* grid = new QGridLayout{this};
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(kSpace3Px);
    grid->setVerticalSpacing(kSpace1Px);
    grid->setColumnMinimumWidth(0, kWordsPx);
    grid->setColumnStretch(1, 1);
    addRow(*grid, tr("Name"), {name_});
    addRow(*grid, tr("Rules (F2)"), {rules_});
    addRow(*grid, tr("Amounts per"), {per_});
    addRow(*grid, tr("Product"), {state_});
    addRow(*grid, tr("Servings per pack"), {servings_});
    addRow(*grid, tr("Serving"), {household_, packLabel(QStringLiteral("=")), size_, sizeUnit_});
    addRow(*grid, tr("1 mL weighs"), {density_, packLabel(QStringLiteral("g ±")), within_});
}

void LabelPackFields::show(const LabelTyped& typed) {
    rules_->setIndex(static_cast<int>(typed.rules));
    per_->setIndex(static_cast<int>(typed.per));
    state_->setIndex(static_cast<int>(typed.state));
    sizeUnit_->setIndex(typed.servingInMillilitres ? 1 : 0);
    name_->setText(QString::fromStdString(typed.name));
    servings_->setText(QString::fromStdString(typed.servingsPerPack));
    household_->setText(QString::fromStdString(typed.household));
    size_->setText(QString::fromStdString(typed.servingSize));
    density_->setText(QString::fromStdString(typed.gramsPerMl));
    within_->setText(QString::fromStdString(typed.densityWithin));
    follow();
}

void LabelPackFields::readInto(LabelTyped& typed) const {
    typed.rules = rules();
    typed.per = static_cast<LabelPer>(per_->index());
    typed.state = static_cast<LabelState>(state_->index());
    typed.servingInMillilitres = sizeUnit_->index() == 1;
    typed.name = name_->text().toStdString();
    typed.servingsPerPack = servings_->text().toStdString();
    typed.household = household_->text().toStdString();
    typed.servingSize = size_->text().toStdString();
    typed.gramsPerMl = density_->text().toStdString();
    typed.densityWithin = within_->text().toStdString();
}

LabelRules LabelPackFields::rules() const {
    return static_cast<LabelRules>(rules_->index());
}

void LabelPackFields::toggleRules() {
    rules_->setIndex(1 - rules_->index());
    emit rulesChosen();
    emit edited();
}

void LabelPackFields::setServingSize(const std::string& size) {
    size_->setText(QString::fromStdString(size));
    follow();
}

void LabelPackFields::markServing(const QString& why) {
    setQuestioned(*size_, sign_, why);
}

// "240 mL" chooses millilitres; what one weighs is asked where they count.
void LabelPackFields::follow() {
    LabelTyped typed;
    readInto(typed);
    sizeUnit_->setIndex(isInMillilitres(typed) ? 1 : 0);
    const bool asked = typed.per == LabelPer::HundredMillilitres ||
                       (isInMillilitres(typed) && !size_->text().trimmed().isEmpty()) ||
                       !density_->text().isEmpty();
    for (QWidget* part : densityRow_) part->setVisible(asked);
}

std::vector<QWidget*> LabelPackFields::stops() const {
    std::vector<QWidget*> all{name_, servings_, household_, size_};
    if (!density_->isHidden()) all.push_back(density_);
    return all;
}

QLineEdit* LabelPackFields::field(const QString& member) const {
    if (member == QStringLiteral("serving")) return household_;
    if (member.startsWith(QStringLiteral("serving_"))) return size_;
    if (member == QStringLiteral("servings_per_pack")) return servings_;
    if (member == QStringLiteral("density")) return density_;
    return nullptr;
}

}  // namespace nettare
