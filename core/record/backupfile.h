#pragma once

#include "record/backup.h"
#include "record/files.h"
#include "record/seal.h"
#include "record/slot.h"

#include <filesystem>
#include <functional>
#include <string>
#include <vector>

namespace rhizograph {

/// The beginning of a backup file: readable, and vouched for by the sealed pieces after it.
struct BackupHeader {
    struct Opener {
        std::string user; ///< id
        std::string name;
        KeySlot slot;
    };
    std::string clinic;
    std::string clinicName;
    std::string madeAt;
    int schema = 0;
    std::vector<Opener> openers;

    [[nodiscard]] std::string packed() const;
    static BackupHeader from(std::string_view packed);
    [[nodiscard]] BackupInfo info() const;
};

/// Seals the file `plain` into the new file `sealed`, 0600 and on disk; a digest of what was sealed.
Bytes sealFile(const std::filesystem::path& plain, const std::filesystem::path& sealed,
               const BackupHeader& header, const SecretKey& dataKey);

/// A backup file being read. Throws RecordError: refused when it is none, damaged when it is not whole.
class BackupReader {
public:
    explicit BackupReader(const std::filesystem::path& file);
    [[nodiscard]] const BackupHeader& header() const { return header_; }
    /// Unseals all of it, once, handing over the content piece by piece.
    void unseal(const SecretKey& dataKey, const std::function<void(std::string_view)>& take);

private:
    std::filesystem::path file_;
    OpenFile in_;
    std::string packed_;
    BackupHeader header_;
};

} // namespace rhizograph
