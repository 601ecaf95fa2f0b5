#include "patients/listdialog.h"

#include "core/record/clinicfixture.h"

#include <QApplication>
#include <QComboBox>
#include <QTableWidget>

namespace rhizograph::app {
namespace {

using rhizograph::testing::Clinic;
using rhizograph::testing::need;

class ListDialogTest : public Clinic {
protected:
    QString table(const std::string& content) {
        const auto path = folder.path() / "list.csv";
        std::ofstream(path) << content;
        return QString::fromStdString(path.string());
    }
};

TEST_F(ListDialogTest, ShowsWhatWouldComeInAndTakesItOnceTheColumnsAreRight) {
    ListDialog dialog(*store);
    dialog.open(
        table("No.,Name,Born,Shoe\nL-1,Wren Brindlecombe,05.04.1970,38\nL-2,Piers Oat,31.12.1949,44\n"));
    dialog.show();
    QApplication::processEvents();
    EXPECT_EQ(dialog.column(1).currentText(), QStringLiteral("Name"));
    EXPECT_EQ(dialog.column(3).currentText(), QStringLiteral("Left out"));
    EXPECT_EQ(dialog.preview().ready.size(), 0U) << "days are not guessed";
    EXPECT_EQ(dialog.preview().bad, 2);
    dialog.dates().setCurrentIndex(1);
    dialog.column(0).setCurrentIndex(1 + static_cast<int>(ListField::recordNumber));
    EXPECT_EQ(dialog.preview().ready.size(), 2U);
    EXPECT_TRUE(dialog.said().contains("2 patients are ready, 0 rows are left out"));
    EXPECT_TRUE(need(store->searchPatients("")).empty()) << "nothing is written before it is asked for";
    if (const QByteArray place = qgetenv("RHIZOGRAPH_PICTURE"); !place.isEmpty())
        dialog.grab().save(QString::fromUtf8(place));
    dialog.take();
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
    const auto found = need(store->searchPatients("L-1"));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].identity.birthDate, "1970-04-05");
}

TEST_F(ListDialogTest, SaysWhatIsWrongWithAFileThatIsNoTable) {
    ListDialog dialog(*store);
    dialog.open(table("Name\n\"never ends"));
    EXPECT_TRUE(dialog.said().contains("does not end")) << dialog.said().toStdString();
    ListDialog other(*store);
    other.open(QStringLiteral("/nowhere/list.csv"));
    EXPECT_TRUE(other.said().contains("no such file")) << other.said().toStdString();
    EXPECT_TRUE(need(store->searchPatients("")).empty());
}

} // namespace
} // namespace rhizograph::app
