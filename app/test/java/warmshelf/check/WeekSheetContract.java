package warmshelf.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static warmshelf.db.generated.Tables.AUDIT_LINE;
import static warmshelf.db.generated.Tables.DUTY;
import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.SITE;
import static warmshelf.db.generated.Tables.STAY;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jooq.Record;
import org.jooq.impl.DSL;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestDatabase;
import warmshelf.testing.TestGroup;

/** A round that was walked on paper and typed in, on every database: a tray of peppers sown the week before, on a Sunday evening. */
abstract class WeekSheetContract {
    private Cellar cellar;
    private TestGroup group;
    private Browser tom;
    private String sowing;
    private UUID site;
    private UUID mat;
    private LocalDate monday;

    protected abstract TestDatabase database();

    @BeforeEach
    void walkForAWeek() {
        group = TestGroup.open(database());
        cellar = Cellar.in(group);
        Map<String, String> asked = Cellar.peppers();
        asked.put("after", "light");
        sowing = cellar.ask(asked);
        cellar.placeAsSuggested(sowing);
        LocalDate begins = group.database()
                .sql()
                .select(DSL.min(STAY.FROM_DAY))
                .from(STAY)
                .where(STAY.SOWING_ID.eq(UUID.fromString(sowing)))
                .fetchSingle()
                .value1();
        evening(begins);
        assertThat(tom.post("/sowings/" + sowing + "/entries", Map.of("step", "sown"))
                        .status())
                .isEqualTo(303);
        monday = WeekSheet.week(begins.plusDays(7)).get(0);
        evening(monday.plusDays(6));
        site = group.database().sql().fetchValue(SITE.ID);
        mat = group.database().sql().fetchValue(MAT.ID, MAT.NAME.eq("M1"));
    }

    @AfterEach
    void close() {
        // null where the database is missing and the test is skipped
        if (cellar != null) {
            cellar.close();
        }
    }

    @Test
    void the_sheet_says_where_what_whose_and_how_many_and_who_is_down_to_look() {
        duty(monday, group.onDuty().id());

        Answer sheet = tom.get(sheet());

        assertThat(sheet.status()).isEqualTo(200);
        assertThat(sheet.text())
                .contains("Hall cellar · North rack")
                .contains("Priya")
                .contains("Pepper, sweet and mild hot · Lantern Row")
                .containsPattern("Tom (?!Okafor)")
                .contains("Look at the cells")
                .contains("0 of ")
                .contains("Dry hands at plugs and thermostats")
                .contains("Thermometer, set to");
        assertThat(sheet.body()).contains("<rect x=\"1\" y=\"1\"");
    }

    @Test
    void what_lies_at_a_members_home_is_counted_at_the_door_and_stands_on_their_own_sheet() {
        assertThat(tom.get(sheet()).text()).doesNotContain("members’ homes");
        Map<String, String> unheated = new HashMap<>(Cellar.peppers());
        unheated.putAll(Map.of("variety", "Kitchen Row", "heat", "room"));
        String asked = tom.post("/sowings", unheated).location();
        assertThat(tom.get(sheet()).text()).doesNotContain("members’ homes");
        tom.post(asked + "/entries", Map.of("step", "sown", "seenOn", monday.toString()));
        // the notice of the tick, which names the sowing, stands on the next page only
        tom.get("/today");

        Answer door = tom.get(sheet());

        assertThat(door.text())
                .contains("Not on this sheet: 1 sowing at members’ homes, looked at there.")
                .doesNotContain("Kitchen Row");
        assertThat(tom.get(typing()).text()).doesNotContain("Kitchen Row");
        assertThat(tom.get("/paper/season").text()).containsPattern("Kitchen Row .*at home");
    }

