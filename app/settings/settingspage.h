#pragma once

#include "patients/offthread.h"
#include "settings/clinicsettings.h"
#include "settings/preferences.h"

#include <QWidget>

class QLineEdit;
class QPlainTextEdit;
class QVBoxLayout;

namespace rhizograph::app {

class Card;
class Label;
class LayoutCard;
class PlainButton;
class RecordCard;
class Segmented;
class UsersCard;

/// Language, theme and text size here; letterhead, units, grades and lock for the clinic; the record and its
/// backups; one's passphrase; people.
class SettingsPage : public QWidget {
    Q_OBJECT

public:
    explicit SettingsPage(QWidget* parent = nullptr);
    /// Reads everything; the reason when the record cannot be read.
    /// `backups` is the folder of the daily backups. The catalogue, which outlives the page, may be null:
    /// order and places of items cannot be chosen then.
    Outcome show(Store& store, const Preferences& preferences, const std::filesystem::path& backups,
                 const Catalogue* catalogue = nullptr);
    [[nodiscard]] RecordCard& recordCard() { return *record_; }

signals:
    void preferencesChanged(const rhizograph::app::Preferences& preferences);
    void clinicChanged(const rhizograph::app::ClinicSettings& settings);
    void back();

private:
    Card* card(const QString& title);
    void buildHere();
    void buildClinic();
    void buildPassphrase();
    void saveClinic();
    void saveBackupsKept(int count);
    void changePassphrase();
    void take();

    Store* store_ = nullptr;
    Preferences preferences_;
    ClinicSettings clinic_;
    QVBoxLayout* column_;
    Segmented* language_;
    Segmented* theme_;
    Segmented* text_;
    Card* clinicCard_;
    QPlainTextEdit* letterhead_;
    QPlainTextEdit* phrases_;
    LayoutCard* layout_;
    Segmented* unit_;
    Segmented* grades_;
    Segmented* idle_;
    Label* clinicNews_;
    QLineEdit* passphrase_;
    QLineEdit* again_;
    Label* passphraseNews_;
    RecordCard* record_;
    PlainButton* change_;
    UsersCard* users_;
    OffThread work_; ///< derives the key of a new passphrase
};

} // namespace rhizograph::app
