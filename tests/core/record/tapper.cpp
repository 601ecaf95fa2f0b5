// Taps without pause until it is killed: tapper CLINIC VISIT PASSPHRASE FIRST
// Says "N\n" on standard output once tap N is acknowledged as saved, by a plain write(2) that no buffer
// delays. Every seventh tap is five findings in one change.
#include "record/writer.h"

#include <cstdio>
#include <cstdlib>
#include <string>
#include <unistd.h>

using namespace rhizograph;

namespace {

std::vector<FindingChange> tap(int number) {
    const auto finding = [&](const char* item) {
        return FindingChange{{ItemId{item}, Side::left}, Finding{Value::number(number), false, ""}};
    };
    if (number % 7 != 0) return {finding("single")};
    return {finding("first"), finding("second"), finding("third"), finding("fourth"), finding("fifth")};
}

void say(const std::string& line) {
    if (::write(STDOUT_FILENO, line.data(), line.size()) != static_cast<ssize_t>(line.size())) std::_Exit(3);
}

[[noreturn]] void giveUp(const Problems& problems) {
    for (const Problem& problem : problems)
        std::fprintf(stderr, "%s\n", problem.text().c_str());
    std::_Exit(4);
}

} // namespace

int main(int argc, char* argv[]) {
    if (argc != 5) return 2;
    ClinicOptions options;
    options.cost = KeyCost::cheapest();
    options.busyMilliseconds = 30000;
    auto store = openClinic(argv[1], options);
    if (!store) giveUp(store.problems());
    const auto users = (*store)->users();
    if (!users) giveUp(users.problems());
    if (const Outcome in = (*store)->signIn(users->front().id, argv[3]); !in) giveUp(in.problems());
    auto own = (*store)->duplicate();
    if (!own) giveUp(own.problems());
    const int first = std::atoi(argv[4]);
    RecordWriter writer{std::move(*own), [&](const RecordWriter::Report& report) {
                            if (!report.outcome) giveUp(report.outcome.problems());
                            say(std::to_string(first + static_cast<int>(report.ticket) - 1) + "\n");
                        }};
    for (int number = first;; ++number) {
        writer.write({VisitId{argv[2]}, tap(number)});
        if (writer.waiting() > 3 && !writer.flush(std::chrono::seconds{10})) return 5;
    }
}
