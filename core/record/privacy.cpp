#include "record/privacy.h"

#include <sys/prctl.h>
#include <sys/resource.h>

namespace rhizograph {

bool forbidCrashImages() {
    const rlimit none{0, 0};
    // The limit does not hold where the system pipes crash images to a program; not being dumpable does.
    const bool limited = ::setrlimit(RLIMIT_CORE, &none) == 0;
#ifdef __SANITIZE_ADDRESS__
    return limited; // the leak checker looks at its own process from outside
#else
    return ::prctl(PR_SET_DUMPABLE, 0) == 0 && limited;
#endif
}

} // namespace rhizograph
