package warmshelf.frost.files;

import static warmshelf.frost.files.FilesSentences.SAY;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;

/**
 * What the group's own evidence shows: what was brought in, and the stations that count.
 *
 * @param text what was searched for, or empty
 * @param number of the page shown, from 0
 * @param more whether another page follows
 */
public record EvidencePage(
        List<ImportLine> imports, List<StationLine> stations, int count, String text, int number, boolean more) {

    /** An import as the list shows it. */
    public record ImportLine(
            UUID id,
            String fileName,
            String kind,
            String state,
            boolean taken,
            String startedBy,
            LocalDate startedOn,
            long rows,
            String decided) {}

    static EvidencePage of(
            List<FrostImport> imports,
            List<StationLine> found,
            int count,
            String text,
            int number,
            Instant now,
            ZoneId zone) {
        return new EvidencePage(
                imports.stream().map(one -> line(one, now, zone)).toList(),
                found.stream().limit(StationStore.PER_PAGE).toList(),
                count,
                text,
                number,
                found.size() > StationStore.PER_PAGE);
    }

    private static ImportLine line(FrostImport one, Instant now, ZoneId zone) {
        return new ImportLine(
                one.id(),
                one.fileName(),
                one.kind().words(),
                one.isStopped(now) ? SAY.stopped() : one.state().words(),
                one.state() == ImportState.TAKEN,
                one.startedBy(),
                LocalDate.ofInstant(one.startedAt(), zone),
                one.rowsGood(),
                one.decidedBy() == null ? "" : one.decidedBy());
    }
}
