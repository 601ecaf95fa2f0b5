#pragma once

#include "exchange/examfile.h"
#include "shell/visitsession.h"

#include <QApplication>
#include <QMouseEvent>
#include <QWidget>
#include <stdexcept>

namespace rhizograph::app {

inline const Knowledge& knowledge() {
    static const Knowledge loaded = [] {
        auto result = Knowledge::load(std::filesystem::path(RHIZOGRAPH_RESOURCES) / "knowledge");
        if (!result) throw std::runtime_error(result.problems().front().text());
        return std::move(*result);
    }();
    return loaded;
}

inline Exam casesExam(const std::string& name) {
    auto exam =
        readExamFile(std::filesystem::path(RHIZOGRAPH_TEST_DATA) / "cases" / name, knowledge().catalogue());
    if (!exam) throw std::runtime_error(exam.problems().front().text());
    return std::move(*exam);
}

/// A sheet that leaves several sites open: one weak movement and nothing else.
inline Exam oneWeakMovement() {
    Exam exam;
    exam.set({ItemId{"strength.great_toe_extension"}, Side::left}, Finding{Value::token("4"), false, {}});
    return exam;
}

inline VisitSession::Start startWith(Exam exam) {
    VisitSession::Start start;
    start.exam = std::move(exam);
    start.userName = QStringLiteral("Clinician Two");
    return start;
}

inline void press(QWidget& widget, const QPointF& at) {
    for (const QEvent::Type type : {QEvent::MouseButtonPress, QEvent::MouseButtonRelease}) {
        const Qt::MouseButtons held = type == QEvent::MouseButtonPress ? Qt::LeftButton : Qt::NoButton;
        QMouseEvent event(type, at, widget.mapToGlobal(at), Qt::LeftButton, held, Qt::NoModifier);
        QApplication::sendEvent(&widget, &event);
    }
}

} // namespace rhizograph::app
