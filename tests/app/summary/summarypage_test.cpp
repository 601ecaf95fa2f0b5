#include "summary/summarypage.h"

#include "exchange/examfile.h"
#include "parts/button.h"
#include "record/store.h"
#include "shell/visitsession.h"
#include "summary/pagepreview.h"
#include "summary/summarypanel.h"
#include "summary/wordseditor.h"
#include "support/process.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <QApplication>
#include <QClipboard>
#include <QPlainTextEdit>
#include <QPrinter>
#include <QSignalSpy>
#include <QTemporaryDir>

namespace rhizograph::app {
namespace {

template <class T> T taken(Result<T> result) {
    if (!result) throw std::runtime_error(result.problems().front().text());
    return std::move(result).value();
}

void held(const Outcome& outcome) {
    if (!outcome) throw std::runtime_error(outcome.problems().front().text());
}

const Knowledge& knowledge() {
    static const Knowledge loaded =
        taken(Knowledge::load(std::filesystem::path(RHIZOGRAPH_RESOURCES) / "knowledge"));
    return loaded;
}

/// A clinic of its own with one invented patient and one visit.
class SummaryPageTest : public ::testing::Test {
protected:
    SummaryPageTest() {
        const auto file = std::filesystem::path(folder.filePath("clinic.rhizo").toStdString());
        ClinicOptions options;
        options.cost = KeyCost::cheapest();
        held(createClinic(file, "Hillside Clinic", {"Clinician Two", Role::administrator, "long enough"},
                          options));
        store = taken(openClinic(file, options));
        administrator = taken(store->users()).front();
        held(store->signIn(administrator.id, "long enough"));
        const User clinician = taken(store->addUser("Clinician Three", Role::clinician, "long enough"));
        store->signOut();
        held(store->signIn(clinician.id, "long enough"));
        const Patient patient =
            taken(store->addPatient({"Quillon Fernwhistle", "00417", "1974-03-02", "male", "", ""}));
        visit = taken(store->addVisit(patient.id, "2026-11-24"));
        VisitSession::Start start;
        start.patient = patient;
        start.visit = visit;
        start.exam = taken(
            readExamFile(std::filesystem::path(RHIZOGRAPH_TEST_DATA) / "cases/textbook/cauda-equina.json",
                         knowledge().catalogue()));
        start.userName = "Clinician Three";
        session = std::make_unique<VisitSession>(knowledge(), start, nullptr);
        art = std::make_shared<const FigureArt>(
            taken(FigureArt::load(std::filesystem::path(RHIZOGRAPH_RESOURCES) / "figures")));
        open();
    }

    void open() {
        page = std::make_unique<SummaryPage>(*session, *store, art);
        page->resize(1176, 744);
        page->show();
        QApplication::processEvents();
    }

    int logged(AuditAction action) {
        store->signOut();
        held(store->signIn(administrator.id, "long enough"));
        const auto entries = taken(store->audit());
        return static_cast<int>(std::ranges::count_if(entries, [&](const AuditEntry& entry) {
            return entry.action == action && entry.subject == visit.id.text();
        }));
    }

    QString wordsOfPdf(const QString& path) {
        const auto read =
            rhizograph::testing::runProcess({"/usr/bin/pdftotext", "-enc", "UTF-8", path.toStdString(), "-"});
        return QString::fromStdString(read.out).simplified();
    }

    bool exportTo(const QString& path) {
        QSignalSpy spy(page.get(), &SummaryPage::pdfWritten);
        page->exportPdf(path);
        return spy.wait(20000) && spy.front().at(1).toBool();
    }

    PageSection sectionNamed(const QString& id) {
        for (const PageSection& section : page->content().sections)
            if (section.id == id) return section;
        throw std::runtime_error("no section " + id.toStdString());
    }

