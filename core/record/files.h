#pragma once

#include <filesystem>
#include <string>

namespace rhizograph {

/// Creates an empty file only its owner may read (0600). Throws RecordError when it exists or cannot be made.
void createPrivateFile(const std::filesystem::path& file);

/// Writes a file 0600, complete and on disk, or leaves what was there. Throws RecordError.
void writePrivateFile(const std::filesystem::path& file, const std::string& bytes);

/// Puts `from` in the place of `to` at one stroke and makes that durable. Throws RecordError.
void replaceFile(const std::filesystem::path& from, const std::filesystem::path& to);

/// Removes a database with the files SQLite keeps beside it; what is not there is no error.
void removeDatabaseFiles(const std::filesystem::path& file);

} // namespace rhizograph
