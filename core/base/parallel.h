#pragma once

#include <cstddef>
#include <future>

namespace rhizograph {

/// Calls f(0) … f(count - 1), half of them on a second thread. The calls must not touch what another one
/// writes. What a call throws is thrown here, after both threads have stopped.
template <class F> void inTwoThreads(std::size_t count, F f) {
    const auto every = [&](std::size_t first) {
        for (std::size_t i = first; i < count; i += 2)
            f(i);
    };
    auto odd = std::async(std::launch::async, every, std::size_t{1});
    every(0);
    odd.get();
}

} // namespace rhizograph
