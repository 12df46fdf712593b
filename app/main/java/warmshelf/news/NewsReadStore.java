package warmshelf.news;

import static warmshelf.db.generated.Tables.DUTY_SWAP;
import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.LOT_REQUEST;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.NEWS;
import static warmshelf.db.generated.Tables.SITE;
import static warmshelf.db.generated.Tables.SPACE_REQUEST;
import static warmshelf.db.generated.Tables.SURPLUS_OFFER;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jooq.Condition;
import org.jooq.Record;
import org.jspecify.annotations.Nullable;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.db.KeptUntilWritten;

/** Reads what is new for a member, and notes what they have seen. Every page asks, so it is kept until something is written. */
final class NewsReadStore {
    private static final UUID EVERY = new UUID(0, 0);

    /** What others may be told by: titles of sowings, and a problem in words. */
    interface Names {
        Map<UUID, String> titles(Collection<UUID> sowings);

        String problem(String word);
    }

    /** News as they were told, not grouped yet. */
    private record Told(UUID id, NewsKind kind, UUID thing, String site, String by, String detail, OffsetDateTime at) {}

    private record About(NewsKind kind, UUID thing) {}

    private final Database database;
    private final Audit audit;
    private final Names names;
    private final KeptUntilWritten<UUID, List<Told>> kept;

    NewsReadStore(Database database, Audit audit, Names names) {
        this.database = database;
        this.audit = audit;
        this.names = names;
        this.kept = new KeptUntilWritten<>(database, this::read);
    }

    /** How many lines are new for a member. */
    int count(UUID member) {
        return grouped(kept.get(member)).size();
    }

    /** What is new for a member, the newest first. */
    List<NewsLine> lines(UUID member) {
        List<Told> told = kept.get(member);
        Map<UUID, String> titles = names.titles(told.stream()
                .filter(each -> !isOfSwap(each.kind()))
                .map(Told::thing)
                .distinct()
                .toList());
        return grouped(told).values().stream().map(group -> line(group, titles)).toList();
    }

    private static boolean isOfSwap(NewsKind kind) {
        return kind == NewsKind.DUTY_ASKED || kind == NewsKind.DUTY_TAKEN;
    }

    private static Map<About, List<Told>> grouped(List<Told> told) {
        Map<About, List<Told>> groups = new LinkedHashMap<>();
        told.forEach(each -> groups.computeIfAbsent(about(each), unknown -> new ArrayList<>())
                .add(each));
        return groups;
    }

    /** Seedlings to give away all stand on one page, and so on one line. */
    private static About about(Told told) {
        return new About(told.kind(), told.kind() == NewsKind.SEEDLINGS ? EVERY : told.thing());
    }

    private static NewsLine line(List<Told> told, Map<UUID, String> titles) {
        Told last = told.get(0);
        return new NewsLine(
                last.kind(),
                last.thing(),
                told.size(),
                titles.getOrDefault(last.thing(), last.site()),
                last.by(),
                last.detail(),
                last.at());
    }

    /** Notes that a member looks at a page now: what it shows is not new any more. */
    void see(UUID member, String path) {
        List<UUID> shown = kept.get(member).stream()
                .filter(each -> each.kind().address(each.thing()).equals(path))
                .map(Told::id)
                .toList();
        // A full disk keeps nobody from reading.
        if (!shown.isEmpty() && database.room().map(room -> !room.isFull()).orElse(true)) {
            database.sql()
                    .update(NEWS)
                    .set(NEWS.SEEN_AT, audit.now())
                    .where(NEWS.ID.in(shown))
                    .execute();
        }
    }

    /** Notes that a member has seen all that was told until a moment. */
    void seeAll(UUID member, OffsetDateTime until) {
        database.sql().transaction(inside -> {
            int seen = inside.dsl()
                    .update(NEWS)
                    .set(NEWS.SEEN_AT, audit.now())
                    .where(NEWS.MEMBER_ID.eq(member), NEWS.SEEN_AT.isNull(), NEWS.TOLD_AT.le(until))
                    .execute();
            audit.write(inside.dsl(), member, "see all news", "member", member, seen + " news");
        });
    }

    private List<Told> read(UUID member) {
        return database.sql()
                .select(NEWS.ID, NEWS.KIND, NEWS.SOWING_ID, NEWS.SWAP_ID, NEWS.TOLD_AT, MEMBER.CALLED)
                .select(SPACE_REQUEST.REASON, ENTRY.PROBLEM, DUTY_SWAP.ON_DAY, SITE.NAME)
                .from(NEWS)
                .leftJoin(MEMBER)
                .on(MEMBER.ID.eq(NEWS.CAUSED_BY))
                .leftJoin(SPACE_REQUEST)
                .on(SPACE_REQUEST.SOWING_ID.eq(NEWS.SOWING_ID))
                .leftJoin(LOT_REQUEST)
                .on(LOT_REQUEST.SOWING_ID.eq(NEWS.SOWING_ID))
                .leftJoin(SURPLUS_OFFER)
                .on(SURPLUS_OFFER.SOWING_ID.eq(NEWS.SOWING_ID))
                .leftJoin(ENTRY)
                .on(ENTRY.ID.eq(NEWS.ENTRY_ID))
                .leftJoin(DUTY_SWAP)
                .on(DUTY_SWAP.ID.eq(NEWS.SWAP_ID))
                .leftJoin(SITE)
                .on(SITE.ID.eq(DUTY_SWAP.SITE_ID))
                .where(NEWS.MEMBER_ID.eq(member), NEWS.SEEN_AT.isNull(), stillSo())
                .orderBy(NEWS.TOLD_AT.desc(), NEWS.ID)
                .fetch(this::told);
    }

    /** What waits for an answer is told while it waits. */
    private static Condition stillSo() {
        return NEWS.KIND
                .ne(NewsKind.SEED_ASKED.word())
                .or(LOT_REQUEST.STATE.eq("waiting"))
                .and(NEWS.KIND.ne(NewsKind.SEEDLINGS.word()).or(SURPLUS_OFFER.PLANTS.gt(SURPLUS_OFFER.TAKEN)))
                .and(NEWS.KIND.ne(NewsKind.DUTY_ASKED.word()).or(DUTY_SWAP.STATE.eq("open")));
    }

    private Told told(Record row) {
        NewsKind kind = NewsKind.named(row.get(NEWS.KIND));
        UUID sowing = row.get(NEWS.SOWING_ID);
        return new Told(
                row.get(NEWS.ID),
                kind,
                sowing == null ? row.get(NEWS.SWAP_ID) : sowing,
                orEmpty(row.get(SITE.NAME)),
                orEmpty(row.get(MEMBER.CALLED)),
                detail(kind, row),
                row.get(NEWS.TOLD_AT));
    }

    private String detail(NewsKind kind, Record row) {
        return switch (kind) {
            case REFUSED, WAITING -> orEmpty(row.get(SPACE_REQUEST.REASON));
            case PROBLEM ->
                Optional.ofNullable(row.get(ENTRY.PROBLEM)).map(names::problem).orElse("");
            case DUTY_ASKED, DUTY_TAKEN ->
                Optional.ofNullable(row.get(DUTY_SWAP.ON_DAY))
                        .map(LocalDate::toString)
                        .orElse("");
            default -> "";
        };
    }

    private static String orEmpty(@Nullable String text) {
        return text == null ? "" : text;
    }
}
