package warmshelf.archive;

/**
 * A file that was made.
 *
 * @param bytes its size
 * @param sha256 of the whole file, in hexadecimal digits
 */
record ArchiveMade(ArchiveTally tally, long bytes, String sha256) {}
