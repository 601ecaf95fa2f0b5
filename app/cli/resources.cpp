#include "cli/resources.h"

#include <cstdlib>
#include <system_error>

namespace rhizograph::cli {

namespace fs = std::filesystem;

Result<fs::path> findResources() {
    std::error_code error;
    fs::path folder;
    if (const char* set = std::getenv("RHIZOGRAPH_RESOURCES"); set != nullptr && *set != '\0')
        folder = set;
    else
        folder =
            fs::read_symlink("/proc/self/exe", error).parent_path().parent_path() / "share" / "rhizograph";
    if (!fs::is_directory(folder / "knowledge", error))
        return Problem{folder.string(), "",
                       "holds no knowledge/; set RHIZOGRAPH_RESOURCES to the folder that does"};
    return folder;
}

} // namespace rhizograph::cli
