// Makes a clinic of invented patients to measure with: makeclinic FILE PATIENTS VISITS [FINDINGS]
#include "invented.h"

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <exception>

int main(int argc, char* argv[]) {
    if (argc < 4 || argc > 5) {
        std::fputs("usage: makeclinic FILE PATIENTS VISITS [FINDINGS]\n", stderr);
        return 2;
    }
    const rhizograph::bench::Size size{std::atoi(argv[2]), std::atoi(argv[3]),
                                       argc == 5 ? std::atoi(argv[4]) : 40};
    if (size.patients < 2 || size.visits < rhizograph::bench::longHistory || size.findings < 1 ||
        size.findings > rhizograph::bench::mostFindings) {
        std::fputs("makeclinic: at least 2 patients and 40 visits, 1 to 72 findings a visit\n", stderr);
        return 2;
    }
    const auto start = std::chrono::steady_clock::now();
    const auto seconds = [&] {
        return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    };
    try {
        rhizograph::bench::inventClinic(argv[1], size, [&](int visits) {
            std::printf("%d visits, %.0f s\n", visits, seconds());
            std::fflush(stdout);
        });
    } catch (const std::exception& error) {
        std::fprintf(stderr, "makeclinic: %s\n", error.what());
        return 1;
    }
    std::printf("%d patients, %d visits, %d findings a visit, %.1f s\n", size.patients, size.visits,
                size.findings, seconds());
    return 0;
}
