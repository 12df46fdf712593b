package warmshelf.archive;

/**
 * What a file holds, as people count it.
 *
 * @param photos pictures that were not taken out
 */
record ArchiveTally(long members, long lots, long sowings, long entries, long stays, long photos) {
    static ArchiveTally of(Manifest manifest, long photos) {
        return new ArchiveTally(
                manifest.rowsOf("member"),
                manifest.rowsOf("lot"),
                manifest.rowsOf("sowing"),
                manifest.rowsOf("entry"),
                manifest.rowsOf("stay"),
                photos);
    }
}
