package warmshelf.archive;

import static warmshelf.archive.ArchiveSentences.SAY;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.time.Clock;
import java.util.List;
import org.jspecify.annotations.Nullable;
import warmshelf.BadInput;
import warmshelf.DatabasePlace;
import warmshelf.db.Audit;
import warmshelf.db.Migrations;

/** Takes a group in from a file: everything is checked before anything is written. */
final class IntakeStore {
    private IntakeStore() {}

    /**
     * Takes it in.
     *
     * @throws BadInput when the file is not whole or not one of ours, or a group lives there already; nothing is changed then
     */
    static TakenIn takeIn(Path file, DatabasePlace place, Clock clock) throws IOException {
        try (ArchiveFile archive = ArchiveFile.open(file)) {
            String version = known(archive.manifest().schema());
            ArrivalStore.refuseTaken(place, version);
            ArchiveSchema newest = SchemaStore.newest();
            ArchiveSchema schema = version.equals(newest.version()) ? newest : SchemaStore.at(version);
            ArchiveFile.Checked checked = archive.check(schema);
            String sha256 = sha256(file);
            long bytes = Files.size(file);
            ArrivalStore.fill(
                    place,
                    version,
                    connection -> TakingInStore.fill(
                            connection,
                            schema,
                            schema.ofTheGroup(),
                            archive,
                            checked.lastCounted(),
                            new AsInTheFile(archive)),
                    database -> new ArchiveStore(database, new Audit(clock)).noteTakenIn(bytes, sha256));
            return new TakenIn(archive.manifest().group(), checked.tally(), sha256);
        }
    }

    private static String known(String version) {
        List<String> versions = Migrations.versions();
        String newest = versions.get(versions.size() - 1);
        if (versions.contains(version)) {
            return version;
        }
        throw new BadInput(
                version.matches("\\d{14}") && version.compareTo(newest) > 0
                        ? SAY.schemaNewer(version, newest)
                        : SAY.schemaUnknown(shown(version)));
    }

    private static String shown(String version) {
        return version.length() <= 20 ? version : version.substring(0, 20) + "…";
    }

    private static String sha256(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file);
                DigestInputStream digested = new DigestInputStream(in, Digests.sha256())) {
            digested.transferTo(OutputStream.nullOutputStream());
            return Digests.hex(digested.getMessageDigest());
        }
    }

    private record AsInTheFile(ArchiveFile archive) implements TakingInStore.Expected {
        @Override
        public @Nullable String rows(ArchiveTable table) {
            return archive.checksum(PartName.data(table.name()));
        }

        @Override
        public @Nullable String picture(String name) {
            return archive.checksum(name);
        }
    }
}
