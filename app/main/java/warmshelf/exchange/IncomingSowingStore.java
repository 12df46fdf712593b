package warmshelf.exchange;

import static warmshelf.db.generated.Tables.GROUP_PROFILE;
import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.exchange.ExchangeSentences.SAY;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.CropCatalogue;
import warmshelf.crop.Method;
import warmshelf.group.Member;
import warmshelf.seed.LotStore;
import warmshelf.seed.NewLot;
import warmshelf.sowing.Container;
import warmshelf.sowing.Entry;
import warmshelf.sowing.EntryStep;
import warmshelf.sowing.EntryStore;
import warmshelf.sowing.Progress;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingResultStore;
import warmshelf.sowing.SowingStage;
import warmshelf.sowing.SowingStore;
import warmshelf.table.TableHeading;
import warmshelf.table.TableRow;
import warmshelf.table.WrittenDays;
import warmshelf.timeline.SeasonPart;

/**
 * Takes sowings of seasons that are over in, with what came of them, so that the group learns from what it wrote down before. They
 * take no place; seed of which no lot is in the box becomes a lot with nothing left.
 */
final class IncomingSowingStore implements IncomingRows {
    // What most members accept; a table of what is over says nothing of it, and nothing is counted back from it any
    // more.
    private static final double USUAL_RISK = 0.1;

    private final DSLContext within;
    private final LotStore lots;
    private final SowingStore sowings;
    private final EntryStore entries;
    private final CropCatalogue crops;
    private final IncomingOrder order;
    private final boolean keep;
    private final WrittenDays days = new WrittenDays();
    private final PastSowingForm form;
    private final Set<UUID> there;
    private final Map<PastSowing, Integer> alike = new HashMap<>();
    private final Map<NewLot, UUID> known = new HashMap<>();

    /** @param keep whether good rows are kept; else they are judged only */
    IncomingSowingStore(
            DSLContext within,
            LotStore lots,
            SowingStore sowings,
            EntryStore entries,
            CropCatalogue crops,
            IncomingOrder order,
            boolean keep) {
        this.within = within;
        this.lots = lots;
        this.sowings = sowings;
        this.entries = entries;
        this.crops = crops;
        this.order = order;
        this.keep = keep;
        Map<String, Sowing.Grower> growers = new HashMap<>();
        Sowing.@Nullable Grower self = readGrowers(growers);
        int season = within.select(GROUP_PROFILE.SEASON).from(GROUP_PROFILE).fetchSingle(GROUP_PROFILE.SEASON);
        this.form = new PastSowingForm(
                crops, days, growers, order.whose() == IncomingOrder.Whose.MINE ? self : null, order.today(), season);
        this.there = new HashSet<>(within.select(SOWING.ID).from(SOWING).fetch(SOWING.ID));
    }

    /** Everybody by their names, those who left too; answers with who brings the table in. */
    private Sowing.@Nullable Grower readGrowers(Map<String, Sowing.Grower> growers) {
        List<? extends Record> people = within.select(
                        MEMBER.ID, MEMBER.NAME, MEMBER.CALLED, MEMBER.COUNTRY, MEMBER.POSTCODE)
                .from(MEMBER)
                .orderBy(MEMBER.LEFT_AT.desc().nullsLast())
                .fetch();
        Sowing.@Nullable Grower self = null;
        // whole names last: they are surer than what somebody is called
        for (Record person : people) {
            growers.put(Member.key(person.get(MEMBER.CALLED)), grower(person));
        }
        for (Record person : people) {
            growers.put(Member.key(person.get(MEMBER.NAME)), grower(person));
            self = person.get(MEMBER.ID).equals(order.by()) ? grower(person) : self;
        }
        return self;
    }

    private static Sowing.Grower grower(Record person) {
        return new Sowing.Grower(
                person.get(MEMBER.ID),
                person.get(MEMBER.CALLED),
                person.get(MEMBER.COUNTRY),
                person.get(MEMBER.POSTCODE));
    }

    @Override
    public boolean learns() {
        return true;
    }

    @Override
    public void learn(TableRow row) {
        PastSowingForm.DAYS.forEach(column -> days.learn(row.cell(column)));
    }

    @Override
    public RowJudgement judge(TableRow row) {
        List<RowTrouble> troubles = new ArrayList<>();
        PastSowing past = form.read(row, troubles);
        if (past == null) {
            return new RowJudgement.Wrong(troubles);
        }
        UUID id = id(past);
        if (there.contains(id)) {
            return new RowJudgement.LeftOut(SAY.sowingThere());
        }
        if (keep) {
            keep(id, past);
        }
        return new RowJudgement.Good(words(past));
    }

