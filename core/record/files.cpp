#include "record/files.h"

#include "record/failure.h"
#include "record/seal.h"

#include <cerrno>
#include <fcntl.h>
#include <fmt/format.h>
#include <system_error>
#include <unistd.h>

namespace rhizograph {
namespace {

namespace fs = std::filesystem;

[[noreturn]] void failWith(int error, const fs::path& file) {
    switch (error) {
    case EEXIST:
        refuse(fmt::format("There is already a file {}. Choose another name.", file.string()));
    case ENOENT:
        refuse(fmt::format("There is no folder {}.", file.parent_path().string()));
    case ENOSPC:
    case EDQUOT:
    case EFBIG:
        throw RecordError(Failure::full,
                          fmt::format("The disk of {} is full. Free some space or choose another "
                                      "place.",
                                      file.string()));
    case EACCES:
    case EPERM:
    case EROFS:
        throw RecordError(Failure::readOnly,
                          fmt::format("{} cannot be written. Allow writing there or choose "
                                      "another place.",
                                      file.string()));
    default:
        break;
    }
    throw RecordError(Failure::device, fmt::format("{} cannot be written: {}.", file.string(),
                                                   std::generic_category().message(error)));
}

/// A file descriptor that is closed at the end of its life.
class Descriptor {
public:
    Descriptor(const fs::path& file, int flags)
        : file_(file), number_(::open(file.c_str(), flags | O_CLOEXEC, 0600)) {
        if (number_ < 0) failWith(errno, file);
    }
    ~Descriptor() { ::close(number_); }
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;

    void write(const std::string& bytes) const {
        for (std::size_t done = 0; done < bytes.size();) {
            const ssize_t count = ::write(number_, bytes.data() + done, bytes.size() - done);
            if (count < 0 && errno == EINTR) continue;
            if (count < 0) failWith(errno, file_);
            done += static_cast<std::size_t>(count);
        }
    }
    void sync() const {
        if (::fsync(number_) != 0) failWith(errno, file_);
    }

private:
    fs::path file_;
    int number_;
};

void syncFolderOf(const fs::path& file) {
    const fs::path folder = file.parent_path();
    Descriptor{folder.empty() ? fs::path{"."} : folder, O_RDONLY | O_DIRECTORY}.sync();
}

} // namespace

void createPrivateFile(const fs::path& file) {
    const Descriptor created{file, O_CREAT | O_EXCL | O_WRONLY};
}

void replaceFile(const fs::path& from, const fs::path& to) {
    if (::rename(from.c_str(), to.c_str()) != 0) failWith(errno, to);
    syncFolderOf(to);
}

void writePrivateFile(const fs::path& file, const std::string& bytes) {
    fs::path partial = file;
    partial += fmt::format(".{}.part", randomId().substr(0, 8));
    try {
        {
            const Descriptor out{partial, O_CREAT | O_EXCL | O_WRONLY};
            out.write(bytes);
            out.sync();
        }
        replaceFile(partial, file);
    } catch (const RecordError&) {
        ::unlink(partial.c_str());
        throw;
    }
}

void removeDatabaseFiles(const fs::path& file) {
    for (const char* suffix : {"", "-wal", "-shm", "-journal"}) {
        fs::path part = file;
        part += suffix;
        ::unlink(part.c_str());
    }
}

} // namespace rhizograph
