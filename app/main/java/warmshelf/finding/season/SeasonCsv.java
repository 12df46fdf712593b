package warmshelf.finding.season;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import warmshelf.finding.CountedSeeds;
import warmshelf.sowing.Entry;
import warmshelf.sowing.Problem;
import warmshelf.sowing.Progress;
import warmshelf.table.TableShape;
import warmshelf.table.TableWriter;
import warmshelf.timeline.Seen;

/** A season as tables; temperatures are Celsius. */
final class SeasonCsv {
    private final TableWriter table;

    private SeasonCsv(Appendable out, TableShape shape, String... columns) throws IOException {
        table = new TableWriter(out, shape, List.of(columns));
    }

    /** One row for each sowing. */
    static void sowings(
            Appendable out, TableShape shape, List<SeasonSowing> sowings, Map<UUID, SeasonFinding.Whereabouts> places)
            throws IOException {
        SeasonCsv csv = new SeasonCsv(
                out,
                shape,
                "sowing",
                "member",
                "crop",
                "variety",
                "lot",
                "method",
                "seeds",
                "plants_wanted",
                "stage",
                "sown_on",
                "came",
                "no_more_waited_for",
                "up",
                "lost",
                "planted_out_on",
                "planted_out",
                "given_away",
                "shelf",
                "mean_celsius",
                "compost",
                "problems");
        for (SeasonSowing each : sowings) {
            csv.row(each, places);
        }
    }

    private void row(SeasonSowing each, Map<UUID, SeasonFinding.Whereabouts> places) throws IOException {
        Progress progress = each.progress();
        Seen seen = progress.seen();
        CountedSeeds counted = each.counted();
        UUID placeId = each.placeId();
        SeasonFinding.Whereabouts where = placeId == null ? null : places.get(placeId);
        table.row(
                each.sowing().id(),
                each.sowing().grower().name(),
                each.sowing().crop().id(),
                each.sowing().variety(),
                each.sowing().lotId(),
                each.sowing().method().word(),
                each.sowing().seeds(),
                each.sowing().plantsWanted(),
                each.sowing().stage().word(),
                seen.sown(),
                counted.given() ? counted.came() : null,
                progress.settled(),
                progress.up(),
                progress.lost(),
                seen.plantedOut(),
                seen.plantedOut() == null ? null : each.plantedOut(),
                each.given(),
                where == null ? null : where.shelf(),
                tenths(each.meanC()),
                each.compost(),
                Arrays.stream(Problem.values())
                        .filter(each::had)
                        .map(Problem::word)
                        .collect(Collectors.joining(" ")));
    }

    private static @Nullable BigDecimal tenths(@Nullable Double figure) {
        return figure == null ? null : BigDecimal.valueOf(figure).setScale(1, RoundingMode.HALF_UP);
    }

    /** One row for each week. */
    static void weeks(Appendable out, TableShape shape, List<SpaceWeek> weeks) throws IOException {
        SeasonCsv csv = new SeasonCsv(
                out,
                shape,
                "week_from",
                "mat_quarter_days_used",
                "mat_quarter_days",
                "lit_quarter_days_used",
                "lit_quarter_days",
                "kwh_at_most");
        for (SpaceWeek week : weeks) {
            csv.table.row(
                    week.monday(),
                    week.onMats(),
                    week.ofMats(),
                    week.underLight(),
                    week.ofLight(),
                    BigDecimal.valueOf(week.wattHours(), 3));
        }
    }

    /** A table to which what was seen is added, one row for each entry that still counts. */
    static SeasonCsv entries(Appendable out, TableShape shape) throws IOException {
        return new SeasonCsv(
                out, shape, "sowing", "entry", "step", "seen_on", "so_far", "moved", "lost", "problem", "by", "note");
    }

    void add(Entry entry) throws IOException {
        Problem problem = entry.problem();
        table.row(
                entry.sowingId(),
                entry.id(),
                entry.step().word(),
                entry.seenOn(),
                entry.sprouted(),
                entry.moved(),
                entry.lost(),
                problem == null ? null : problem.word(),
                entry.byName(),
                entry.note());
    }
}
