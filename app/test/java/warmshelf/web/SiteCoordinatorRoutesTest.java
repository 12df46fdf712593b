package warmshelf.web;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.SITE;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.impl.DSL;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestMethodOrder;
import warmshelf.shelf.AddressedSiteStore;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;

/** Every route of coordinators, asked by a coordinator of one site: a route that comes later has to be told whose it is. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class SiteCoordinatorRoutesTest {
    private static final Field<UUID> ID = DSL.field(DSL.name("id"), UUID.class);

    private OwnedThings things;
    private DSLContext sql;
    private AddressedSiteStore sites;
    private UUID bench;
    private Browser browser;

    /** A route, and what it is for. */
    private record Line(String method, String address, String use) {
        String name() {
            return method + " " + address;
        }
    }

    @BeforeAll
    void appoint() {
        things = new OwnedThings();
        sql = things.database().sql();
        sites = new AddressedSiteStore(sql);
        bench = sql.select(SITE.ID)
                .from(SITE)
                .where(SITE.NAME.eq("Greenhouse bench room"))
                .fetchSingle(SITE.ID);
        Answer appointed = things.as(things.coordinator())
                .post("/people/" + things.member() + "/sites", Map.of("site", bench.toString()));
        assertThat(appointed.status()).as(appointed.text()).isEqualTo(303);
        takeOut("M9");
        browser = things.as(things.member());
    }

    private void takeOut(String mat) {
        UUID id = sql.select(MAT.ID).from(MAT).where(MAT.NAME.eq(mat)).fetchSingle(MAT.ID);
        Answer out = things.as(things.coordinator())
                .post(
                        "/plans/out-of-service",
                        Map.of(
                                "mat",
                                id.toString(),
                                "first",
                                "2027-05-10",
                                "last",
                                "2027-05-12",
                                "reason",
                                "The cord is worn"));
        assertThat(out.status()).as(out.text()).isEqualTo(303);
    }

    @AfterAll
    void close() {
        things.close();
    }

    @Test
    @Order(1)
    void every_route_of_coordinators_is_in_the_list_and_no_other() throws IOException {
        Set<String> there = things.rights().stream()
                .filter(right -> right.role() == Role.COORDINATOR || right.role() == Role.SITE_COORDINATOR)
                .filter(right -> !right.method().equals("HEAD"))
                .map(right -> right.method() + " " + right.path())
                .collect(Collectors.toCollection(TreeSet::new));

        assertThat(lines()).extracting(Line::name).containsExactlyInAnyOrderElementsOf(there);
    }

    @Test
    @Order(2)
    void what_concerns_the_whole_group_or_another_site_is_refused_with_a_sentence_and_nothing_changes()
            throws IOException {
        Map<String, Long> before = things.rows();
        List<String> let = new ArrayList<>();
        for (Line line : lines()) {
            if (line.use().equals("own")) {
                continue;
            }
            boolean ofTheGroup = line.use().equals("group");
            Answer answer = ask(line, ofTheGroup ? UUID.randomUUID() : named(line, false));
            String sentence = ofTheGroup ? "This concerns the whole group" : "at a site that you do not coordinate";
            if (answer.status() != 403 || !answer.text().contains(sentence)) {
                let.add("%d at %s".formatted(answer.status(), line.name()));
            }
        }

        assertThat(let).isEmpty();
        before.keySet().removeAll(List.of("member_session", "submission"));
        assertThat(things.rows()).containsAllEntriesOf(before);
    }

    /** Last, since some of it is done; forms are empty, so that most are told what is missing. */
    @Test
    @Order(3)
    void what_is_at_their_site_or_keeps_to_it_lets_them_in() throws IOException {
        List<String> kept = new ArrayList<>();
        for (Line line : lines()) {
            if (line.use().equals("group")) {
                continue;
            }
            int status = ask(line, line.use().equals("own") ? UUID.randomUUID() : named(line, true))
                    .status();
            if (status == 401 || status == 403 || status == 404 || status >= 500) {
                kept.add("%d at %s".formatted(status, line.name()));
            }
        }

        assertThat(kept).isEmpty();
    }

    private Answer ask(Line line, UUID id) {
        String path = line.address().replaceAll("\\{[^}]*}", id.toString());
        return line.method().equals("POST") ? browser.post(path, Map.of()) : browser.get(path);
    }

    /** A thing that the address can name, at their site alone, or not. */
    private UUID named(Line line, boolean theirs) {
        NamingRoute route = NamingRoute.all().stream()
                .filter(each -> each.name().equals(line.name()))
                .findFirst()
                .orElseThrow(() -> new AssertionError(line.name() + " names nothing that is known"));
        return sql.select(ID).from(DSL.table(DSL.name(route.table()))).orderBy(ID).fetch(ID).stream()
                .filter(id -> {
                    Set<UUID> at = sites.of(line.address(), id);
                    return !at.isEmpty() && theirs == at.equals(Set.of(bench));
                })
                .findFirst()
                .orElseThrow(() -> new AssertionError("nothing that " + line.name() + " could name"));
    }

    private static List<Line> lines() throws IOException {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .setCommentMarker('#')
                .get();
        try (BufferedReader text = Files.newBufferedReader(Path.of("app/test/resources/routes-of-coordinators.csv"))) {
            return format.parse(text).stream()
                    .map(row -> new Line(row.get("method"), row.get("address"), row.get("for")))
                    .toList();
        }
    }
}
