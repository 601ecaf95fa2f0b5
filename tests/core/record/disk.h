#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <map>
#include <mutex>
#include <random>
#include <string>
#include <vector>

namespace rhizograph::testing {

/// Stands between SQLite and the real disk of this process: every database opened while it lives goes through
/// it. It knows what has reached the platter (was synchronized) and what a power cut could still take away,
/// and it can refuse to write.
class WatchedDisk {
public:
    /// Asked before each write, synchronization or read; may look at the disk and cut the power. What a
    /// write, a synchronization or a truncation yields instead of being done: an SQLite code, or 0 to do it.
    using Fault = std::function<int(const std::string& file, std::size_t bytes)>;

    explicit WatchedDisk(std::filesystem::path folder);
    ~WatchedDisk();
    WatchedDisk(const WatchedDisk&) = delete;
    WatchedDisk& operator=(const WatchedDisk&) = delete;

    void setWriteFault(Fault fault);
    void setSyncFault(Fault fault);
    void setReadFault(Fault fault);

    /// Writes into `folder` the files as a power cut right now could leave them: what was synchronized, and
    /// of the rest any part, in any order, the last piece perhaps torn.
    void cutPower(const std::filesystem::path& folder, std::mt19937& random);
    /// Synchronizations so far.
    [[nodiscard]] std::int64_t syncs() const;
    /// Writes since the last synchronization of their file, all files together.
    [[nodiscard]] std::size_t pending() const;

    // For the layer itself.
    [[nodiscard]] bool watches(const std::filesystem::path& file) const {
        return file.parent_path() == folder_;
    }
    int mayWrite(const std::string& file, std::size_t bytes);
    int maySync(const std::string& file);
    int mayRead(const std::string& file, std::size_t bytes);
    void opened(const std::string& file);
    void wrote(const std::string& file, const void* data, std::size_t bytes, std::int64_t at);
    void truncated(const std::string& file, std::int64_t size);
    void synced(const std::string& file);
    void removed(const std::string& file);

private:
    /// A write, or a truncation when `bytes` is empty.
    struct Change {
        std::string bytes;
        std::size_t at = 0;
    };
    struct Image {
        std::string safe;
        std::vector<Change> unsafe;
    };
    int ask(const Fault& fault, const std::string& file, std::size_t bytes);
    static void apply(std::string& content, const Change& change);

    std::filesystem::path folder_;
    mutable std::mutex mutex_;
    std::map<std::string, Image> images_;
    Fault writeFault_;
    Fault syncFault_;
    Fault readFault_;
    std::int64_t syncs_ = 0;
};

} // namespace rhizograph::testing
