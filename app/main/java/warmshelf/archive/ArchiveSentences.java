package warmshelf.archive;

import warmshelf.words.Sentences;

/** What is said of files with the whole group; the words stand in the room's file. */
interface ArchiveSentences {
    ArchiveSentences SAY = Sentences.of(ArchiveSentences.class);

    String noSuchFile(String file);

    String notZip(String file);

    String fileUnreadable(String file);

    String cutShort(String part);

    String partClimbs(String part);

    String partUnknown(String part);

    String partTwice(String part);

    String partMissing(String part);

    String tableMissing(String table);

    String tooManyParts(int most);

    String partTooLarge(String part);

    String allTooLarge(long gigabytes);

    String checksumsUnreadable();

    String checksumMissing(String part);

    String checksumWrong(String part);

    String manifestUnreadable();

    String formatUnknown();

    String formatNewer();

    String schemaNewer(String schema, String newest);

    String schemaUnknown(String schema);

    String schemaOlder(String schema, String there);

    String tableUnknown(String table);

    String rowRefused(String table, long row, String why);

    String noRow();

    String columnUnknown(String column);

    String columnMissing(String column);

    String valueUnreadable(String column);

    String rowsMiscounted(String table, long said, long found);

    String pictureMissing(String part);

    String pictureUnclaimed(String part);

    String noPicture(String part);

    String noGroup();

    String groupThere(String group);

    String groupMissing();

    String rowsDoNotFit(String table, String why);

    String readBackDiffers(String table);

    String outExists(String file);

    String outUnwritable(String file);

    String beingMade();

    String noRoom();
}
