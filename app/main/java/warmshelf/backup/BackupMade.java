package warmshelf.backup;

import java.nio.file.Path;

/**
 * A backup that was made and proved.
 *
 * @param bytes its size
 */
record BackupMade(Path file, BackupManifest manifest, long bytes) {}
