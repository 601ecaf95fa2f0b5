#include "parts/label.h"
#include "parts/strip.h"
#include "patients/listdialog.h"
#include "patients/patientform.h"
#include "patients/patientpage.h"
#include "patients/patientspage.h"
#include "patients/restorepage.h"
#include "settings/auditpage.h"
#include "settings/settingspage.h"
#include "window/mainwindow.h"
#include "window/visitpage.h"

#include <QDate>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QLocale>
#include <QStackedWidget>

namespace rhizograph::app {

void MainWindow::needHouse() {
    if (house_ != nullptr) return;
    house_ = new QWidget(stack_);
    stack_->addWidget(house_);
    auto* column = new QVBoxLayout(house_);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    buildStrip();
    column->addWidget(strip_);
    rooms_ = new QStackedWidget(house_);
    column->addWidget(rooms_, 1);
    patients_ = new PatientsPage(rooms_);
    patient_ = new PatientPage(rooms_);
    form_ = new PatientForm(rooms_);
    settings_ = new SettingsPage(rooms_);
    audit_ = new AuditPage(rooms_);
    for (QWidget* room : std::initializer_list<QWidget*>{patients_, patient_, form_, settings_, audit_})
        rooms_->addWidget(room);
    restore_ = new RestorePage(stack_);
    stack_->addWidget(restore_);
    connectHouse();
    connectUpkeep();
    connectPerson();
}

void MainWindow::buildStrip() {
    strip_ = new Strip(house_);
    auto& row = strip_->content();
    row.addWidget(new Label(tr("Patients"), 19, QFont::DemiBold, Label::Tone::ink, strip_));
    row.addWidget(Strip::divider(strip_));
    auto* day = new Label(QLocale().toString(QDate::currentDate(), "dddd d MMM yyyy"), 16, QFont::Normal,
                          Label::Tone::ink, strip_);
    day->setElided(true);
    row.addWidget(day);
    row.addStretch(1);
}

void MainWindow::connectHouse() {
    connect(strip_, &Strip::lockWanted, this, &MainWindow::lock);
    connect(strip_, &Strip::menuWanted, this, [this] { showMenu(*strip_); });
    connect(patients_, &PatientsPage::refreshWanted, this,
            [this] { succeeded(patients_->refresh(*store_)); });
    connect(patients_, &PatientsPage::visitChosen, this, [this](const VisitId& id) { openVisitById(id); });
    connect(patients_, &PatientsPage::patientChosen, this, &MainWindow::showPatient);
    connect(patients_, &PatientsPage::newPatientWanted, this, [this](const QString& searched) {
        form_->begin(searched);
        showForm();
    });
    connect(patients_, &PatientsPage::listWanted, this, [this] {
        const QString path = QFileDialog::getOpenFileName(this, tr("A list of patients"), {},
                                                          tr("Tables (*.csv *.tsv *.txt)"));
        if (path.isEmpty()) return;
        ListDialog dialog(*store_, this);
        dialog.open(path);
        if (dialog.exec() == QDialog::Accepted) succeeded(patients_->refresh(*store_));
    });
    connect(patient_, &PatientPage::back, this, &MainWindow::showPatients);
    connect(patient_, &PatientPage::visitChosen, this, [this](const VisitId& id) { openVisitById(id); });
    connect(patient_, &PatientPage::newVisitWanted, this, &MainWindow::beginVisit);
    connect(patient_, &PatientPage::editWanted, this, [this](const Patient& patient) {
        form_->edit(patient);
        showForm();
    });
    connect(form_, &PatientForm::saveWanted, this, &MainWindow::savePatient);
    connect(form_, &PatientForm::canceled, this, &MainWindow::showPatients);
    connect(settings_, &SettingsPage::preferencesChanged, this, &MainWindow::setPreferences);
    connect(settings_, &SettingsPage::clinicChanged, this, [this](const ClinicSettings& settings) {
        clinic_ = settings;
        followVisit();
    });
    connect(settings_, &SettingsPage::back, this, [this] {
        if (visitPage_ != nullptr)
            stack_->setCurrentWidget(visitPage_.get());
        else
            showPatients();
    });
}

} // namespace rhizograph::app
