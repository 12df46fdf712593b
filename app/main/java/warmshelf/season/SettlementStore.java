package warmshelf.season;

import static warmshelf.db.generated.Tables.SEASON_CLOSING;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.Stay;
import warmshelf.allocation.StayBookStore;
import warmshelf.check.Tick;
import warmshelf.check.TickStore;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.decision.Decision;
import warmshelf.decision.Declined;
import warmshelf.finding.season.SeasonStore;
import warmshelf.finding.season.SeasonTotals;
import warmshelf.news.NewsBookStore;
import warmshelf.sowing.Entry;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.EntryStore;
import warmshelf.sowing.HistoryStore;
import warmshelf.sowing.SeasonGateStore;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingStage;
import warmshelf.sowing.SowingStore;
import warmshelf.words.Message;

/** Closes a season: what is not over is settled as was decided, and its figures are kept, all or nothing. */
final class SettlementStore {
    private final DSLContext sql;
    private final Audit audit;
    private final SowingStore sowings;
    private final EntryStore entries;
    private final HistoryStore histories;
    private final TickStore ticks;
    private final NewsBookStore news;

    SettlementStore(
            Database database,
            Audit audit,
            SowingStore sowings,
            EntryStore entries,
            HistoryStore histories,
            TickStore ticks) {
        this.sql = database.sql();
        this.audit = audit;
        this.sowings = sowings;
        this.entries = entries;
        this.histories = histories;
        this.ticks = ticks;
        this.news = new NewsBookStore(audit);
    }

    /** The sowings of a season that are not over, by how far they had come, then by crop and grower. */
    List<OpenSowing> open(int season, LocalDate today) {
        return open(sql, season, today);
    }

    private List<OpenSowing> open(DSLContext from, int season, LocalDate today) {
        List<Sowing> open = sowings.inSeason(from, season).stream()
                .filter(sowing -> !sowing.stage().isOver())
                .toList();
        List<UUID> ids = open.stream().map(Sowing::id).toList();
        Map<UUID, List<Stay>> stays = StayBookStore.ofSowings(from, ids);
        Map<UUID, LocalDate> seen = lastSeen(from, ids);
        return open.stream()
                .map(sowing -> new OpenSowing(
                        sowing.id(),
                        OpenKind.of(sowing.stage(), hadPlace(stays.getOrDefault(sowing.id(), List.of()), today)),
                        sowing.title(),
                        sowing.grower().name(),
                        seen.get(sowing.id())))
                .sorted(java.util.Comparator.comparing(OpenSowing::kind)
                        .thenComparing(OpenSowing::title)
                        .thenComparing(OpenSowing::grower)
                        .thenComparing(OpenSowing::id))
                .toList();
    }

    private static boolean hadPlace(List<Stay> stays, LocalDate today) {
        return stays.stream()
                .anyMatch(stay -> stay.isBegunBy(today) && stay.to().isAfter(stay.from()));
    }

    private Map<UUID, LocalDate> lastSeen(DSLContext from, List<UUID> ids) {
        return entries.ofSowings(from, ids).entrySet().stream()
                .filter(each -> !each.getValue().isEmpty())
                .collect(Collectors.toMap(
                        Map.Entry::getKey,
                        each -> each.getValue().stream()
                                .map(Entry::seenOn)
                                .max(LocalDate::compareTo)
                                .orElseThrow()));
    }

