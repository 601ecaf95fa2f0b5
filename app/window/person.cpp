#include "exchange/patientfile.h"
#include "patients/erasedialog.h"
#include "patients/joindialog.h"
#include "patients/patientpage.h"
#include "patients/words.h"
#include "window/mainwindow.h"

#include <QFileDialog>
#include <QMessageBox>
#include <QSaveFile>

namespace rhizograph::app {

void MainWindow::connectPerson() {
    connect(patient_, &PatientPage::joinWanted, this, &MainWindow::joinDuplicate);
    connect(patient_, &PatientPage::partWanted, this, &MainWindow::partDuplicate);
    connect(patient_, &PatientPage::handOutWanted, this, &MainWindow::handOut);
    connect(patient_, &PatientPage::eraseWanted, this, &MainWindow::erase);
}

void MainWindow::joinDuplicate(const Patient& patient) {
    JoinDialog dialog(*store_, patient, this);
    // The lock closes the dialog too.
    if (dialog.exec() != QDialog::Accepted || dialog.chosen().empty()) return;
    if (succeeded(store_->mergePatients(dialog.chosen(), patient.id))) showPatient(patient.id);
}

void MainWindow::partDuplicate(const Patient& duplicate) {
    const PatientId shown = patient_->patient().id;
    if (succeeded(store_->partPatients(duplicate.id))) showPatient(shown);
}

void MainWindow::handOut(const Patient& patient) {
    const QString file = QFileDialog::getSaveFileName(this, tr("Hand out everything on this patient"),
                                                      QStringLiteral("patient.json"), tr("JSON (*.json)"));
    if (!file.isEmpty() && store_->signedIn()) handOutTo(patient, file);
}

void MainWindow::handOutTo(const Patient& patient, const QString& file) {
    const auto json = exportPatient(*store_, patient.id);
    if (!json) return complain(json.problems());
    // What somebody typed long ago may not be UTF-8; better a mark in its place than nothing handed out.
    const std::string text =
        json->dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace) + "\n";
    QSaveFile out(file);
    const bool opened = out.open(QIODevice::WriteOnly);
    out.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner);
    if (!opened || out.write(text.data(), static_cast<qint64>(text.size())) < 0 || !out.commit())
        return tell(tr("%1 was not written: %2.").arg(file, out.errorString()));
    tell(tr("Everything on %1 is in %2, readable for whoever has the file. The audit notes it.")
             .arg(QString::fromStdString(patient.identity.name), file));
}

void MainWindow::erase(const Patient& patient) {
    const auto visits = store_->visitsOf(patient.id);
    if (!visits) return complain(visits.problems());
    EraseDialog dialog(patient, static_cast<int>(visits->size()), this);
    if (dialog.exec() != QDialog::Accepted) return;
    if (succeeded(store_->erasePatient(patient.id, dialog.reason()))) showPatients();
}

} // namespace rhizograph::app