    /** The same row gets the same id again; of several alike in one file, each its own. */
    private UUID id(PastSowing past) {
        int number = alike.merge(past, 1, Integer::sum);
        return UUID.nameUUIDFromBytes(("sowing\n" + past + "\n" + number).getBytes(StandardCharsets.UTF_8));
    }

    private static String words(PastSowing past) {
        String came = past.cameUp() == null ? SAY.notCountedThen() : SAY.cameUpThen(past.cameUp(), past.seeds());
        return SAY.pastSowing(
                past.season(), past.cropId(), past.variety(), past.grower().name(), past.sownOn(), came);
    }

    private void keep(UUID id, PastSowing past) {
        List<Entry> seen = entries(id, past);
        SowingStage stage = Progress.of(past.method(), past.seeds(), seen).stage();
        Sowing sowing = sowing(id, past, lot(past), stage);
        sowings.add(within, sowing, order.by());
        seen.forEach(entry -> entries.addTyped(within, entry, order.by()));
        SowingResultStore.keep(within, sowing, List.of(), seen, order.today());
    }

    private UUID lot(PastSowing past) {
        NewLot lot = new NewLot(
                past.cropId(), past.variety(), past.seedYear(), 0, past.grower().memberId(), false, "");
        return known.computeIfAbsent(lot, key -> inBox(past).orElseGet(() -> lots.add(within, lot, order.by())));
    }

    private Optional<UUID> inBox(PastSowing past) {
        return within.select(LOT.ID)
                .from(LOT)
                .where(
                        LOT.CROP_ID.eq(past.cropId()),
                        LOT.VARIETY.equalIgnoreCase(past.variety()),
                        LOT.SEED_YEAR.eq(past.seedYear()),
                        LOT.OWNER_ID.eq(past.grower().memberId()).or(LOT.OWNER_ID.isNull()))
                .orderBy(LOT.OWNER_ID.asc().nullsLast(), LOT.ID)
                .limit(1)
                .fetchOptional(LOT.ID);
    }

    private Sowing sowing(UUID id, PastSowing past, UUID lot, SowingStage stage) {
        return new Sowing(
                id,
                past.grower(),
                past.season(),
                SeasonPart.SPRING,
                crops.ofVariety(past.cropId(), past.variety()),
                lot,
                past.variety(),
                false,
                past.cameUp() == null ? past.seeds() : Math.max(1, past.cameUp()),
                past.method(),
                past.warm(),
                past.method() == Method.BAG ? Container.BAG : Container.HALF_TRAY,
                past.seeds(),
                1,
                past.seeds(),
                USUAL_RISK,
                null,
                stage,
                past.note(),
                1,
                null);
    }

    private static List<Entry> entries(UUID sowing, PastSowing past) {
        List<Entry> seen = new ArrayList<>();
        seen.add(entry(sowing, past, EntryStep.SOWN, past.sownOn(), seen.size(), null, null));
        if (past.countedOn() != null) {
            seen.add(entry(sowing, past, EntryStep.LOOK, past.countedOn(), seen.size(), past.cameUp(), past.lost()));
        }
        LocalDate out = past.plantedOutOn();
        EntryStep end = past.givenUp() ? EntryStep.GAVE_UP : EntryStep.NOT_RECORDED;
        seen.add(
                out == null
                        ? entry(sowing, past, end, past.lastDay(), seen.size(), null, null)
                        : entry(sowing, past, EntryStep.PLANTED_OUT, out, seen.size(), null, null));
        return seen;
    }

    private static Entry entry(
            UUID sowing,
            PastSowing past,
            EntryStep step,
            LocalDate day,
            int number,
            @Nullable Integer sprouted,
            @Nullable Integer lost) {
        UUID id = UUID.nameUUIDFromBytes((sowing + "\n" + number).getBytes(StandardCharsets.UTF_8));
        return new Entry(
                id,
                sowing,
                step,
                day,
                // only the days are known: one after the other on each
                day.atTime(12, number).atOffset(ZoneOffset.UTC),
                sprouted,
                null,
                lost,
                false,
                null,
                "",
                null,
                past.grower().memberId(),
                past.grower().name());
    }

    @Override
    public List<String> remarks(TableHeading heading) {
        List<String> remarks = new ArrayList<>();
        if (!heading.has("warm")) {
            remarks.add(SAY.warmNotSaid());
        }
        if (heading.has("grower") && order.whose() == IncomingOrder.Whose.MINE) {
            remarks.add(SAY.growerNotRead());
        }
        days.monthFirst().ifPresent(example -> remarks.add(SAY.monthFirst(example)));
        days.dayFirst().ifPresent(example -> remarks.add(SAY.dayFirst(example)));
        return remarks;
    }
}