    /**
     * Closes a season with all that is not over settled as decided.
     *
     * @return its figures as they are then; a no when it is closed already, or something came or went since it was decided
     */
    Decision<SeasonTotals> close(int season, SettlingForm.Decided decided, LocalDate today, UUID by) {
        return Decision.of(() -> sql.transactionResult(inside -> {
            DSLContext tx = inside.dsl();
            boolean closed = SeasonGateStore.hold(tx) != season
                    || tx.fetchExists(SEASON_CLOSING, SEASON_CLOSING.STANDING.eq(season));
            if (closed) {
                throw Declined.overtaken(new SeasonRefusal.ClosedAlready(season));
            }
            List<OpenSowing> open = open(tx, season, today);
            for (OpenSowing sowing : open) {
                Settlement settlement = decided.settlements().get(sowing.id());
                if (settlement == null || !sowing.kind().settlements().contains(settlement)) {
                    throw Declined.overtaken(new SeasonRefusal.ChangedMeanwhile(season));
                }
                settle(tx, sowing, settlement, decided.outOn(), today, by);
            }
            if (open.size() != decided.settlements().size()) {
                throw Declined.overtaken(new SeasonRefusal.ChangedMeanwhile(season));
            }
            news.forgetSeason(tx, season);
            return keep(tx, season, by);
        }));
    }

    private void settle(
            DSLContext tx, OpenSowing sowing, Settlement settlement, LocalDate outOn, LocalDate today, UUID by) {
        switch (settlement) {
            case PLANTED_OUT -> tick(tx, sowing, EntryStep.PLANTED_OUT, sowing.endedOn(outOn), by);
            case GIVEN_UP -> tick(tx, sowing, EntryStep.GAVE_UP, today, by);
            case NOT_RECORDED -> tick(tx, sowing, EntryStep.NOT_RECORDED, today, by);
            case WITHDRAWN -> done(sowing, histories.withdraw(tx, sowing.id(), by));
            case GOES_ON -> {
                // nothing happens to it
            }
        }
    }

    private void tick(DSLContext tx, OpenSowing sowing, EntryStep step, LocalDate day, UUID by) {
        Tick tick = new Tick(UUID.randomUUID(), step, day, null, null, null, false, null, "", null, null);
        done(sowing, ticks.settle(tx, sowing.id(), tick, by));
    }

    private static void done(OpenSowing sowing, Decision<?> decision) {
        if (!(decision instanceof Decision.Done)) {
            @Nullable Message reason = decision.refusal().orElse(null);
            throw Declined.refused(new SeasonRefusal.NotSettled(sowing.title(), reason));
        }
    }

    private SeasonTotals keep(DSLContext tx, int season, UUID by) {
        SeasonTotals totals = new SeasonStore(tx, sowings, entries).find(season).totals();
        int notRecorded = (int) sowings.inSeason(tx, season).stream()
                .filter(sowing -> sowing.stage() == SowingStage.NOT_RECORDED)
                .count();
        UUID id = UUID.randomUUID();
        tx.insertInto(SEASON_CLOSING)
                .set(SEASON_CLOSING.ID, id)
                .set(SEASON_CLOSING.SEASON, season)
                .set(SEASON_CLOSING.STANDING, season)
                .set(SEASON_CLOSING.CLOSED_BY, by)
                .set(SEASON_CLOSING.CLOSED_AT, audit.now())
                .set(SEASON_CLOSING.ASKED, totals.asked())
                .set(SEASON_CLOSING.MEMBERS, totals.members())
                .set(SEASON_CLOSING.SOWN, totals.sown())
                .set(SEASON_CLOSING.WITHDRAWN, totals.withdrawn())
                .set(SEASON_CLOSING.GOING_ON, totals.underWay())
                .set(SEASON_CLOSING.SEEDS, totals.seeds())
                .set(SEASON_CLOSING.COUNTED, totals.counted())
                .set(SEASON_CLOSING.CAME, totals.came())
                .set(SEASON_CLOSING.PLANTS_OUT, totals.plantedOut())
                .set(SEASON_CLOSING.PLANTS_GIVEN, totals.given())
                .set(SEASON_CLOSING.SEEDLINGS_LOST, totals.lost())
                .set(SEASON_CLOSING.GIVEN_UP, totals.givenUp())
                .set(SEASON_CLOSING.NOT_RECORDED, notRecorded)
                .execute();
        audit.write(tx, by, "close season", "season_closing", id, Integer.toString(season));
        return totals;
    }
}
