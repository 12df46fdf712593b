package warmshelf.exchange;

import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.exchange.ExchangeSentences.SAY;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Record3;
import warmshelf.group.Member;
import warmshelf.seed.GerminationTest;
import warmshelf.seed.LotStore;
import warmshelf.seed.NewLot;
import warmshelf.table.TableHeading;
import warmshelf.table.TableRow;

/** Takes lots into the seed box. A lot that has an id here keeps it; of others the row itself makes one, so that it comes once. */
final class IncomingLotStore implements IncomingRows {
    private final DSLContext within;
    private final LotStore lots;
    private final IncomingOrder order;
    private final boolean keep;
    private final LotRowForm form;
    private final Set<UUID> there;
    private final Set<UUID> met = new HashSet<>();

    /** @param keep whether good rows are kept; else they are judged only */
    IncomingLotStore(
            DSLContext within, LotStore lots, warmshelf.crop.CropCatalogue crops, IncomingOrder order, boolean keep) {
        this.within = within;
        this.lots = lots;
        this.order = order;
        this.keep = keep;
        this.form = new LotRowForm(crops, order, owners(within));
        this.there = new HashSet<>(within.select(LOT.ID).from(LOT).fetch(LOT.ID));
    }

    private static Map<String, UUID> owners(DSLContext within) {
        Map<String, UUID> owners = new java.util.HashMap<>();
        List<Record3<String, String, UUID>> present = within.select(MEMBER.NAME, MEMBER.CALLED, MEMBER.ID)
                .from(MEMBER)
                .where(MEMBER.LEFT_AT.isNull())
                .fetch();
        present.forEach(row -> owners.put(Member.key(row.value2()), row.value3()));
        // a whole name is surer than what somebody is called
        present.forEach(row -> owners.put(Member.key(row.value1()), row.value3()));
        return owners;
    }

    @Override
    public RowJudgement judge(TableRow row) {
        List<RowTrouble> troubles = new ArrayList<>();
        LotRowForm.Read read = form.read(row, troubles);
        if (read == null) {
            return new RowJudgement.Wrong(troubles);
        }
        if (!met.add(read.id())) {
            troubles.add(new RowTrouble(row.number(), "id", SAY.idTwice(row.cell("id"))));
            return new RowJudgement.Wrong(troubles);
        }
        if (there.contains(read.id())) {
            return new RowJudgement.LeftOut(SAY.lotThere());
        }
        if (keep) {
            keep(read);
        }
        return new RowJudgement.Good(words(read.lot(), read.tests()));
    }

    private void keep(LotRowForm.Read read) {
        lots.add(within, read.id(), read.lot(), order.by());
        for (GerminationTest test : read.tests()) {
            lots.recordTest(within, read.id(), test, order.by());
        }
    }

    private static String words(NewLot lot, List<GerminationTest> tests) {
        String seeds = lot.seedsLeft() == null ? SAY.seedsNotCounted() : SAY.seeds(lot.seedsLeft());
        return SAY.lot(lot.cropId(), lot.variety(), String.valueOf(lot.seedYear()), seeds, tests.size());
    }

    @Override
    public List<String> remarks(TableHeading heading) {
        List<String> remarks = new ArrayList<>();
        if (!heading.has("source")) {
            remarks.add(SAY.sourceNotSaid());
        }
        if (heading.has("owner") && order.whose() != IncomingOrder.Whose.COLUMN) {
            remarks.add(SAY.ownerNotRead());
        }
        return remarks;
    }
}
