package warmshelf.timeline;

import warmshelf.crop.Crop.DaysToMaturity;

/**
 * What comes of a sowing where it is one of the quickest kinds of its crop.
 *
 * @param days of theirs to the first harvest
 * @param harvest of theirs
 * @param alone whether the usual kinds come to nothing
 */
public record QuickestKinds(DaysToMaturity days, HarvestOutlook harvest, boolean alone) {}
