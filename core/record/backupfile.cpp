#include "record/backupfile.h"

#include "record/failure.h"
#include "record/stream.h"

#include <fmt/format.h>
#include <limits>

namespace rhizograph {
namespace {

namespace fs = std::filesystem;

constexpr std::string_view magic = "RHZBACKUP1\n";
constexpr std::size_t longestHeader = 4U << 20U;
constexpr std::uint64_t backupPurpose = 3; // of the keys made from the data key; 1 and 2 are Keys' own

std::string contextOf(const std::string& packedHeader) {
    return Packer{}.text("backup").text(packedHeader).packed();
}

/// Waiting for a pipe or reading a folder would yield nothing.
const fs::path& regular(const fs::path& file) {
    std::error_code error;
    if (!fs::exists(file, error)) refuse(fmt::format("There is no file {}.", file.string()));
    if (!fs::is_regular_file(file, error)) refuse(fmt::format("{} is not a file.", file.string()));
    return file;
}

std::string lengthOf(const std::string& packed) {
    return Packer{}.number(static_cast<std::int64_t>(packed.size())).packed();
}

} // namespace

std::string BackupHeader::packed() const {
    Packer out;
    out.text(clinic).text(clinicName).text(madeAt).number(schema);
    out.number(static_cast<std::int64_t>(openers.size()));
    for (const Opener& opener : openers)
        out.text(opener.user)
            .text(opener.name)
            .bytes(opener.slot.derivation.salt)
            .number(static_cast<std::int64_t>(opener.slot.derivation.operations))
            .number(static_cast<std::int64_t>(opener.slot.derivation.memoryBytes))
            .bytes(opener.slot.wrapped);
    return out.packed();
}

BackupHeader BackupHeader::from(std::string_view packed) {
    Unpacker in{packed};
    BackupHeader header;
    header.clinic = in.text();
    header.clinicName = in.text();
    header.madeAt = in.text();
    const std::int64_t schema = in.number();
    if (schema < 1 || schema > std::numeric_limits<int>::max()) reportDamage("The backup states no schema.");
    header.schema = static_cast<int>(schema);
    header.openers.resize(in.count());
    for (Opener& opener : header.openers) {
        opener.user = in.text();
        opener.name = in.text();
        opener.slot.derivation.salt = bytesOf(in.text());
        opener.slot.derivation.operations = static_cast<std::uint64_t>(in.number());
        opener.slot.derivation.memoryBytes = static_cast<std::uint64_t>(in.number());
        opener.slot.wrapped = bytesOf(in.text());
    }
    if (!in.atEnd()) reportDamage("The beginning of the backup is longer than it should be.");
    return header;
}

BackupInfo BackupHeader::info() const {
    BackupInfo info{clinic, clinicName, madeAt, schema, {}};
    for (const Opener& opener : openers)
        info.users.push_back(opener.name);
    return info;
}

Bytes sealFile(const fs::path& plain, const fs::path& sealed, const BackupHeader& header,
               const SecretKey& dataKey) {
    const std::string packed = header.packed();
    const OpenFile in = OpenFile::forReading(plain);
    const OpenFile out = OpenFile::created(sealed);
    StreamSealer stream{dataKey.derived(backupPurpose), contextOf(packed)};
    out.write(std::string{magic} + lengthOf(packed) + packed + stream.beginning());
    Digest digest;
    // One piece ahead, to know which is the last.
    std::string piece = in.read(StreamSealer::pieceSize);
    for (bool last = false; !last;) {
        std::string next = in.read(StreamSealer::pieceSize);
        last = next.empty();
        digest.add(piece);
        out.write(stream.sealed(piece, last));
        piece = std::move(next);
    }
    out.sync();
    return digest.finished();
}

BackupReader::BackupReader(const fs::path& file) : file_(file), in_(OpenFile::forReading(regular(file))) {
    if (in_.read(magic.size()) != magic)
        refuse(fmt::format("{} is not a backup of this program.", file.string()));
    try {
        const std::string length = in_.read(sizeof(std::int64_t));
        const std::int64_t size = Unpacker{length}.number();
        if (size < 0 || size > static_cast<std::int64_t>(longestHeader))
            reportDamage("The backup has no proper beginning.");
        packed_ = in_.read(static_cast<std::size_t>(size));
        if (packed_.size() != static_cast<std::size_t>(size)) reportDamage("The backup is cut off.");
        header_ = BackupHeader::from(packed_);
    } catch (const RecordError&) {
        throw RecordError(
            Failure::damaged,
            fmt::format("The backup {} is damaged at its beginning. Use another one.", file.string()));
    }
}

void BackupReader::unseal(const SecretKey& dataKey, const std::function<void(std::string_view)>& take) {
    try {
        StreamOpener stream{dataKey.derived(backupPurpose), in_.read(StreamSealer::beginningSize),
                            contextOf(packed_)};
        for (bool last = false; !last;)
            take(stream.opened(in_.read(StreamSealer::pieceSize + StreamSealer::growth), last));
        if (!in_.read(1).empty()) reportDamage("Something stands behind the end.");
    } catch (const RecordError& error) {
        if (error.kind() != Failure::damaged) throw;
        throw RecordError(Failure::damaged,
                          fmt::format("The backup {} is damaged or was changed, so it is not used. Nothing "
                                      "was changed. Use another backup.",
                                      file_.string()));
    }
}

} // namespace rhizograph
