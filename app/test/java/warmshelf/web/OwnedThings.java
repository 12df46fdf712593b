package warmshelf.web;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.MEMBER;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jooq.Condition;
import org.jooq.Field;
import org.jooq.impl.DSL;
import warmshelf.Server;
import warmshelf.Settings;
import warmshelf.db.Database;
import warmshelf.demo.FilledDemo;
import warmshelf.group.SessionStore;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.FormFiller;
import warmshelf.testing.MutableClock;
import warmshelf.testing.PageForm;
import warmshelf.testing.TestDatabase;
import warmshelf.testing.Upload;

/** The demo group with something of every kind that an address can name, and people to ask for it. */
final class OwnedThings implements AutoCloseable {
    private static final Instant NOW = Instant.parse("2027-05-08T17:00:00Z");
    private static final LocalDate TODAY = LocalDate.of(2027, 5, 8);
    private static final Pattern TOKEN = Pattern.compile("value=\"(warmshelf_[^\"]+)");
    private static final Pattern INCOMING = Pattern.compile("/files/incoming/([0-9a-f-]{36})");
    private static final Field<UUID> ID = DSL.field(DSL.name("id"), UUID.class);

    /** Forms by the page on which each stands, that make what the demo group has none of, or none that can be found by chance. */
    private static final List<Map.Entry<String, String>> MADE_BY_A_MEMBER = List.of(
            Map.entry("/duty/mine", "/duty/mine/away"),
            Map.entry("/frost/garden", "/frost/garden/corrections"),
            Map.entry("/frost/thermometers/new", "/frost/thermometers"),
            Map.entry("/supplies", "/supplies"),
            Map.entry("/labels/printers", "/labels/printers"),
            Map.entry("/labels/sizes", "/labels/sizes"),
            Map.entry("/labels?again=yes", "/labels/runs"));

    private static final List<Map.Entry<String, String>> MADE_BY_A_COORDINATOR =
            List.of(Map.entry("/plans/out-of-service", "/plans/out-of-service"), Map.entry("/plans", "/plans"));

    private static final List<String> MADE_IN_THE_TABLES = List.of("""
            insert into photo (id, entry_id, width, height, jpeg, added_by, added_at)
            select gen_random_uuid(), entry.id, 1, 1, cast('a' as bytea), made_by, entry.made_at
            from entry join sowing on sowing.id = sowing_id and member_id = made_by order by entry.id limit 1""", """
            insert into photo (id, lot_id, width, height, jpeg, added_by, added_at)
            select gen_random_uuid(), id, 1, 1, cast('a' as bytea), owner_id, made_at from lot where owner_id is not null order by id limit 1""", """
            insert into plan_note (id, plan_id, member_id, sowing_id, placed, words, made_at)
            select gen_random_uuid(), (select max(id) from season_plan), member_id, id, true, 'placed', %1$s
            from sowing order by id limit 1""", """
            insert into gathered (id, member_id, title, answers, gathered_at)
            select gen_random_uuid(), id, 'Pepper', '', %1$s from member where role = 'member' order by id limit 1""", """
            insert into passkey (id, member_id, name, credential_id, credential_data, sign_count, made_at)
            select gen_random_uuid(), id, 'phone', 'a', cast('a' as bytea), 0, %1$s from member where role = 'member' order by id limit 1""", """
            insert into push_address (id, member_id, endpoint, endpoint_hash, p256dh, auth, name, session_hash, added_by, added_at)
            select gen_random_uuid(), id, 'https://push.example', 'a', 'b', 'c', 'phone', 'd', id, %1$s
            from member where role = 'member' order by id limit 1""", """
            insert into frost_import (id, kind, file_name, bytes_total, bytes_read, rows_read, rows_good, state, words,
              started_by, started_at, beat_at)
            select gen_random_uuid(), 'nights', 'a.csv', 1, 1, 1, 1, 'ready', '', id, %1$s, %1$s
            from member where role = 'coordinator' order by id limit 1""", """
            insert into member (id, name, name_key, called, role, country, postcode, passphrase_hash, joined_at, left_at, version)
            select gen_random_uuid(), 'the tablet Cellar', 'tablet', 'the tablet Cellar', 'tablet', 'US', '55811', '', %1$s, %1$s, 1
            from group_profile""", """
            insert into tablet (id, name, site_id, made_by, made_at)
            select member.id, 'Cellar', (select max(id) from site), (select max(id) from member where role = 'coordinator'), %1$s
            from member where role = 'tablet'""", """
            insert into frost_station (id, kind, code, name, latitude, longitude, elevation_m, source, added_by, added_at)
            select gen_random_uuid(), 'published', 'A', 'Airport', 46, -92, 400, 'a table', id, %1$s
            from member where role = 'coordinator' order by id limit 1""");

    /** Of the rows of a table, those that an address names. */
    private static final Map<String, String> ONLY_THOSE = Map.of(
            "/photos",
            "entry_id is not null",
            "/packets",
            "lot_id is not null",
            "/people",
            "role <> 'tablet'",
            "/requests",
            "id in (select sowing_id from space_request)",
            "/labels/runs/{id}",
            "stock <> 'by-hand'",
            "/frost/areas",
            "member_id is null and ended_at is null",
            "/frost/garden/corrections",
            "member_id is not null and ended_at is null");

