#include "page/pageflow.h"

#include "page/pagetheme.h"

#include <algorithm>
#include <QCoreApplication>

namespace rhizograph::app {
namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("Page", text);
}

constexpr qreal body = 10; // points
constexpr qreal small = 9;
constexpr qreal hairline = 10; // half a point
constexpr qreal pad = 100;     // above and below what a section says
constexpr qreal figureHeight = 61;
constexpr qreal figureHeightOfMany = 46; // where several layers were examined

const QRectF rightFoot(34, 953, 128, 232); // millimeters of the front figure
const QRectF leftFoot(262, 953, 128, 232);

PageRun ink(const QString& text, QFont::Weight weight = QFont::Normal) {
    return {text, weight, pageTheme().ink};
}
PageRun quiet(const QString& text) {
    return {text, QFont::Normal, pageTheme().quiet};
}

QRectF boxOf(const ViewArt& art) {
    QRectF box;
    for (const RegionArt& region : art.regions)
        box |= region.path.boundingRect();
    for (const QPainterPath& path : art.context)
        box |= path.boundingRect();
    return box.adjusted(-3, -3, 3, 3);
}

QString withSpace(const QString& before, const QString& text) {
    return before.isEmpty() || text.isEmpty() ? text : QStringLiteral(" ") + text;
}

} // namespace

PageFlow::PageFlow(const PageContent& content, const FigureArt* art, const QSizeF& paper)
    : content_(content), art_(art), paper_(paper), left_(millimeters(14)),
      right_(paper.width() - millimeters(14)), column_(left_ + millimeters(38)) {
    std::vector<PageRun> note;
    if (!content_.signature) note.push_back({tr("Draft, not signed. "), QFont::Bold, pageTheme().ink});
    note.push_back(quiet(content_.cautions));
    note_.emplace(note, small, right_ - left_);
    bottom_ = paper_.height() - millimeters(10) - note_->height() - millimeters(8);
}

std::vector<std::vector<PageElement>> PageFlow::pages() {
    pages_.emplace_back();
    y_ = millimeters(10);
    letterhead();
    std::vector<bool> placed(content_.figures.size());
    const auto placeFigures = [&](const QString& after) {
        for (std::size_t i = 0; i < placed.size(); ++i) {
            if (placed[i] || (!after.isEmpty() && content_.figures[i].after != after)) continue;
            figures(i);
            placed[i] = true;
        }
    };
    for (const PageSection& each : content_.sections) {
        section(each);
        placeFigures(each.id);
    }
    trends();
    placeFigures({}); // of layers without a section of their own
    plan();
    signature();
    addenda();
    feet();
    return std::move(pages_);
}

void PageFlow::newPage() {
    pages_.emplace_back();
    y_ = millimeters(10);
    runningHead();
}

void PageFlow::rule(qreal y, qreal width, const QColor& color) {
    pages_.back().emplace_back(PageRule{{left_, y, right_, y}, width, color});
}

void PageFlow::lines(const PageText& text, int from, int count, const QPointF& at) {
    for (int i = 0; i < count; ++i)
        pages_.back().emplace_back(PageLine{text.layout(), from + i, at + QPointF(0, i * text.lineHeight())});
}

void PageFlow::letterhead() {
    const PageIdentity& who = content_.identity;
    const qreal half = (right_ - left_) / 2 - millimeters(3);
    const PageText title({ink(tr("Low back and leg examination"), QFont::Bold)}, 14, half + millimeters(6));
    QString house = who.clinic;
    if (!who.letterhead.isEmpty())
        house += (house.isEmpty() ? QString() : QStringLiteral("\n")) + who.letterhead;
    const PageText clinic({quiet(house)}, small, half);
    const PageText name(
        {ink(who.name, QFont::Bold), ink(who.name.isEmpty() ? who.about : QStringLiteral(", ") + who.about)},
        body, half, Qt::AlignRight);
    const PageText visit(
        {ink(who.record + (who.record.isEmpty() ? QString() : QStringLiteral(" · ")) + who.date)}, body, half,
        Qt::AlignRight);
    whole(title, {left_, y_});
    const qreal below = y_ + title.height() + 20;
    if (!house.isEmpty()) whole(clinic, {left_, below});
    whole(name, {right_ - half, y_ + 90});
    whole(visit, {right_ - half, y_ + 90 + name.height()});
    y_ = std::max(house.isEmpty() ? below : below + clinic.height(),
                  y_ + 90 + name.height() + visit.height()) +
         80;
    rule(y_, 30, pageTheme().ink);
    y_ += 50;
}

