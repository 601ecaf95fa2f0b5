// Replaced by the room's first sources.
