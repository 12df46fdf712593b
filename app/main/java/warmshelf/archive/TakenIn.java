package warmshelf.archive;

/**
 * A group that was taken in from a file.
 *
 * @param group its name
 * @param sha256 of the whole file, in hexadecimal digits
 */
record TakenIn(String group, ArchiveTally tally, String sha256) {}
