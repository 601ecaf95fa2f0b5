#pragma once

#include "exchange/patientlist.h"

#include <QDialog>
#include <vector>

class QComboBox;
class QTableWidget;

namespace rhizograph::app {

class Label;
class PlainButton;

/// Brings in a list of patients: what each column holds, the first rows as they would be taken, and every row
/// with something wrong, before anything is written.
class ListDialog : public QDialog {
    Q_OBJECT

public:
    explicit ListDialog(Store& store, QWidget* parent = nullptr);

    /// Reads a table and shows it; what is wrong with the file is said in the dialog.
    void open(const QString& path);
    [[nodiscard]] const ListPreview& preview() const { return preview_; }
    [[nodiscard]] QComboBox& column(std::size_t index) { return *columns_.at(index); }
    [[nodiscard]] QComboBox& dates() { return *dates_; }
    [[nodiscard]] QString said() const;
    /// Writes the patients that are ready; those with something wrong are left out.
    void take();

private:
    void showColumns();
    void refresh();
    void showRows();
    void say(const QString& text);

    Store& store_;
    std::string file_;
    CsvTable table_;
    std::vector<Patient> known_;
    ListPreview preview_;
    std::vector<QComboBox*> columns_;
    QWidget* mapping_ = nullptr;
    QComboBox* dates_ = nullptr;
    QTableWidget* rows_ = nullptr;
    QTableWidget* wrong_ = nullptr;
    Label* said_ = nullptr;
    PlainButton* take_ = nullptr;
};

} // namespace rhizograph::app
