package warmshelf.archive;

import java.util.List;

/**
 * The tables as they were after a migration.
 *
 * @param version of that migration
 * @param tables each after those that its rows point to
 */
record ArchiveSchema(String version, List<ArchiveTable> tables) {

    /** Those that travel with the group. */
    List<ArchiveTable> ofTheGroup() {
        return tables.stream().filter(ArchiveTable::ofTheGroup).toList();
    }
}
