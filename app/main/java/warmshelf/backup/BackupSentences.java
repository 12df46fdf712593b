package warmshelf.backup;

import warmshelf.words.Sentences;

/** What is said of backups; the words stand in the room's file. */
interface BackupSentences {
    BackupSentences SAY = Sentences.of(BackupSentences.class);

    String noRoom();

    String unwritable();

    String notWhole();

    String fault();

    String old();

    String diskLow();

    String diskFull();

    String ofPostgres();

    String noData(String folder);

    String inUse(String folder);

    String outExists(String file);

    String outUnwritable(String file);

    String serverSilent();

    String noSuchFile(String file);

    String noBackup(String file);

    String cutShort(String file);

    String noRoomToUnpack(String folder);

    String folderOrFile();

    String damaged(String why);

    String noGroup();

    String changesMissing(long found, long known);

    String rowsDiffer();

    String dataThere(String folder);

    String backupNotWhole(String file, String problem);
}