void PageFlow::runningHead() {
    const PageIdentity& who = content_.identity;
    const qreal width = right_ - left_;
    const PageText left({ink(who.name, QFont::Bold),
                         ink(who.name.isEmpty() ? who.record : QStringLiteral(", ") + who.record)},
                        small, width * 0.75);
    const PageText right({quiet(tr("continued"))}, small, width * 0.25, Qt::AlignRight);
    whole(left, {left_, y_});
    whole(right, {left_ + width * 0.75, y_});
    y_ += left.height() + 60;
    rule(y_, 20, pageTheme().ink);
    y_ += 40;
}

void PageFlow::section(const PageSection& section) {
    paragraphs(section.title,
               {ink(section.bold, QFont::Bold), ink(withSpace(section.bold, section.text)),
                quiet(withSpace(section.bold + section.text, section.quiet))},
               section.id);
}

void PageFlow::block(const QString& id, qreal from, qreal to) {
    if (!id.isEmpty())
        blocks_.push_back(
            {id, static_cast<int>(pages_.size()) - 1, QRectF(left_, from, right_ - left_, to - from)});
}

void PageFlow::paragraphs(const QString& title, const std::vector<PageRun>& runs, const QString& id) {
    const PageText head({ink(title, QFont::Bold)}, body, column_ - left_ - millimeters(3));
    const PageText text(runs, body, right_ - column_);
    // At least two lines stay with their head, and no single line goes over to the next page.
    const int first = text.lines() <= 3 ? text.lines() : 2;
    if (std::max(first * text.lineHeight(), head.height()) + 2 * pad > room()) newPage();
    rule(y_, hairline, pageTheme().line);
    whole(head, {left_, y_ + pad});
    qreal least = y_ + pad + head.height();
    qreal from = y_;
    y_ += pad;
    int done = 0;
    while (done < text.lines()) {
        int fitting = static_cast<int>(room() / text.lineHeight());
        const int left = text.lines() - done;
        if (fitting >= left) {
            fitting = left;
        } else if (left - fitting == 1 && fitting > 2) {
            --fitting;
        }
        fitting = std::max(fitting, 1);
        lines(text, done, fitting, {column_, y_});
        y_ += fitting * text.lineHeight();
        done += fitting;
        if (done == text.lines()) break;
        block(id, from, y_);
        newPage();
        from = y_;
        const PageText again({quiet(tr("%1, continued").arg(title))}, small,
                             column_ - left_ - millimeters(3));
        whole(again, {left_, y_ + pad});
        y_ += pad;
        least = y_ + again.height();
    }
    y_ = std::max(y_, least) + pad;
    block(id, from, y_);
}

void PageFlow::figures(std::size_t index) {
    if (art_ == nullptr) return;
    const PageFigures& row = content_.figures[index];
    const qreal height = millimeters(content_.figures.size() > 1 ? figureHeightOfMany : figureHeight);
    const PageText title({ink(row.title, QFont::Bold), quiet(tr(", as drawn on an average adult"))}, small,
                         right_ - column_);
    const qreal words = title.lineHeight();
    const qreal all = height + 4 * words + pad;
    if (all > room()) newPage();
    whole(title, {column_, y_});
    y_ += words + 40;

    const qreal gap = millimeters(5);
    qreal x = column_ + millimeters(4); // the names below are wider than the figure
    const auto place = [&](FigureView view, const QRectF& source, const QRectF& cell, const QString& note) {
        picture(index, view, source, cell);
        sideNames(cell, view);
        if (!note.isEmpty()) caption(note, cell.adjusted(-gap, 0, gap, words));
    };
    for (const FigureView view : {FigureView::front, FigureView::back}) {
        const QRectF source = boxOf(art_->view(view));
        const QRectF cell(x, y_, height * source.width() / source.height(), height);
        place(view, source, cell, view == FigureView::front ? tr("from the front") : tr("from behind"));
        x = cell.right() + 2 * gap;
    }
    const qreal foot = height * rightFoot.width() / rightFoot.height() * 0.86;
    for (const QRectF& source : {rightFoot, leftFoot}) {
        const QRectF cell(x, y_, foot, height * 0.86);
        picture(index, FigureView::front, source, cell);
        caption(source == rightFoot ? tr("Right") : tr("Left"), cell.adjusted(0, 0, 0, height * 0.14));
        x = cell.right() + gap * 0.5;
    }
    caption(tr("feet, larger"), QRectF(x - 2 * foot - gap, y_, 2 * foot + gap * 0.5, height + words));
    const qreal rest = right_ - x - gap;
    const qreal half = (height - 2 * words) / 2;
    for (const FigureView view : {FigureView::sole, FigureView::saddle}) {
        const QRectF source = boxOf(art_->view(view));
        const qreal width = std::min(rest, half * source.width() / source.height());
        const qreal top = view == FigureView::sole ? y_ : y_ + half + 2 * words;
        const QRectF cell(x + gap + (rest - width) / 2, top, width, half);
        picture(index, view, source, cell);
        sideNames(cell, view);
        caption(view == FigureView::sole ? tr("soles") : tr("saddle"), cell.adjusted(-gap, 0, gap, words));
    }
    y_ += height + 2 * words + 40;
    legend(row);
    y_ += pad;
}

