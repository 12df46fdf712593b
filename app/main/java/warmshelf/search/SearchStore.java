package warmshelf.search;

import static warmshelf.db.generated.Tables.LOT;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.PLACE;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.SHORT_CODE;
import static warmshelf.db.generated.Tables.SITE;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.STAY;
import static warmshelf.search.SearchSentences.SAY;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jspecify.annotations.Nullable;
import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;
import warmshelf.db.Database;
import warmshelf.shelf.OnSiteStore;
import warmshelf.words.Needle;
import warmshelf.words.SeenName;

/** Looks through what a reader may see. */
final class SearchStore {
    private final DSLContext sql;
    private final CropCatalogue crops;

    SearchStore(Database database, CropCatalogue crops) {
        this.sql = database.sql();
        this.crops = crops;
    }

    /** Who looks: coordinators see whole names, and who has left. */
    record Reader(UUID member, boolean coordinator, LocalDate today) {
        private String name(UUID id, String name, String called) {
            return SeenName.of(name, called, coordinator || id.equals(member));
        }
    }

    /** Everything found, people first, the newest sowings before older ones. */
    List<Hit> find(Needle needle, Reader reader) {
        Map<UUID, String> codes = sql.select(SHORT_CODE.SUBJECT_ID, SHORT_CODE.CODE)
                .from(SHORT_CODE)
                .fetchMap(SHORT_CODE.SUBJECT_ID, SHORT_CODE.CODE);
        List<Hit> hits = new ArrayList<>();
        people(needle, reader, hits);
        sowings(needle, reader, codes, hits);
        lots(needle, reader, hits);
        places(needle, codes, hits);
        return hits;
    }

    private void people(Needle needle, Reader reader, List<Hit> hits) {
        sql.select(MEMBER.ID, MEMBER.NAME, MEMBER.CALLED, MEMBER.ROLE, MEMBER.LEFT_AT)
                .from(MEMBER)
                .where(MEMBER.ERASED_AT.isNull(), MEMBER.ROLE.ne("tablet"))
                .orderBy(MEMBER.LEFT_AT.isNotNull(), MEMBER.NAME_KEY)
                .forEach(row -> {
                    boolean left = row.value5() != null;
                    String name = reader.name(row.value1(), row.value2(), row.value3());
                    if ((reader.coordinator() || !left) && needle.isIn(name)) {
                        String more = left
                                ? SAY.hasLeft()
                                : row.value4().equals("coordinator") ? SAY.coordinator() : SAY.member();
                        hits.add(new Hit(
                                Hit.Kind.PERSON,
                                name,
                                more,
                                "/people?name=" + URLEncoder.encode(name, StandardCharsets.UTF_8)));
                    }
                });
    }

    private void sowings(Needle needle, Reader reader, Map<UUID, String> codes, List<Hit> hits) {
        Map<UUID, String> lying = sql.select(STAY.SOWING_ID, MAT.NAME)
                .from(STAY)
                .join(PLACE)
                .on(PLACE.ID.eq(STAY.PLACE_ID))
                .join(MAT)
                .on(MAT.ID.eq(PLACE.MAT_ID))
                .where(STAY.FROM_DAY.le(reader.today()), STAY.TO_DAY.gt(reader.today()))
                .fetchMap(STAY.SOWING_ID, MAT.NAME);
        sql.select(
                        SOWING.ID,
                        SOWING.CROP_ID,
                        LOT.VARIETY,
                        SOWING.STAGE,
                        SOWING.SEASON,
                        MEMBER.ID,
                        MEMBER.NAME,
                        MEMBER.CALLED)
                .from(SOWING)
                .join(LOT)
                .on(LOT.ID.eq(SOWING.LOT_ID))
                .join(MEMBER)
                .on(MEMBER.ID.eq(SOWING.MEMBER_ID))
                .orderBy(SOWING.SEASON.desc(), SOWING.ASKED_AT.desc(), SOWING.ID)
                .forEach(row -> {
                    String title = title(row, row.value2());
                    String name = reader.name(row.value6(), row.value7(), row.value8());
                    String mat = lying.get(row.value1());
                    String code = codes.getOrDefault(row.value1(), "");
                    if (needle.isIn(title, name, Objects.requireNonNullElse(mat, ""), code)) {
                        String stage = row.value4().replace('-', ' ');
                        String more = SAY.sowing(name, stage, String.valueOf(row.value5()));
                        hits.add(new Hit(
                                Hit.Kind.SOWING,
                                title,
                                mat == null ? more : SAY.onMat(more, mat),
                                "/sowings/" + row.value1()));
                    }
                });
    }

    private void lots(Needle needle, Reader reader, List<Hit> hits) {
        sql.select(LOT.ID, LOT.CROP_ID, LOT.VARIETY, LOT.SEED_YEAR, MEMBER.ID, MEMBER.NAME, MEMBER.CALLED)
                .from(LOT)
                .leftJoin(MEMBER)
                .on(MEMBER.ID.eq(LOT.OWNER_ID))
                .orderBy(LOT.SEED_YEAR.desc(), LOT.VARIETY, LOT.ID)
                .forEach(row -> {
                    String title = title(row, row.value2());
                    @Nullable UUID owner = row.value5();
                    String whose = owner == null ? SAY.groups() : reader.name(owner, row.value6(), row.value7());
                    String year = String.valueOf(row.value4());
                    if (needle.isIn(title, whose, year)) {
                        hits.add(new Hit(Hit.Kind.LOT, title, SAY.lot(year, whose), "/seeds/" + row.value1()));
                    }
                });
    }

    private void places(Needle needle, Map<UUID, String> codes, List<Hit> hits) {
        OnSiteStore.ofMats(sql.select(MAT.ID, MAT.NAME, RACK.NAME, SITE.NAME).from(MAT))
                .orderBy(SITE.WALK_ORDER, RACK.WALK_ORDER, MAT.WALK_ORDER, MAT.NAME)
                .forEach(row -> {
                    String where = SAY.matOn(row.value3(), row.value4());
                    if (needle.isIn(SAY.mat(row.value2()), where, codes.getOrDefault(row.value1(), ""))) {
                        hits.add(new Hit(Hit.Kind.PLACE, SAY.mat(row.value2()), where, "/mats/" + row.value1()));
                    }
                });
        sql.select(RACK.ID, RACK.NAME, SITE.ID, SITE.NAME)
                .from(RACK)
                .join(SITE)
                .on(SITE.ID.eq(RACK.SITE_ID))
                .orderBy(SITE.WALK_ORDER, RACK.WALK_ORDER, RACK.NAME)
                .forEach(row -> {
                    if (needle.isIn(SAY.rack(row.value2()), row.value4(), codes.getOrDefault(row.value1(), ""))) {
                        hits.add(new Hit(
                                Hit.Kind.PLACE,
                                SAY.rack(row.value2()),
                                row.value4(),
                                "/racks?site=" + row.value3() + "#rack-" + row.value1()));
                    }
                });
    }

    private String title(Record row, String crop) {
        String name = crops.find(crop).map(Crop::name).orElse(crop);
        String variety = row.get(LOT.VARIETY);
        return variety.isEmpty() ? name : name + " · " + variety;
    }
}
