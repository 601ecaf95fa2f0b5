#pragma once

namespace rhizograph {

/// From now on this process leaves no image of its memory behind when it crashes: identities are in it. For
/// every program that signs in, first thing. False when the system does not allow it.
bool forbidCrashImages();

} // namespace rhizograph
