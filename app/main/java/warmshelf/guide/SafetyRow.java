package warmshelf.guide;

/**
 * One row of the table of hazards.
 *
 * @param deferTo whom to believe before us
 */
record SafetyRow(String hazard, String deferTo, Source source) {}
