#include "disk.h"

#include <cstring>
#include <fstream>
#include <iterator>
#include <new>
#include <sqlite3.h>

namespace rhizograph::testing {
namespace {

/// SQLite's file with the real one in the same memory behind it.
struct WatchedFile {
    sqlite3_file base;
    WatchedDisk* disk; ///< null: a file without a name, not watched
    std::string* name;
    [[nodiscard]] sqlite3_file* real() { return reinterpret_cast<sqlite3_file*>(this + 1); }
};

WatchedFile* watched(sqlite3_file* file) {
    return reinterpret_cast<WatchedFile*>(file);
}
sqlite3_file* real(sqlite3_file* file) {
    return watched(file)->real();
}

int closeFile(sqlite3_file* file) {
    const int code = real(file)->pMethods != nullptr ? real(file)->pMethods->xClose(real(file)) : SQLITE_OK;
    delete watched(file)->name;
    watched(file)->name = nullptr;
    return code;
}
int readFile(sqlite3_file* file, void* into, int bytes, sqlite3_int64 at) {
    const WatchedFile& w = *watched(file);
    if (w.disk != nullptr)
        if (const int code = w.disk->mayRead(*w.name, static_cast<std::size_t>(bytes)); code != SQLITE_OK)
            return code;
    return real(file)->pMethods->xRead(real(file), into, bytes, at);
}
int writeFile(sqlite3_file* file, const void* data, int bytes, sqlite3_int64 at) {
    const WatchedFile& w = *watched(file);
    const auto size = static_cast<std::size_t>(bytes);
    if (w.disk != nullptr)
        if (const int code = w.disk->mayWrite(*w.name, size); code != SQLITE_OK) return code;
    const int code = real(file)->pMethods->xWrite(real(file), data, bytes, at);
    if (code == SQLITE_OK && w.disk != nullptr) w.disk->wrote(*w.name, data, size, at);
    return code;
}
int truncateFile(sqlite3_file* file, sqlite3_int64 size) {
    const WatchedFile& w = *watched(file);
    const int code = real(file)->pMethods->xTruncate(real(file), size);
    if (code == SQLITE_OK && w.disk != nullptr) w.disk->truncated(*w.name, size);
    return code;
}
int syncFile(sqlite3_file* file, int flags) {
    const WatchedFile& w = *watched(file);
    if (w.disk != nullptr)
        if (const int code = w.disk->maySync(*w.name); code != SQLITE_OK) return code;
    const int code = real(file)->pMethods->xSync(real(file), flags);
    if (code == SQLITE_OK && w.disk != nullptr) w.disk->synced(*w.name);
    return code;
}
int sizeOf(sqlite3_file* file, sqlite3_int64* size) {
    return real(file)->pMethods->xFileSize(real(file), size);
}
int lock(sqlite3_file* file, int kind) {
    return real(file)->pMethods->xLock(real(file), kind);
}
int unlock(sqlite3_file* file, int kind) {
    return real(file)->pMethods->xUnlock(real(file), kind);
}
int checkLock(sqlite3_file* file, int* held) {
    return real(file)->pMethods->xCheckReservedLock(real(file), held);
}
int control(sqlite3_file* file, int operation, void* argument) {
    return real(file)->pMethods->xFileControl(real(file), operation, argument);
}
int sectorSize(sqlite3_file* file) {
    return real(file)->pMethods->xSectorSize(real(file));
}
int characteristics(sqlite3_file*) {
    return 0; // promises nothing: not that small writes are whole, nor that writes keep their order
}
int mapShared(sqlite3_file* file, int page, int size, int extend, void volatile** out) {
    return real(file)->pMethods->xShmMap(real(file), page, size, extend, out);
}
int lockShared(sqlite3_file* file, int offset, int count, int flags) {
    return real(file)->pMethods->xShmLock(real(file), offset, count, flags);
}
void barrier(sqlite3_file* file) {
    real(file)->pMethods->xShmBarrier(real(file));
}
int unmapShared(sqlite3_file* file, int removeIt) {
    return real(file)->pMethods->xShmUnmap(real(file), removeIt);
}

const sqlite3_io_methods methods{
    2,          closeFile, readFile,    writeFile, truncateFile, syncFile,        sizeOf,
    lock,       unlock,    checkLock,   control,   sectorSize,   characteristics, mapShared,
    lockShared, barrier,   unmapShared, nullptr,   nullptr};

sqlite3_vfs* realSystem(sqlite3_vfs* system) {
    return sqlite3_vfs_find("unix") == system ? nullptr : sqlite3_vfs_find("unix");
}

int openFile(sqlite3_vfs* system, sqlite3_filename name, sqlite3_file* file, int flags, int* outFlags) {
    auto* w = watched(file);
    w->disk = static_cast<WatchedDisk*>(system->pAppData);
    w->name = new std::string(name != nullptr ? name : "");
    if (name == nullptr || !w->disk->watches(name)) w->disk = nullptr;
    // Before SQLite touches it: what stands on the disk now is safe.
    if (w->disk != nullptr) w->disk->opened(*w->name);
    const int code = realSystem(system)->xOpen(realSystem(system), name, w->real(), flags, outFlags);
    w->base.pMethods = code == SQLITE_OK ? &methods : nullptr;
    if (code != SQLITE_OK) delete w->name;
    return code;
}
int removeFile(sqlite3_vfs* system, const char* name, int sync) {
    const int code = realSystem(system)->xDelete(realSystem(system), name, sync);
    if (code == SQLITE_OK) static_cast<WatchedDisk*>(system->pAppData)->removed(name);
    return code;
}

sqlite3_vfs& watchedSystem() {
    static sqlite3_vfs system{};
    return system;
}

} // namespace

WatchedDisk::WatchedDisk(std::filesystem::path folder) : folder_(std::move(folder)) {
    sqlite3_initialize();
    sqlite3_vfs& system = watchedSystem();
    system = *sqlite3_vfs_find("unix");
    system.szOsFile += static_cast<int>(sizeof(WatchedFile));
    system.zName = "watched";
    system.pNext = nullptr;
    system.pAppData = this;
    system.xOpen = openFile;
    system.xDelete = removeFile;
    sqlite3_vfs_register(&system, 1);
}

WatchedDisk::~WatchedDisk() {
    sqlite3_vfs_unregister(&watchedSystem());
    sqlite3_vfs_register(sqlite3_vfs_find("unix"), 1);
}

void WatchedDisk::setWriteFault(Fault fault) {
    const std::scoped_lock held{mutex_};
    writeFault_ = std::move(fault);
}
void WatchedDisk::setSyncFault(Fault fault) {
    const std::scoped_lock held{mutex_};
    syncFault_ = std::move(fault);
}
void WatchedDisk::setReadFault(Fault fault) {
    const std::scoped_lock held{mutex_};
    readFault_ = std::move(fault);
}

/// Asked without the lock, so that a fault may look at the disk, or cut the power.
int WatchedDisk::ask(const Fault& fault, const std::string& file, std::size_t bytes) {
    Fault copy;
    {
        const std::scoped_lock held{mutex_};
        copy = fault;
    }
    return copy ? copy(file, bytes) : SQLITE_OK;
}

int WatchedDisk::mayWrite(const std::string& file, std::size_t bytes) {
    return ask(writeFault_, file, bytes);
}
int WatchedDisk::maySync(const std::string& file) {
    return ask(syncFault_, file, 0);
}
int WatchedDisk::mayRead(const std::string& file, std::size_t bytes) {
    return ask(readFault_, file, bytes);
}

void WatchedDisk::opened(const std::string& file) {
    const std::scoped_lock held{mutex_};
    if (images_.contains(file)) return;
    std::ifstream in(file, std::ios::binary);
    images_[file].safe = {std::istreambuf_iterator<char>(in), {}};
}
void WatchedDisk::wrote(const std::string& file, const void* data, std::size_t bytes, std::int64_t at) {
    const std::scoped_lock held{mutex_};
    images_[file].unsafe.push_back({{static_cast<const char*>(data), bytes}, static_cast<std::size_t>(at)});
}
void WatchedDisk::truncated(const std::string& file, std::int64_t size) {
    const std::scoped_lock held{mutex_};
    images_[file].unsafe.push_back({{}, static_cast<std::size_t>(size)});
}
void WatchedDisk::synced(const std::string& file) {
    const std::scoped_lock held{mutex_};
    Image& image = images_[file];
    for (const Change& change : image.unsafe)
        apply(image.safe, change);
    image.unsafe.clear();
    ++syncs_;
}
void WatchedDisk::removed(const std::string& file) {
    const std::scoped_lock held{mutex_};
    images_.erase(file);
}

std::int64_t WatchedDisk::syncs() const {
    const std::scoped_lock held{mutex_};
    return syncs_;
}
std::size_t WatchedDisk::pending() const {
    const std::scoped_lock held{mutex_};
    std::size_t count = 0;
    for (const auto& [file, image] : images_)
        count += image.unsafe.size();
    return count;
}

void WatchedDisk::apply(std::string& content, const Change& change) {
    if (change.bytes.empty()) {
        content.resize(change.at, '\0');
        return;
    }
    if (content.size() < change.at + change.bytes.size())
        content.resize(change.at + change.bytes.size(), '\0');
    content.replace(change.at, change.bytes.size(), change.bytes);
}

void WatchedDisk::cutPower(const std::filesystem::path& folder, std::mt19937& random) {
    const std::scoped_lock held{mutex_};
    for (const auto& [file, image] : images_) {
        std::string content = image.safe;
        const auto survival =
            random() % 101; // per cent: sometimes hardly anything got through, sometimes nearly all
        for (const Change& change : image.unsafe) {
            if (random() % 100 >= survival) continue;
            Change landed = change;
            if (random() % 8 == 0 && !landed.bytes.empty())
                landed.bytes.resize(1 + random() % landed.bytes.size()); // torn
            apply(content, landed);
        }
        std::ofstream out(folder / std::filesystem::path{file}.filename(), std::ios::binary);
        out << content;
    }
}

} // namespace rhizograph::testing
