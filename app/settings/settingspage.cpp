#include "settings/settingspage.h"

#include "parts/button.h"
#include "parts/card.h"
#include "parts/label.h"
#include "parts/segmented.h"
#include "parts/textsize.h"
#include "patients/words.h"
#include "settings/layoutcard.h"
#include "settings/recordcard.h"
#include "settings/userscard.h"

#include <algorithm>
#include <array>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QScrollArea>
#include <QVBoxLayout>

namespace rhizograph::app {
namespace {

constexpr std::array idleChoices{2, 5, 10, 20, 60};

/// The place of the offered value nearest to `value`.
template <std::size_t N> int nearest(const std::array<int, N>& offered, int value) {
    const auto closer = [value](int a, int b) { return std::abs(a - value) < std::abs(b - value); };
    return static_cast<int>(std::min_element(offered.begin(), offered.end(), closer) - offered.begin());
}

template <std::size_t N> QStringList words(const std::array<int, N>& offered, const QString& pattern) {
    QStringList out;
    for (const int each : offered)
        out << pattern.arg(each);
    return out;
}

void addNamed(Card* card, const QString& name, QWidget* widget) {
    card->layout()->addWidget(new Label(name, 15, QFont::Medium, Label::Tone::quiet, card));
    static_cast<QVBoxLayout*>(card->layout())->addWidget(widget, 0, Qt::AlignLeft);
}

} // namespace

SettingsPage::SettingsPage(QWidget* parent) : QWidget(parent) {
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(24, 20, 24, 0);
    outer->setSpacing(16);
    auto* head = new QHBoxLayout;
    head->setSpacing(12);
    outer->addLayout(head);
    auto* leave = new PlainButton({}, PlainButton::Kind::quiet, this);
    leave->setGlyph(Glyph::left);
    leave->setAccessibleName(tr("Leave the settings"));
    head->addWidget(leave);
    head->addWidget(new Label(tr("Settings"), 22, QFont::DemiBold, Label::Tone::ink, this), 1);
    auto* area = new QScrollArea(this);
    area->setFrameShape(QFrame::NoFrame);
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    outer->addWidget(area, 1);
    auto* inside = new QWidget(area);
    auto* row = new QHBoxLayout(inside);
    row->setContentsMargins(0, 0, 0, 24);
    auto* middle = new QWidget(inside);
    middle->setMaximumWidth(820);
    row->addWidget(middle, 1);
    column_ = new QVBoxLayout(middle);
    column_->setContentsMargins(0, 0, 0, 0);
    column_->setSpacing(10);
    area->setWidget(inside);
    buildHere();
    buildClinic();
    buildPassphrase();
    record_ = new RecordCard(middle);
    column_->addWidget(record_);
    users_ = new UsersCard(middle);
    column_->addWidget(users_);
    column_->addStretch(1);
    connect(leave, &PlainButton::clicked, this, &SettingsPage::back);
    connect(record_, &RecordCard::backupsKeptChosen, this, &SettingsPage::saveBackupsKept);
}

Card* SettingsPage::card(const QString& title) {
    auto* out = new Card(column_->parentWidget());
    auto* inner = new QVBoxLayout(out);
    inner->setContentsMargins(20, 16, 20, 20);
    inner->setSpacing(8);
    inner->addWidget(new Label(title, 17, QFont::DemiBold, Label::Tone::ink, out));
    column_->addWidget(out);
    return out;
}

void SettingsPage::buildHere() {
    Card* here = card(tr("On this machine"));
    theme_ = new Segmented(tr("Theme"), {tr("Light"), tr("Dark"), tr("High contrast")}, here);
    text_ = new Segmented(tr("Text size"), words(textPercents, QStringLiteral("%1 %")), here);
    QStringList names;
    for (const Language language : languages)
        names << nameOf(language);
    language_ = new Segmented(tr("Language"), names, here);
    addNamed(here, tr("Language"), language_);
    addNamed(here, tr("Theme"), theme_);
    addNamed(here, tr("Text size"), text_);
    connect(theme_, &Segmented::chosenChanged, this, &SettingsPage::take);
    connect(text_, &Segmented::chosenChanged, this, &SettingsPage::take);
    connect(language_, &Segmented::chosenChanged, this, &SettingsPage::take);
}

void SettingsPage::take() {
    if (store_ == nullptr) return; // still being filled
    preferences_.theme = static_cast<ThemeName>(theme_->chosen());
    preferences_.textPercent = textPercents.at(static_cast<std::size_t>(text_->chosen()));
    preferences_.language = languages.at(static_cast<std::size_t>(language_->chosen()));
    emit preferencesChanged(preferences_);
}

void SettingsPage::buildClinic() {
    clinicCard_ = card(tr("Clinic"));
    auto* layout = static_cast<QVBoxLayout*>(clinicCard_->layout());
    auto* letterWords = new Label(tr("Letterhead: the first line is the clinic's name"), 15, QFont::Medium,
                                  Label::Tone::quiet, clinicCard_);
    letterWords->setWordWrap(true);
    layout->addWidget(letterWords);
    const auto lines = [this, layout](const QString& name, int height) {
        auto* edit = new QPlainTextEdit(clinicCard_);
        edit->setAccessibleName(name);
        edit->setTabChangesFocus(true);
        edit->setFixedHeight(grown(this, height));
        layout->addWidget(edit);
        return edit;
    };
    letterhead_ = lines(tr("Letterhead"), 100);
    auto* phraseWords = new Label(tr("Phrases for the plan, one a line; the short ones become buttons"), 15,
                                  QFont::Medium, Label::Tone::quiet, clinicCard_);
    phraseWords->setWordWrap(true);
    layout->addWidget(phraseWords);
    phrases_ = lines(tr("Phrases for the plan"), 120);
    unit_ = new Segmented(tr("Lengths"), {tr("Centimeters"), tr("Inches")}, clinicCard_);
    grades_ = new Segmented(tr("Strength grades"), {tr("Whole grades"), tr("Also 4− and 4+")}, clinicCard_);
    idle_ = new Segmented(tr("Lock after"), words(idleChoices, tr("%1 min")), clinicCard_);
    addNamed(clinicCard_, tr("Lengths"), unit_);
    addNamed(clinicCard_, tr("Strength grades"), grades_);
    addNamed(clinicCard_, tr("Lock the screen when nothing was touched for"), idle_);
    layout_ = new LayoutCard(clinicCard_);
    layout->addWidget(layout_);
    clinicNews_ = new Label({}, 15, QFont::Medium, Label::Tone::quiet, clinicCard_);
    clinicNews_->setWordWrap(true);
    layout->addWidget(clinicNews_);
    auto* save = new PlainButton(tr("Save for the clinic"), PlainButton::Kind::action, clinicCard_);
    layout->addWidget(save, 0, Qt::AlignLeft);
    connect(save, &PlainButton::clicked, this, &SettingsPage::saveClinic);
}

void SettingsPage::buildPassphrase() {
    Card* own = card(tr("Your passphrase"));
    const auto field = [own](const QString& name) {
        auto* edit = new QLineEdit(own);
        edit->setEchoMode(QLineEdit::Password);
        edit->setAccessibleName(name);
        edit->setPlaceholderText(name);
        own->layout()->addWidget(edit);
        return edit;
    };
    passphrase_ = field(tr("New passphrase"));
    again_ = field(tr("The same again"));
    passphraseNews_ = new Label({}, 15, QFont::Medium, Label::Tone::quiet, own);
    passphraseNews_->setWordWrap(true);
    own->layout()->addWidget(passphraseNews_);
    change_ = new PlainButton(tr("Change it"), PlainButton::Kind::action, own);
    static_cast<QVBoxLayout*>(own->layout())->addWidget(change_, 0, Qt::AlignLeft);
    connect(change_, &PlainButton::clicked, this, &SettingsPage::changePassphrase);
}

Outcome SettingsPage::show(Store& store, const Preferences& preferences, const std::filesystem::path& backups,
                           const Catalogue* catalogue) {
    auto clinic = loadClinicSettings(store);
    if (!clinic) return clinic.problems();
    store_ = nullptr;
    preferences_ = preferences;
    clinic_ = *clinic;
    language_->choose(static_cast<int>(preferences.language));
    theme_->choose(static_cast<int>(preferences.theme));
    text_->choose(nearest(textPercents, preferences.textPercent));
    letterhead_->setPlainText(QString::fromStdString(clinic_.letterhead));
    phrases_->setPlainText(QString::fromStdString(clinic_.phrases));
    if (catalogue != nullptr) layout_->show(*catalogue, clinic_);
    unit_->choose(clinic_.inches ? 1 : 0);
    grades_->choose(clinic_.splitGrades ? 1 : 0);
    idle_->choose(nearest(idleChoices, clinic_.idleMinutes));
    for (Label* news : {clinicNews_, passphraseNews_})
        news->setText({});
    passphrase_->clear();
    again_->clear();
    store_ = &store;
    const auto user = store.signedIn();
    layout_->setVisible(catalogue != nullptr && user && allows(user->role, Permission::changeSettings));
    clinicCard_->setVisible(user && allows(user->role, Permission::changeSettings));
    record_->show(store, clinic_, backups);
    record_->setVisible(
        user && (allows(user->role, Permission::backUp) || allows(user->role, Permission::readAudit)));
    users_->setVisible(user && allows(user->role, Permission::manageUsers));
    return users_->show(store);
}

void SettingsPage::saveClinic() {
    ClinicSettings after = clinic_;
    after.letterhead = letterhead_->toPlainText().trimmed().toStdString();
    after.phrases = phrases_->toPlainText().trimmed().toStdString();
    layout_->store(after);
    after.inches = unit_->chosen() == 1;
    after.splitGrades = grades_->chosen() == 1;
    after.idleMinutes = idleChoices.at(static_cast<std::size_t>(idle_->chosen()));
    const Outcome outcome = saveClinicSettings(*store_, clinic_, after);
    clinicNews_->setTone(outcome ? Label::Tone::spruce : Label::Tone::brick);
    clinicNews_->setText(outcome ? tr("Saved.") : reasonText(outcome.problems()));
    if (!outcome) return;
    clinic_ = after;
    emit clinicChanged(clinic_);
}

void SettingsPage::saveBackupsKept(int count) {
    ClinicSettings after = clinic_;
    after.backupsKept = count;
    const Outcome outcome = saveClinicSettings(*store_, clinic_, after);
    record_->say(outcome ? tr("Saved for the clinic.") : reasonText(outcome.problems()), outcome.ok());
    if (!outcome) return;
    clinic_ = after;
    emit clinicChanged(clinic_);
}

void SettingsPage::changePassphrase() {
    passphraseNews_->setTone(Label::Tone::brick);
    if (passphrase_->text() != again_->text()) {
        passphraseNews_->setText(tr("The two passphrases differ."));
        return;
    }
    const auto user = store_->signedIn();
    if (!user) return;
    if (work_.busy()) return;
    auto second = store_->duplicate();
    if (!second) return passphraseNews_->setText(reasonText(second.problems()));
    // Deriving the key takes a noticeable time.
    const std::shared_ptr<Store> store = std::move(*second);
    change_->setEnabled(false);
    passphraseNews_->setTone(Label::Tone::quiet);
    passphraseNews_->setText(tr("Changing …"));
    work_.run([store, id = user->id,
               secret = passphrase_->text().toStdString()] { return store->setPassphrase(id, secret); },
              [this](const Outcome& outcome) {
                  change_->setEnabled(true);
                  passphraseNews_->setTone(outcome ? Label::Tone::spruce : Label::Tone::brick);
                  passphraseNews_->setText(outcome ? tr("Changed.") : reasonText(outcome.problems()));
                  if (!outcome) return;
                  passphrase_->clear();
                  again_->clear();
              });
}

} // namespace rhizograph::app