    @Test
    void what_is_typed_in_is_kept_under_the_days_on_which_it_was_seen_and_names_who_looked_and_who_typed() {
        Answer kept = type(Map.of(
                cell(0),
                "n",
                cell(1),
                "2",
                cell(2),
                "2 dry",
                cell(4),
                "5",
                cell(5),
                "x",
                cell(6),
                "7",
                "note/" + sowing,
                "corner was dusty"));

        assertThat(kept.status()).as(kept.text()).isEqualTo(303);
        assertThat(looks())
                .extracting(
                        row -> row.get(ENTRY.SEEN_ON),
                        row -> row.get(ENTRY.SPROUTED),
                        row -> row.get(ENTRY.PROBLEM),
                        row -> row.get(ENTRY.NOTE),
                        row -> row.get(ENTRY.MADE_BY),
                        row -> row.get(ENTRY.TYPED_BY))
                .containsExactly(
                        tuple(monday, 0, null, "", priya(), tomsId()),
                        tuple(monday.plusDays(1), 2, null, "", priya(), tomsId()),
                        tuple(monday.plusDays(2), 2, "dry", "corner was dusty", priya(), tomsId()),
                        tuple(monday.plusDays(4), 5, null, "", priya(), tomsId()),
                        tuple(monday.plusDays(5), 5, null, "", priya(), tomsId()),
                        tuple(monday.plusDays(6), 7, null, "", priya(), tomsId()));
        assertThat(group.database()
                        .sql()
                        .fetchCount(AUDIT_LINE, AUDIT_LINE.MEMBER_ID.eq(tomsId()), AUDIT_LINE.ACTION.eq("enter look")))
                .isEqualTo(6);
        assertThat(tom.get(kept.location()).text()).contains("6 entries were kept.");
        assertThat(tom.get("/sowings/" + sowing).text())
                .contains("looked by Priya, 2 so far (typed in from paper by Tom)");
    }

    @Test
    void who_types_in_their_own_looks_is_not_named_twice() {
        Map<String, String> fields = new HashMap<>(Map.of(cell(1), "2"));
        fields.put("by/" + monday.plusDays(1), tomsId().toString());

        assertThat(type(fields).status()).isEqualTo(303);
        assertThat(looks()).singleElement().satisfies(row -> {
            assertThat(row.get(ENTRY.MADE_BY)).isEqualTo(tomsId());
            assertThat(row.get(ENTRY.TYPED_BY)).isNull();
        });
    }

    @Test
    void cells_that_cannot_be_taken_come_back_with_their_reasons_and_all_others_are_kept() {
        Answer again = type(Map.of(cell(1), "4", cell(2), "3", cell(3), "many", cell(4), "99", cell(5), "6"));

        assertThat(again.status()).isEqualTo(422);
        assertThat(again.text())
                .contains("2 entries are kept. 3 could not be taken and are still below.")
                .contains("'many' cannot be read. A count, n for nothing new, d for done, or a problem")
                .contains("a whole number from 0 to");
        assertThat(again.typed(cell(2))).isEqualTo("3");
        assertThat(again.typed(cell(3))).isEqualTo("many");
        assertThat(again.typed(cell(4))).isEqualTo("99");
        assertThat(again.body()).contains("aria-describedby=\"problem-" + cell(3) + "\"");
        assertThat(again.typed(cell(1))).as("kept, so it stands below the cell").isNullOrEmpty();
        assertThat(looks()).extracting(row -> row.get(ENTRY.SPROUTED)).containsExactly(4, 6);
    }

    @Test
    void a_sheet_that_is_sent_twice_counts_once_and_another_word_in_a_kept_cell_is_another_look() {
        Map<String, String> fields = new HashMap<>(Map.of(cell(1), "2", cell(2), "3 mould", matCell(1), "79"));
        fields.put("page", UUID.randomUUID().toString());

        type(fields);
        assertThat(type(fields).status()).isEqualTo(303);
        assertThat(looks()).hasSize(2);
        assertThat(readings()).hasSize(1);

        fields.put(cell(1), "1");
        assertThat(type(fields).text()).contains("1");
        fields.put(cell(1), "3");
        type(fields);
        assertThat(looks()).extracting(row -> row.get(ENTRY.SPROUTED)).containsExactly(2, 3, 3);
    }

    @Test
    void a_thermometer_is_typed_in_in_the_readers_unit_under_its_day() {
        assertThat(type(Map.of(matCell(2), "79", matCell(3), "78,5")).status()).isEqualTo(303);

        assertThat(readings())
                .extracting(
                        row -> row.get(ENTRY.SEEN_ON),
                        row -> row.get(ENTRY.CELSIUS).doubleValue(),
                        row -> row.get(ENTRY.MADE_BY))
                .containsExactly(tuple(monday.plusDays(2), 26.1, priya()), tuple(monday.plusDays(3), 25.8, priya()));
    }

    @Test
    void a_thermometer_nobody_can_believe_a_day_to_come_and_a_stranger_who_looked_are_refused() {
        evening(monday.plusDays(2));
        Map<String, String> fields = new HashMap<>(Map.of(matCell(1), "790", cell(4), "3", cell(0), "1"));
        fields.put("by/" + monday, UUID.randomUUID().toString());

        Answer again = type(fields);

        assertThat(again.status()).isEqualTo(422);
        assertThat(again.text())
                .contains("mat M1, ")
                .contains("The temperature in °F was '790'")
                .contains("which is still to come")
                .contains("Please choose from the list who looked on");
        assertThat(looks()).isEmpty();
        assertThat(readings()).isEmpty();
    }

