package warmshelf.frost.garden;

import java.time.LocalDate;

/** A correction that no longer holds, with who ended it and when. */
public record EndedCorrection(FrostCorrection correction, String endedBy, LocalDate endedOn) {}
