#include "record/files.h"

#include "record/failure.h"
#include "record/seal.h"

#include <cerrno>
#include <cstdio>
#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
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

} // namespace

OpenFile::OpenFile(const fs::path& file, int flags)
    : file_(file), number_(::open(file.c_str(), flags | O_CLOEXEC, 0600)) {
    if (number_ < 0) failWith(errno, file);
}

OpenFile::~OpenFile() {
    ::close(number_);
}

OpenFile OpenFile::created(const fs::path& file) {
    return OpenFile{file, O_CREAT | O_EXCL | O_WRONLY};
}

OpenFile OpenFile::forReading(const fs::path& file) {
    return OpenFile{file, O_RDONLY};
}

void OpenFile::write(std::string_view bytes) const {
    for (std::size_t done = 0; done < bytes.size();) {
        const ssize_t count = ::write(number_, bytes.data() + done, bytes.size() - done);
        if (count < 0 && errno == EINTR) continue;
        if (count < 0) failWith(errno, file_);
        done += static_cast<std::size_t>(count);
    }
}

std::string OpenFile::read(std::size_t most) const {
    std::string out(most, '\0');
    std::size_t done = 0;
    while (done < most) {
        const ssize_t count = ::read(number_, out.data() + done, most - done);
        if (count < 0 && errno == EINTR) continue;
        if (count < 0)
            throw RecordError(Failure::device, fmt::format("{} cannot be read: {}.", file_.string(),
                                                           std::generic_category().message(errno)));
        if (count == 0) break;
        done += static_cast<std::size_t>(count);
    }
    out.resize(done);
    return out;
}

void OpenFile::sync() const {
    if (::fsync(number_) != 0) failWith(errno, file_);
}

void syncFolderOf(const fs::path& file) {
    const fs::path folder = file.parent_path();
    OpenFile{folder.empty() ? fs::path{"."} : folder, O_RDONLY | O_DIRECTORY}.sync();
}

void createPrivateFile(const fs::path& file) {
    (void)OpenFile::created(file);
}

void replaceFile(const fs::path& from, const fs::path& to) {
    if (::rename(from.c_str(), to.c_str()) != 0) failWith(errno, to);
    syncFolderOf(to);
}

void makePrivateFolder(const fs::path& folder) {
    if (::mkdir(folder.c_str(), 0700) != 0 && errno != EEXIST) failWith(errno, folder);
    if (!fs::is_directory(folder)) refuse(fmt::format("{} is not a folder.", folder.string()));
}

void placeNewFile(const fs::path& from, const fs::path& to) {
    // A hard link, unlike renaming, never takes the place of what somebody put there meanwhile.
    if (::link(from.c_str(), to.c_str()) == 0)
        ::unlink(from.c_str());
    else if (errno == EEXIST)
        failWith(EEXIST, to);
    else if (::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE) != 0)
        failWith(errno, to); // file systems without hard links
    syncFolderOf(to);
}

void writePrivateFile(const fs::path& file, const std::string& bytes) {
    fs::path partial = file;
    partial += fmt::format(".{}.part", randomId().substr(0, 8));
    try {
        {
            const OpenFile out = OpenFile::created(partial);
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