void PageFlow::picture(std::size_t index, FigureView view, const QRectF& source, const QRectF& target) {
    pages_.back().emplace_back(PagePicture{view, source, target, index});
}

/// Words centered under a box.
qreal PageFlow::caption(const QString& text, const QRectF& under) {
    const PageText words({quiet(text)}, small, under.width(), Qt::AlignHCenter);
    whole(words, {under.left(), under.bottom()});
    return words.height();
}

/// Right and Left under the sides, as they stand in the view.
void PageFlow::sideNames(const QRectF& target, FigureView view) {
    QRectF half = target;
    half.setWidth(target.width() / 2);
    const bool behind = view == FigureView::back;
    // Names are wider than half of a narrow figure: each gets the room outside of it too.
    const qreal more = millimeters(4);
    caption(behind ? tr("Left") : tr("Right"), half.adjusted(-more, 0, 0, 0));
    caption(behind ? tr("Right") : tr("Left"),
            half.translated(target.width() / 2, 0).adjusted(0, 0, more, 0));
}

void PageFlow::legend(const PageFigures& figures) {
    qreal x = column_;
    const qreal swatch = millimeters(3.6);
    for (const auto& [mark, text] : figures.legend) {
        const PageText words({ink(text)}, small, right_ - column_);
        const qreal wide = words.layout()->lineAt(0).naturalTextWidth();
        if (x + swatch + 50 + wide > right_) {
            x = column_;
            y_ += words.lineHeight() + 30;
        }
        pages_.back().emplace_back(PageSwatch{
            QRectF(x, y_ + (words.lineHeight() - millimeters(3)) / 2, swatch, millimeters(3)), mark});
        whole(words, {x + swatch + 50, y_});
        x += swatch + 50 + wide + millimeters(2.5);
    }
    y_ += PageText({ink(QStringLiteral("x"))}, small, 1000).lineHeight();
}

void PageFlow::plan() {
    const QString text = content_.plan.trimmed();
    paragraphs(tr("Plan"), {text.isEmpty() ? quiet(tr("No plan written.")) : ink(text)});
}

void PageFlow::addenda() {
    for (const PageAddendum& each : content_.addenda)
        paragraphs(tr("Addendum"),
                   {ink(each.text + QStringLiteral(" ")), quiet(each.by + QStringLiteral(", ") + each.at)});
}

void PageFlow::signature() {
    if (content_.signature) {
        paragraphs(tr("Signature"),
                   {ink(tr("Signed by %1, %2").arg(content_.signature->by, content_.signature->at))});
        return;
    }
    const qreal height = millimeters(14);
    if (height > room()) newPage();
    rule(y_, hairline, pageTheme().line);
    const PageText head({ink(tr("Signature"), QFont::Bold)}, body, column_ - left_);
    const qreal line = y_ + height - 60;
    whole(head, {left_, line - head.height()});
    pages_.back().emplace_back(
        PageRule{{column_, line, column_ + millimeters(70), line}, 14, pageTheme().ink});
    const PageText words({quiet(tr("name, date, time"))}, small, millimeters(40));
    whole(words, {column_ + millimeters(74), line - words.height()});
    y_ += height + pad;
}

void PageFlow::feet() {
    const PageIdentity& who = content_.identity;
    QString patient = who.name;
    patient += (patient.isEmpty() || who.record.isEmpty() ? QString() : QStringLiteral(" · ")) + who.record;
    const qreal width = right_ - left_;
    const std::size_t count = pages_.size();
    for (std::size_t i = 0; i < count; ++i) {
        const auto add = [&](const PageText& text, const QPointF& at) {
            for (int line = 0; line < text.lines(); ++line)
                pages_[i].emplace_back(
                    PageLine{text.layout(), line, at + QPointF(0, line * text.lineHeight())});
        };
        qreal y = bottom_ + millimeters(2);
        pages_[i].emplace_back(PageRule{{left_, y, right_, y}, hairline, pageTheme().line});
        y += 60;
        add(*note_, {left_, y});
        y += note_->height();
        add(PageText({ink(patient)}, small, width * 0.75), {left_, y});
        add(PageText({ink(tr("page %1 of %2").arg(i + 1).arg(count))}, small, width * 0.25, Qt::AlignRight),
            {left_ + width * 0.75, y});
    }
}

} // namespace rhizograph::app