    @Test
    void done_means_the_step_that_was_due_and_one_that_asks_for_a_place_is_entered_where_it_is_chosen() {
        type(Map.of(cell(1), "9"));

        assertThat(type(Map.of(cell(3), "d")).text()).contains("asks where the tray goes");
        assertThat(type(Map.of(cell(0), "d")).text()).contains("no step was due then");
    }

    @Test
    void nothing_typed_is_lost_where_the_sheet_knows_its_cell_no_more() {
        String stray = "s/" + UUID.randomUUID() + "/" + monday;

        Answer again = type(Map.of(stray, "17", cell(1), "2"));

        assertThat(again.status()).isEqualTo(422);
        assertThat(again.text()).contains("'17' was typed at something that is not on this week's sheet any more.");
        assertThat(looks()).hasSize(1);
    }

    @Test
    void the_page_for_typing_keeps_the_order_of_the_paper_though_a_phone_was_quicker() {
        String before = Cellar.all(tom.get(sheet()).body(), "<strong>([^<]+)</strong> <span")
                .toString();
        tom.post(
                "/sowings/" + sowing + "/entries",
                Map.of(
                        "step",
                        "look",
                        "sprouted",
                        "9",
                        "seenOn",
                        monday.plusDays(1).toString()));
        tom.post(
                "/sowings/" + sowing + "/entries",
                Map.of("step", "gave-up", "seenOn", monday.plusDays(4).toString()));

        String after = Cellar.all(tom.get(typing()).body(), "<strong>([^<]+)</strong> <span")
                .toString();

        assertThat(after).isEqualTo(before).contains("Lantern Row");
        assertThat(tom.get(typing()).text()).contains("9, Tom");
    }

    @Test
    void an_empty_sheet_says_that_nothing_was_kept_and_bad_addresses_are_refused() {
        assertThat(tom.get(type(Map.of()).location()).text()).contains("Nothing was typed, so nothing was kept.");
        assertThat(tom.get("/paper/round?day=tomorrow").status()).isEqualTo(400);
        assertThat(tom.get("/paper/round?site=" + UUID.randomUUID()).status()).isEqualTo(404);
        assertThat(group.stranger().get("/paper/round").status()).isNotEqualTo(200);
    }

    private void evening(LocalDate day) {
        group.clock().set(day.plusDays(1).atTime(1, 0).toInstant(ZoneOffset.UTC));
        tom = group.signedIn(group.member());
    }

    private Answer type(Map<String, String> cells) {
        Map<String, String> fields = new HashMap<>();
        WeekSheet.week(monday).forEach(day -> fields.put("by/" + day, priya().toString()));
        fields.put("page", UUID.randomUUID().toString());
        fields.putAll(cells);
        fields.put("site", site.toString());
        fields.put("day", monday.toString());
        return tom.post("/paper/round", fields);
    }

    private String cell(int day) {
        return "s/%s/%s".formatted(sowing, monday.plusDays(day));
    }

    private String matCell(int day) {
        return "m/%s/%s".formatted(mat, monday.plusDays(day));
    }

    private String sheet() {
        return "/paper/round?site=%s&day=%s".formatted(site, monday);
    }

    private String typing() {
        return "/paper/round/typing?site=%s&day=%s".formatted(site, monday);
    }

    private void duty(LocalDate day, UUID member) {
        group.database()
                .sql()
                .insertInto(DUTY)
                .set(DUTY.SITE_ID, site)
                .set(DUTY.ON_DAY, day)
                .set(DUTY.MEMBER_ID, member)
                .set(DUTY.MADE_BY, member)
                .set(DUTY.MADE_AT, group.audit().now())
                .execute();
    }

    private UUID priya() {
        return group.onDuty().id();
    }

    private UUID tomsId() {
        return group.member().id();
    }

    private List<Record> looks() {
        return rows(ENTRY.SOWING_ID.eq(UUID.fromString(sowing)).and(ENTRY.STEP.eq("look")));
    }

    private List<Record> readings() {
        return rows(ENTRY.MAT_ID.isNotNull());
    }

    private List<Record> rows(org.jooq.Condition which) {
        return List.copyOf(group.database()
                .sql()
                .select(ENTRY.asterisk())
                .from(ENTRY)
                .where(which)
                .orderBy(ENTRY.SEEN_ON, ENTRY.KEPT_ORDER)
                .fetch());
    }
}