    private final TestDatabase place = TestDatabase.h2();
    private final Clock clock = new MutableClock(NOW);
    private final FilledDemo demo;
    private final Server server;
    private final Map<UUID, Browser> browsers = new HashMap<>();
    private final Map<UUID, String> tokens = new HashMap<>();
    private final UUID incoming;

    /** One thing, and whose it is; where it is the group's, any member. */
    record Thing(UUID id, UUID owner) {}

    OwnedThings() {
        demo = FilledDemo.in(place.database(), clock);
        server = Server.start(Settings.onFreePort(Path.of("unused")), place.database(), clock);
        MADE_BY_A_MEMBER.forEach(form -> make(as(member()), form.getKey(), form.getValue()));
        MADE_BY_A_COORDINATOR.forEach(form -> make(as(coordinator()), form.getKey(), form.getValue()));
        incoming = bringIn(as(member()));
        List.of(demo.member(), demo.onDuty(), demo.coordinator()).forEach(name -> token(named(name)));
        MADE_IN_THE_TABLES.forEach(statement ->
                place.database().sql().execute(statement.formatted("timestamp with time zone '2027-05-08 17:00:00Z'")));
    }

    private static void make(Browser browser, String page, String address) {
        PageForm form = PageForm.on(page, browser.get(page).body()).stream()
                .filter(each -> each.action().equals(address))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no form for " + address + " on " + page));
        Answer answer = browser.post(address, new FormFiller(TODAY, FilledDemo.PASSPHRASE).filled(form));
        assertThat(answer.status()).as(address + " " + answer.text()).isEqualTo(303);
    }

    private UUID bringIn(Browser browser) {
        Answer answer = new Upload()
                .field("kind", "lots")
                .field("whose", "mine")
                .file("lots.csv", "crop,variety,year\npepper,Long red,2026\n")
                .post(browser, "/files/incoming");
        Matcher id = INCOMING.matcher(answer.location());
        assertThat(id.find()).as(answer.location()).isTrue();
        return UUID.fromString(id.group(1));
    }

    Database database() {
        return place.database();
    }

    List<RouteRight> rights() {
        return server.rights();
    }

    /** How many rows each table has; whatever is changed leaves a line in the record of changes. */
    Map<String, Long> rows() {
        return place.database().rows();
    }

    UUID member() {
        return named(demo.member());
    }

    UUID coordinator() {
        return named(demo.coordinator());
    }

    private UUID named(String name) {
        return place.database()
                .sql()
                .select(MEMBER.ID)
                .from(MEMBER)
                .where(MEMBER.NAME.eq(name))
                .fetchSingle(MEMBER.ID);
    }

    /** A member who is neither a coordinator nor this one. */
    UUID anotherThan(UUID owner) {
        return named(demo.member().equals(nameOf(owner)) ? demo.onDuty() : demo.member());
    }

    private String nameOf(UUID member) {
        return place.database()
                .sql()
                .select(MEMBER.NAME)
                .from(MEMBER)
                .where(MEMBER.ID.eq(member))
                .fetchSingle(MEMBER.NAME);
    }

    /** Something that the route can name; of an ordinary member's where there is such a thing. */
    Thing of(NamingRoute route) {
        if (route.table().equals("incoming")) {
            return new Thing(incoming, member());
        }
        Field<UUID> owner =
                route.owner().isEmpty() ? DSL.val(member()) : DSL.field(DSL.name(route.owner()), UUID.class);
        Condition there = ONLY_THOSE.entrySet().stream()
                .filter(only -> route.address().startsWith(only.getKey()))
                .map(only -> DSL.condition(only.getValue()))
                .reduce(owner.isNotNull(), Condition::and);
        return place.database()
                .sql()
                .select(ID, owner)
                .from(DSL.table(DSL.name(route.table())))
                .where(there)
                .orderBy(DSL.field(owner.eq(coordinator())), owner.ne(member()).asc(), ID)
                .limit(1)
                .fetchOptional(row -> new Thing(row.value1(), row.value2()))
                .orElseThrow(() -> new AssertionError("nothing that " + route.name() + " could name"));
    }

    Browser stranger() {
        return Browser.at("http://127.0.0.1:" + server.port());
    }

    /** Somebody's own browser. */
    Browser as(UUID person) {
        return browsers.computeIfAbsent(person, first -> {
            Browser browser = stranger();
            browser.setCookie("warmshelf", new SessionStore(place.database(), clock).open(person));
            return browser;
        });
    }

    /** A token of somebody's that lets a script do everything. */
    String token(UUID person) {
        return tokens.computeIfAbsent(person, first -> {
            String page = "/tokens";
            PageForm form = PageForm.on(page, as(person).get(page).body()).stream()
                    .filter(each -> each.action().equals(page))
                    .findFirst()
                    .orElseThrow();
            Map<String, String> fields = new HashMap<>(form.fields());
            fields.put("name", "cellar sensor");
            Matcher token = TOKEN.matcher(as(person).post(page, fields).body());
            assertThat(token.find()).isTrue();
            return token.group(1);
        });
    }

    @Override
    public void close() {
        server.close();
        place.close();
    }
}