    QTemporaryDir folder;
    std::unique_ptr<Store> store;
    User administrator;
    Visit visit;
    std::unique_ptr<VisitSession> session;
    std::shared_ptr<const FigureArt> art;
    std::unique_ptr<SummaryPage> page;
};

TEST_F(SummaryPageTest, ThePdfHoldsPatientPositivesAndPlanAndIsLogged) {
    page->panel().planField().setPlainText("Same-day referral made by telephone.");
    const QString path = folder.filePath("out.pdf");
    ASSERT_TRUE(exportTo(path));
    const QString words = wordsOfPdf(path);
    EXPECT_TRUE(words.contains("Quillon Fernwhistle"));
    EXPECT_TRUE(words.contains("Record 00417"));
    EXPECT_TRUE(words.contains("Same-day referral made by telephone."));
    qsizetype from = 0;
    for (const PageSection& section : page->content().sections) {
        if (section.bold.isEmpty()) continue;
        const auto at = words.indexOf(section.bold.simplified().section(u' ', 0, 2), from);
        ASSERT_GE(at, 0) << section.title.toStdString();
        from = at;
    }
    EXPECT_EQ(logged(AuditAction::exported), 1);
}

TEST_F(SummaryPageTest, AFileThatCannotBeWrittenIsToldAndNotLogged) {
    EXPECT_FALSE(exportTo("/nowhere/out.pdf"));
    EXPECT_TRUE(page->panel().said().contains("/nowhere/out.pdf"));
    EXPECT_EQ(logged(AuditAction::exported), 0);
}

TEST_F(SummaryPageTest, APrintIsLogged) {
    QPrinter printer;
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(folder.filePath("print.pdf"));
    page->printOn(printer);
    EXPECT_TRUE(wordsOfPdf(folder.filePath("print.pdf")).contains("Quillon Fernwhistle"));
    EXPECT_EQ(logged(AuditAction::printed), 1);
}

TEST_F(SummaryPageTest, TheTextGoesToTheClipboardAndIsLogged) {
    page->copyText();
    const QString text = QApplication::clipboard()->text();
    EXPECT_TRUE(text.contains("Quillon Fernwhistle"));
    EXPECT_TRUE(text.contains("Draft, not signed."));
    EXPECT_TRUE(text.contains("not a diagnosis"));
    EXPECT_EQ(logged(AuditAction::exported), 1);
}

TEST_F(SummaryPageTest, ChangedWordsStandOnThePageAndComeBackWhenItIsOpenedAgain) {
    page->editSection("impression");
    const QString before = page->editor().field().toPlainText();
    page->editor().field().setPlainText(before + " Seen with a colleague.");
    EXPECT_TRUE(page->editor().difference().contains("Seen with a colleague."));
    emit page->editor().accepted("impression", before + " Seen with a colleague.", before);
    EXPECT_TRUE(sectionNamed("impression").text.contains("Seen with a colleague."));
    EXPECT_TRUE(sectionNamed("impression").quiet.contains("Words changed by Clinician Three."));
    open();
    EXPECT_TRUE(sectionNamed("impression").text.contains("Seen with a colleague."));
}

TEST_F(SummaryPageTest, APressOnASectionOpensItsWords) {
    ASSERT_GT(page->preview().cellCount(), 3);
    page->preview().pressCell(0);
    EXPECT_EQ(page->editor().section(), page->content().sections.front().id);
    EXPECT_TRUE(page->editor().isVisible());
}

TEST_F(SummaryPageTest, AnUnacknowledgedRedSignIsNamedUntilItIsAcknowledged) {
    ASSERT_FALSE(session->assessment().redSigns.empty());
    EXPECT_TRUE(sectionNamed("red_signs").quiet.contains("not acknowledged"));
    for (const RedSign& sign : session->assessment().redSigns)
        session->acknowledge(QString::fromStdString(sign.id), urgencyWord(sign.urgency));
    EXPECT_FALSE(sectionNamed("red_signs").quiet.contains("not acknowledged"));
    EXPECT_TRUE(sectionNamed("red_signs").quiet.contains("acknowledged by Clinician Three"));
}

TEST_F(SummaryPageTest, APlanIsHandedOverBeforeSigningIsAskedFor) {
    QString atSigning;
    QObject::connect(page.get(), &SummaryPage::signRequested, [&] { atSigning = session->plan(); });
    page->panel().planField().setPlainText("Stay active.");
    page->panel().signButton().click();
    EXPECT_EQ(atSigning.toStdString(), "Stay active.");
}

TEST_F(SummaryPageTest, ASignedVisitTakesAddendaAndNothingElse) {
    held(store->sign(visit.id, knowledge().version()));
    open();
    EXPECT_TRUE(page->isSigned());
    EXPECT_TRUE(page->panel().planField().isReadOnly());
    EXPECT_FALSE(page->panel().signButton().isVisible());
    page->editSection("impression");
    EXPECT_FALSE(page->editor().isVisible());
    page->addAddendum("Imaging was declined.");
    ASSERT_EQ(page->content().addenda.size(), 1U);
    EXPECT_EQ(page->content().addenda.front().by, "Clinician Three");
    EXPECT_EQ(taken(store->addenda(visit.id)).size(), 1U);
}

TEST_F(SummaryPageTest, EverythingThatCanBePressedHasANameAndRoomForAFinger) {
    QCoreApplication::processEvents(); // rows made just now have their places then
    for (auto* button : page->findChildren<QAbstractButton*>()) {
        if (!button->isVisible() || qobject_cast<PlainButton*>(button) == nullptr) continue;
        EXPECT_FALSE(button->text().isEmpty() && button->accessibleName().isEmpty());
        EXPECT_GE(button->height(), 44) << button->text().toStdString();
    }
}

/// What was normal at the last visit and is not now.
struct NewLoss {
    const char* name;
    FindingKey key;
    const char* before;
    const char* now;
};

class NewBladderOrSaddleLoss : public SummaryPageTest, public ::testing::WithParamInterface<NewLoss> {
protected:
    NewBladderOrSaddleLoss() {
        VisitSession::Start start = session->start();
        const NewLoss& loss = GetParam();
        start.exam = Exam{};
        start.exam.set(loss.key, Finding{Value::token(loss.now), false, {}});
        start.previous = Exam{};
        start.previous->set(loss.key, Finding{Value::token(loss.before), false, {}});
        start.previous->date = "2026-11-02";
        page.reset();
        session = std::make_unique<VisitSession>(knowledge(), start, nullptr);
        open();
    }
    /// The sentence of the red sign that speaks of this finding.
    QString sentence() {
        for (const RedSign& sign : session->assessment().redSigns)
            if (std::ranges::find(sign.because, GetParam().key) != sign.because.end())
                return QString::fromStdString(sign.sentence);
        throw std::runtime_error("no red sign speaks of it");
    }
};

TEST_P(NewBladderOrSaddleLoss, StandsInTheTextAndOnThePageWithWhatItWasBefore) {
    const QString path = folder.filePath("change.pdf");
    ASSERT_TRUE(exportTo(path));
    page->copyText();
    const Item& item = *knowledge().catalogue().find(GetParam().key.item);
    const QString before = QString::fromStdString(display(item.scale, Value::token(GetParam().before)));
    for (const QString& words : {QApplication::clipboard()->text().simplified(), wordsOfPdf(path)}) {
        EXPECT_TRUE(words.contains(sentence().chopped(1))) << words.toStdString();
        EXPECT_TRUE(words.contains("not acknowledged")) << words.toStdString();
        const auto compared = words.indexOf("Compared with the visit of 2026-11-02");
        ASSERT_GE(compared, 0) << words.toStdString();
        EXPECT_GT(words.indexOf(before + " → ", compared, Qt::CaseInsensitive), compared)
            << words.toStdString();
        const QString name = QString::fromLatin1(GetParam().name);
        EXPECT_FALSE(words.contains(name + QLatin1Char(' ') + name, Qt::CaseInsensitive))
            << words.toStdString();
    }
}

INSTANTIATE_TEST_SUITE_P(
    Of, NewBladderOrSaddleLoss,
    ::testing::Values(NewLoss{"Bladder", {ItemId{"history.bladder"}, Side::none}, "normal", "retention"},
                      NewLoss{"Saddle", {ItemId{"touch.perianal"}, Side::left}, "normal", "reduced"}),
    [](const auto& each) { return std::string(each.param.name); });

} // namespace
} // namespace rhizograph::app
