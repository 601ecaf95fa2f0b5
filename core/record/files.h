#pragma once

#include <filesystem>
#include <string>
#include <string_view>

namespace rhizograph {

/// An open file; closed at the end of its life. Failures are RecordErrors worded for people.
class OpenFile {
public:
    OpenFile(const std::filesystem::path& file, int flags);
    ~OpenFile();
    OpenFile(const OpenFile&) = delete;
    OpenFile& operator=(const OpenFile&) = delete;
    /// A new file that only its owner may read (0600).
    static OpenFile created(const std::filesystem::path& file);
    static OpenFile forReading(const std::filesystem::path& file);

    void write(std::string_view bytes) const;
    /// As many bytes as asked for, fewer only at the end of the file.
    [[nodiscard]] std::string read(std::size_t most) const;
    /// Waits until everything written is on disk.
    void sync() const;

private:
    std::filesystem::path file_;
    int number_;
};

/// Creates an empty file only its owner may read (0600). Throws RecordError when it exists or cannot be made.
void createPrivateFile(const std::filesystem::path& file);

/// Writes a file 0600, complete and on disk, or leaves what was there. Throws RecordError.
void writePrivateFile(const std::filesystem::path& file, const std::string& bytes);

/// Puts `from` in the place of `to` at one stroke and makes that durable. Throws RecordError.
void replaceFile(const std::filesystem::path& from, const std::filesystem::path& to);

/// Makes a folder only its owner may enter (0700), unless it is there. Throws RecordError.
void makePrivateFolder(const std::filesystem::path& folder);

/// Gives a finished file its name, unless something has that name already, and makes that durable.
void placeNewFile(const std::filesystem::path& from, const std::filesystem::path& to);

/// Makes a change of names in the folder of `file` durable.
void syncFolderOf(const std::filesystem::path& file);

/// Removes a database with the files SQLite keeps beside it; what is not there is no error.
void removeDatabaseFiles(const std::filesystem::path& file);

} // namespace rhizograph
