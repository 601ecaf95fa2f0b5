#include "record/sqliteproblem.h"

#include <fmt/format.h>
#include <sqlite3.h>

namespace rhizograph::sqlite {
namespace {

RecordError readOnlyError(int code) {
    if (code == SQLITE_READONLY_DBMOVED)
        return {Failure::device,
                "The clinic file was moved, renamed or replaced while it was open. Nothing more can be "
                "saved to it. Save a copy of the unsaved changes, then open the clinic again."};
    if (code == SQLITE_READONLY_DIRECTORY)
        return {Failure::readOnly,
                "The folder of the clinic file cannot be written, so nothing can be saved. Allow writing "
                "to the folder and try again, or save a copy elsewhere."};
    return {Failure::readOnly,
            "The clinic file is read-only, so nothing can be saved. Allow writing to the file and its "
            "folder and try again, or save a copy elsewhere."};
}

RecordError deviceError(int code) {
    switch (code) {
    case SQLITE_IOERR_NOMEM:
        return {Failure::device, "The computer is out of memory. Close other programs and try again."};
    case SQLITE_IOERR_READ:
    case SQLITE_IOERR_SHORT_READ:
    case SQLITE_IOERR_CORRUPTFS:
        return {Failure::device,
                "The disk cannot read the clinic file. Check the disk or the network connection and try "
                "again; if it stays so, restore the latest backup to another disk."};
    case SQLITE_IOERR_WRITE:
    case SQLITE_IOERR_FSYNC:
    case SQLITE_IOERR_DIR_FSYNC:
    case SQLITE_IOERR_TRUNCATE:
        return {Failure::device,
                "The disk did not accept the last change, so it is not saved. Check the disk or the network "
                "connection and try again, or save a copy elsewhere."};
    default:
        break;
    }
    return {Failure::device,
            fmt::format("The disk or the network connection of the clinic file reports an error (code {}). "
                        "Check it and try again, or save a copy elsewhere.",
                        code)};
}

} // namespace

RecordError errorFor(int code) {
    switch (code & 0xff) {
    case SQLITE_FULL:
        return {Failure::full,
                "The disk is full, so the last change is not saved. Free some space and try again, or save a "
                "copy elsewhere."};
    case SQLITE_READONLY:
        return readOnlyError(code);
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
    case SQLITE_PROTOCOL:
        return {Failure::busy,
                "Another program is writing to the clinic file and does not let go. Wait a moment and try "
                "again."};
    case SQLITE_CORRUPT:
        return {Failure::damaged,
                "The clinic file is damaged. Stop writing to it and restore the latest backup."};
    case SQLITE_NOTADB:
        return {Failure::foreign, "This is not a clinic file, or it is damaged from its first byte on."};
    case SQLITE_IOERR:
        return deviceError(code);
    case SQLITE_CANTOPEN:
        return {Failure::device,
                "The clinic file cannot be opened. Check that it is there, that you may read and write it, "
                "and that its folder can be written."};
    case SQLITE_PERM:
    case SQLITE_AUTH:
        return {Failure::readOnly, "This computer account may not use the clinic file."};
    case SQLITE_NOMEM:
        return {Failure::device, "The computer is out of memory. Close other programs and try again."};
    case SQLITE_TOOBIG:
        return {Failure::refused, "The text is too long to be saved."};
    case SQLITE_CONSTRAINT:
    case SQLITE_MISMATCH:
        return {Failure::damaged,
                fmt::format("The clinic file does not fit together (code {}). Verify the record; if it "
                            "reports damage, restore the latest backup.",
                            code)};
    default:
        break;
    }
    return {Failure::device,
            fmt::format("The database reports an unexpected error (code {}). Nothing of the last change is "
                        "saved. Try again, or save a copy elsewhere.",
                        code)};
}

} // namespace rhizograph::sqlite
