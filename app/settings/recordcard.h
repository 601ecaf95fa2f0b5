#pragma once

#include "parts/card.h"
#include "parts/label.h"
#include "settings/clinicsettings.h"

#include <filesystem>

namespace rhizograph::app {

class PlainButton;
class Segmented;

/// Where the record stands: its backups, whether it is what was written, its audit. Shows to each role what
/// it may do.
class RecordCard : public Card {
    Q_OBJECT

public:
    explicit RecordCard(QWidget* parent = nullptr);

    /// Reads what is known of the backups in `folder`.
    void show(Store& store, const ClinicSettings& clinic, const std::filesystem::path& folder);
    /// What came of the last thing asked for; `good` in words of success, otherwise of failure.
    void say(const QString& text, bool good);
    /// While something slow goes on, nothing else of it can be begun.
    void setBusy(const QString& doing);
    void setIdle();

signals:
    void backupsKeptChosen(int count);
    void folderWanted();
    void backUpWanted();
    void verifyWanted();
    void restoreWanted();
    void auditWanted();

private:
    void build();

    Label* where_;
    Label* newest_;
    Segmented* kept_;
    Label* keptName_;
    Label* news_;
    PlainButton* folder_;
    PlainButton* backUp_;
    PlainButton* verify_;
    PlainButton* restore_;
    PlainButton* audit_;
};

} // namespace rhizograph::app
