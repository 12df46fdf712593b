package warmshelf.crop;

import java.time.OffsetDateTime;

/**
 * What a coordinator wrote of a crop: over the reference row of that id, or of a crop that the reference does not have.
 *
 * @param crop the figures, each with the coordinator's source
 * @param emergence how its seed answers to warmth
 * @param kept false: taken back. The reference counts again; what it does not have is found, but no longer offered
 * @param version grows with each change, from 1
 * @param by the name of who wrote it
 * @param at when
 */
public record OwnCrop(Crop crop, OwnEmergence emergence, boolean kept, int version, String by, OffsetDateTime at) {}
