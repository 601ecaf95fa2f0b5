#include "summary/summarypage.h"

#include "exchange/narrative.h"
#include "parts/textsize.h"
#include "record/store.h"
#include "shell/visitsession.h"
#include "summary/pagepreview.h"
#include "summary/pdfjob.h"
#include "summary/summarypanel.h"
#include "summary/wordseditor.h"

#include <algorithm>
#include <QBoxLayout>
#include <QLocale>
#include <QScrollArea>
#include <QScrollBar>
#include <QStackedWidget>

namespace rhizograph::app {
namespace {

constexpr int sideWidth = 340;   // px at 100 % text
constexpr int widePixels = 1000; // px; from here on beside it whatever the text size
constexpr int wideFrom = 900;    // px at 100 % text; below it the panel goes under the page

/// The clinic's phrases, one a line; until it wrote some, these.
QStringList phrasesOf(Store& store) {
    const auto own = store.setting("phrases");
    if (own && *own && !(*own)->empty())
        return QString::fromStdString(**own).split(u'\n', Qt::SkipEmptyParts);
    return {SummaryPage::tr("Stay active."),
            SummaryPage::tr("Review in 2 weeks."),
            SummaryPage::tr("Return if worse."),
            SummaryPage::tr("Told what would need same-day care."),
            SummaryPage::tr("Exercises shown and written down."),
            SummaryPage::tr("Imaging is not needed at present."),
            SummaryPage::tr("Imaging is requested."),
            SummaryPage::tr("Surgical opinion is requested.")};
}

QPageSize::PageSizeId usualPaper() {
    return QLocale().measurementSystem() == QLocale::ImperialUSSystem ? QPageSize::Letter : QPageSize::A4;
}

QString word(const std::string& text) {
    return QString::fromStdString(text);
}

} // namespace

SummaryPage::SummaryPage(VisitSession& session, Store& store, std::shared_ptr<const FigureArt> art,
                         QWidget* parent)
    : QWidget(parent), session_(session), store_(store), art_(std::move(art)), paper_(usualPaper()) {
    readRecord();
    build();
    planTimer_.setSingleShot(true);
    planTimer_.setInterval(400);
    connect(&planTimer_, &QTimer::timeout, this, &SummaryPage::flushPlan);
    refreshTimer_.setSingleShot(true);
    refreshTimer_.setInterval(120);
    connect(&refreshTimer_, &QTimer::timeout, this, &SummaryPage::refresh);
    for (const auto change : {&VisitSession::assessed, &VisitSession::acknowledgementsChanged})
        connect(&session_, change, this, &SummaryPage::refreshSoon);
    connect(&session_, &VisitSession::planChanged, this, [this] {
        // What is being typed is written in a moment, over what somebody else wrote.
        if (!planTimer_.isActive()) panel_->setPlan(session_.plan());
        refreshSoon();
    });
}

SummaryPage::~SummaryPage() {
    flushPlan();
}

void SummaryPage::readRecord() {
    const VisitId& visit = session_.start().visit.id;
    if (const auto name = store_.clinicName()) clinic_ = word(*name);
    if (const auto lines = store_.setting("letterhead"); lines && *lines) {
        letterhead_ = word(**lines);
        // The first line is the name of the house.
        if (letterhead_.section(u'\n', 0, 0) == clinic_) clinic_.clear();
    }
    if (const auto notes = store_.notes(visit)) edits_ = editsOf(*notes);
    earlierExams_.clear();
    if (const auto visits = store_.visitsOf(session_.start().visit.patient)) {
        for (const Visit& each : *visits)
            if (each.number < session_.start().visit.number)
                if (auto exam = store_.exam(each.id)) earlierExams_.push_back(std::move(*exam));
    }
    signature_.reset();
    if (const auto given = store_.signature(visit); given && *given)
        signature_ = PageSignature{word((*given)->by), longMoment((*given)->at)};
    addenda_.clear();
    if (const auto added = store_.addenda(visit)) {
        for (const AuthoredText& each : *added)
            addenda_.push_back({word(each.text), word(each.by), longMoment(each.at)});
    }
}

void SummaryPage::build() {
    layout_ = new QBoxLayout(QBoxLayout::LeftToRight, this);
    layout_->setContentsMargins(0, 0, 0, 0);
    layout_->setSpacing(0);
    preview_ = new PagePreview;
    desk_ = new QScrollArea(this);
    desk_->setWidget(preview_);
    desk_->setWidgetResizable(true);
    desk_->setFrameShape(QFrame::NoFrame);
    desk_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    desk_->setFocusPolicy(Qt::NoFocus);
    layout_->addWidget(desk_, 1);
    panel_ = new SummaryPanel(phrasesOf(store_));
    editor_ = new WordsEditor;
    side_ = new QStackedWidget(this);
    side_->addWidget(panel_);
    side_->addWidget(editor_);
    layout_->addWidget(side_);
    job_ = new PdfJob(this);

    panel_->setPlan(session_.plan());
    allowWhatIsAllowed();
    connect(panel_, &SummaryPanel::planEdited, this, [this] { planTimer_.start(); });
    connect(panel_, &SummaryPanel::optionsChanged, this, &SummaryPage::refresh);
    connect(panel_, &SummaryPanel::goToItem, this, &SummaryPage::goToItem);
    connect(panel_, &SummaryPanel::printPressed, this, &SummaryPage::askPrint);
    connect(panel_, &SummaryPanel::pdfPressed, this, &SummaryPage::askPdf);
    connect(panel_, &SummaryPanel::textPressed, this, &SummaryPage::copyText);
    connect(panel_, &SummaryPanel::addendumWritten, this, &SummaryPage::addAddendum);
    connect(panel_, &SummaryPanel::signPressed, this, [this] {
        flushPlan();
        emit signRequested();
    });
    connect(preview_, &PagePreview::sectionPressed, this, &SummaryPage::editSection);
    connect(preview_, &PagePreview::focusMoved, this, [this](const QRect& rect) {
        desk_->ensureVisible(rect.center().x(), rect.center().y(), 0, rect.height());
    });
    connect(editor_, &WordsEditor::accepted, this, &SummaryPage::acceptWords);
    connect(editor_, &WordsEditor::cancelled, this, [this] { side_->setCurrentIndex(0); });
    connect(job_, &PdfJob::finished, this, &SummaryPage::pdfDone);
}

void SummaryPage::allowWhatIsAllowed() {
    SummaryPanel::May may;
    may.change = !session_.readOnly() && !isSigned();
    may.plan = session_.mayPlan() && !isSigned();
    may.sign = session_.maySign() && !isSigned();
    may.addend = isSigned() && session_.start().rights.sign;
    panel_->allow(may, isSigned() ? tr("signed") : may.change ? tr("draft") : tr("read only"));
}

PageIdentity SummaryPage::identity() const {
    const auto& start = session_.start();
    PageIdentity who;
    who.clinic = clinic_;
    who.letterhead = letterhead_;
    who.name = word(start.patient.identity.name);
    Subject subject = session_.exam().subject;
    if (!subject.age) subject.age = start.visit.ageAtVisit;
    if (subject.sex.empty()) subject.sex = start.patient.identity.sex;
    who.about = aboutWords(subject);
    const QString visit = QStringLiteral("visit %1").arg(start.visit.number);
    const QString record = word(start.patient.identity.recordNumber);
    who.record = record.isEmpty() ? visit : QStringLiteral("Record %1 · %2").arg(record, visit);
    who.date = longDate(start.visit.date);
    return who;
}

std::vector<PageSection> SummaryPage::generatedSections() const {
    Assessment assessment = session_.assessment();
    if (!panel_->reasons()) {
        for (SiteResult& site : assessment.localization) {
            site.speaksFor.clear();
            site.speaksAgainst.clear();
        }
    }
    const Narrative narrative =
        narrate(session_.exam(), assessment, session_.knowledge(), session_.previous());
    return pageSections(narrative, panel_->notExamined());
}

void SummaryPage::addAcknowledgements(std::vector<PageSection>& sections) const {
    // The narrative's own name for the section that holds them.
    const auto found = std::find_if(sections.begin(), sections.end(), [](const PageSection& each) {
        return each.id == QStringLiteral("red_signs");
    });
    if (found == sections.end()) return;
    QStringList words;
    for (const RedSign& sign : session_.assessment().redSigns) {
        if (sign.urgency == Urgency::note) continue;
        const auto& given = session_.start().acknowledgements;
        const auto last = std::find_if(given.rbegin(), given.rend(), [&](const RedSignAcknowledgement& each) {
            return each.sign == sign.id;
        });
        QString sentence = word(sign.sentence);
        if (sentence.endsWith(u'.')) sentence.chop(1);
        words << (last != given.rend() && session_.acknowledged(sign)
                      ? QStringLiteral("%1: acknowledged by %2, %3.")
                            .arg(sentence, word(last->by), longMoment(last->at))
                      : QStringLiteral("%1: not acknowledged.").arg(sentence));
    }
    found->quiet += (found->quiet.isEmpty() ? QString() : QStringLiteral(" ")) + words.join(u' ');
}

void SummaryPage::shorten(std::vector<PageSection>& sections) const {
    std::set<std::string> changed;
    for (const auto& [section, edit] : edits_)
        changed.insert(section.toStdString());
    sections = pageSections(inShort(narrativeOf(sections, {}), session_.knowledge(), changed));
}

PageContent SummaryPage::content() const {
    PageContent content;
    content.identity = identity();
    content.sections = generatedSections();
    applyEdits(content.sections, edits_);
    if (panel_->brief()) shorten(content.sections);
    addAcknowledgements(content.sections);
    std::vector<Exam> visits = earlierExams_;
    visits.push_back(session_.exam());
    addTrends(content, visits, session_.knowledge());
    if (art_ != nullptr && panel_->figures() && !panel_->brief())
        content.figures = pageFigures(session_.catalogue(), *art_, session_.exam());
    content.plan = panel_->plan();
    content.signature = signature_;
    content.addenda = addenda_;
    content.cautions = word(narrate({}, {}, session_.knowledge()).cautions);
    return content;
}

void SummaryPage::refreshSoon() {
    stale_ = true;
    if (isVisible()) refreshTimer_.start();
}

void SummaryPage::refresh() {
    stale_ = false;
    refreshTimer_.stop();
    preview_->setDocument(std::make_shared<const PageDocument>(content(), art_, paper_));
    std::vector<PageSection> sections = generatedSections();
    panel_->showWarnings(warningsBeforeSigning(session_, applyEdits(sections, edits_)));
}

void SummaryPage::flushPlan() {
    planTimer_.stop();
    if (panel_->plan() != session_.plan() && session_.mayPlan()) session_.setPlan(panel_->plan());
}

void SummaryPage::showEvent(QShowEvent* event) {
    if (stale_) refresh();
    QWidget::showEvent(event);
}

void SummaryPage::hideEvent(QHideEvent* event) {
    flushPlan();
    QWidget::hideEvent(event);
}

void SummaryPage::resizeEvent(QResizeEvent*) {
    const bool wide = width() >= std::min(grown(this, wideFrom), widePixels);
    layout_->setDirection(wide ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    side_->setMinimumWidth(wide ? grown(this, sideWidth) : 0);
    side_->setMaximumWidth(wide ? grown(this, sideWidth) : QWIDGETSIZE_MAX);
    side_->setMaximumHeight(wide ? QWIDGETSIZE_MAX : height() * 45 / 100);
    side_->setMinimumHeight(wide ? 0 : height() * 45 / 100);
}

} // namespace rhizograph::app
