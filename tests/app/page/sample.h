#pragma once

#include "exchange/examfile.h"
#include "page/pagedocument.h"
#include "support/process.h"

#include <QTemporaryDir>
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

inline std::shared_ptr<const FigureArt> figures() {
    auto art = FigureArt::load(std::filesystem::path(RHIZOGRAPH_RESOURCES) / "figures");
    if (!art) throw std::runtime_error(art.problems().front().text());
    return std::make_shared<const FigureArt>(std::move(*art));
}

inline Exam casesExam(const std::string& name) {
    auto exam =
        readExamFile(std::filesystem::path(RHIZOGRAPH_TEST_DATA) / "cases" / name, knowledge().catalogue());
    if (!exam) throw std::runtime_error(exam.problems().front().text());
    return std::move(*exam);
}

/// An examination as the program writes it, of an invented patient.
inline PageContent contentOf(const std::string& file) {
    const Exam exam = casesExam(file);
    const Narrative narrative = narrate(exam, assess(exam, knowledge()), knowledge());
    PageContent content;
    content.identity = {"Hillside Clinic", "1 Example Road",         "Quillon Fernwhistle",
                        "52 y, man",       "Record 00417 · visit 4", "24 November 2026"};
    content.sections = pageSections(narrative);
    content.figures = pageFigures(knowledge().catalogue(), *figures(), exam);
    content.plan = "Review in two weeks.";
    content.cautions = QString::fromStdString(narrative.cautions);
    return content;
}

/// A PDF file of the document in a folder of its own.
class PdfFile {
public:
    explicit PdfFile(const PageDocument& document) : path_(folder_.filePath("page.pdf").toStdString()) {
        const Outcome written = writePdf(document, QString::fromStdString(path_));
        if (!written) throw std::runtime_error(written.problems().front().text());
    }
    [[nodiscard]] const std::string& path() const { return path_; }

    /// What a program of the PDF tools says about the file.
    [[nodiscard]] std::string tool(const std::string& program, const std::vector<std::string>& before = {},
                                   const std::vector<std::string>& after = {}) const {
        std::vector<std::string> command{"/usr/bin/" + program};
        command.insert(command.end(), before.begin(), before.end());
        command.push_back(path_);
        command.insert(command.end(), after.begin(), after.end());
        const auto result = rhizograph::testing::runProcess(command);
        if (result.code != 0) throw std::runtime_error(program + ": " + result.err);
        return result.out;
    }
    /// The words of the file in reading order, lines joined.
    [[nodiscard]] QString words() const {
        return QString::fromStdString(tool("pdftotext", {"-enc", "UTF-8"}, {"-"})).simplified();
    }

private:
    QTemporaryDir folder_;
    std::string path_;
};

} // namespace rhizograph::app
