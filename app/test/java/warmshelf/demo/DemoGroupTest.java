package warmshelf.demo;

import static warmshelf.db.generated.Tables.ENTRY;
import static warmshelf.db.generated.Tables.MAT;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.QUARTER_DAY;
import static warmshelf.db.generated.Tables.RACK;
import static warmshelf.db.generated.Tables.SITE;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.SPACE_REQUEST;
import static warmshelf.db.generated.Tables.STAY;
import static warmshelf.db.generated.Tables.TRIAL;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.assertj.core.api.SoftAssertions;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import warmshelf.check.TodayStore;
import warmshelf.crop.Method;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.sowing.Entry;
import warmshelf.sowing.EntryStore;
import warmshelf.sowing.History;
import warmshelf.sowing.Progress;
import warmshelf.sowing.Sowing;
import warmshelf.sowing.SowingPlanner;
import warmshelf.sowing.SowingStage;
import warmshelf.testing.MutableClock;
import warmshelf.testing.TestDatabase;
import warmshelf.timeline.Step;
import warmshelf.timeline.Timeline;
import warmshelf.timeline.Verdict;

class DemoGroupTest {
    @ParameterizedTest
    @ValueSource(strings = {"2026-05-05T12:00:00Z", "2027-05-08T16:30:00Z", "2028-05-11T23:00:00Z"})
    void the_demo_stands_complete_and_can_be_believed_on_whatever_day_it_pretends(Instant now) {
        try (TestDatabase place = TestDatabase.h2()) {
            DemoGroup.fill(place.database(), now);

            LocalDate today = LocalDate.ofInstant(now, DemoGroup.ZONE);
            SoftAssertions check = new SoftAssertions();
            countsAreAsPromised(check, place.database().sql());
            everyStageIsThereAndFollowsFromItsEntries(check, place.database().sql(), now);
            nobodyIsDoubleBooked(check, place.database().sql());
            matsAreWellUsed(check, place.database().sql(), today);
            entriesReachFromSixWeeksAgoUntilToday(check, place.database().sql(), now);
            assertThatSomeoneIsOnDuty(check, new TodayStore(place.database()), today);
            nothingTenderMeetsFrostAndAllCanRipen(check, place.database(), now);
            check.assertAll();
        }
    }

    private static void countsAreAsPromised(SoftAssertions check, DSLContext sql) {
        check.assertThat(sql.fetchCount(MEMBER)).isEqualTo(14);
        check.assertThat(sql.fetchCount(MEMBER, MEMBER.ROLE.eq("coordinator"))).isEqualTo(2);
        check.assertThat(sql.fetchCount(SITE)).isEqualTo(2);
        check.assertThat(sql.fetchCount(RACK)).isEqualTo(5);
        check.assertThat(sql.fetchCount(MAT)).isEqualTo(12);
        check.assertThat(sql.fetchCount(TRIAL)).isEqualTo(2);
        check.assertThat(sql.fetchCount(SOWING)).isBetween(55, 80);
        check.assertThat(sql.fetchCount(sql.selectDistinct(SOWING.CROP_ID).from(SOWING)))
                .isGreaterThanOrEqualTo(20);
        check.assertThat(sql.select(SPACE_REQUEST.STATE).from(SPACE_REQUEST).fetchSet(SPACE_REQUEST.STATE))
                .containsExactlyInAnyOrder("waiting", "placed", "refused", "withdrawn");
        check.assertThat(sql.select(SOWING.METHOD).from(SOWING).fetchSet(SOWING.METHOD))
                .containsExactlyInAnyOrder("cells", "bag");
    }

    private static void everyStageIsThereAndFollowsFromItsEntries(SoftAssertions check, DSLContext sql, Instant now) {
        check.assertThat(sql.select(SOWING.STAGE).from(SOWING).fetchSet(SOWING.STAGE))
                .containsExactlyInAnyOrderElementsOf(Arrays.stream(SowingStage.values())
                        // comes with the end of the season
                        .filter(stage -> stage != SowingStage.NOT_RECORDED)
                        .map(SowingStage::word)
                        .toList());
        EntryStore entries = new EntryStore(new Audit(new MutableClock(now)));
        sql.selectFrom(SOWING).where(SOWING.STAGE.ne("withdrawn")).forEach(row -> {
            List<Entry> told = entries.ofSowing(sql, row.getId());
            Progress progress = Progress.of(Method.named(row.getMethod()), row.getSeeds(), told);
            check.assertThat(row.getStage())
                    .as(row.getCropId())
                    .isEqualTo(progress.stage().word());
            check.assertThat(progress.sprouted()).as(row.getCropId()).isLessThanOrEqualTo(row.getSeeds());
        });
    }

    /**
     * The average last freeze at Duluth's airport is in the third week of May, and one spring in ten has one in June (National
     * Weather Service, from memory), so nobody there has a tender plant outdoors by 11 May.
     */
    private static void nothingTenderMeetsFrostAndAllCanRipen(SoftAssertions check, Database database, Instant now) {
        DemoHouse house = DemoHouse.on(database, new MutableClock(now));
        for (History history : house.histories().underWay()) {
            Sowing sowing = history.sowing();
            boolean tender = sowing.crop().hardiness().frostKills();
            LocalDate day = LocalDate.ofInstant(now, DemoGroup.ZONE);
            Timeline timeline = house.planner()
                    .timeline(sowing, history.progress(), SowingPlanner.USUAL_MAT_C, day)
                    .orElseThrow();
            String what = sowing.crop().name() + ", " + sowing.grower().name();
            check.assertThat(timeline.verdict()).as(what).isIn(Verdict.IN_TIME, Verdict.HURRY);
            if (tender) {
                check.assertThat(history.progress().stage())
                        .as(what)
                        .isNotIn(SowingStage.HARDENING_OFF, SowingStage.PLANTED_OUT);
                timeline.step(Step.PLANT_OUT)
                        .ifPresent(step ->
                                check.assertThat(step.ideal()).as(what).isAfter(LocalDate.of(day.getYear(), 5, 15)));
            }
        }
    }

    /** Counted from the stays alone, without the table whose key forbids it. */
    private static void nobodyIsDoubleBooked(SoftAssertions check, DSLContext sql) {
        var other = STAY.as("other");
        int clashes = sql.fetchCount(sql.selectOne()
                .from(STAY)
                .join(other)
                .on(
                        other.PLACE_ID.eq(STAY.PLACE_ID),
                        other.ID.gt(STAY.ID),
                        other.FROM_DAY.lt(STAY.TO_DAY),
                        other.TO_DAY.gt(STAY.FROM_DAY),
                        other.FROM_DAY.lt(other.TO_DAY),
                        STAY.FROM_DAY.lt(STAY.TO_DAY),
                        other.FIRST_QUARTER.lt(STAY.FIRST_QUARTER.plus(STAY.QUARTERS)),
                        STAY.FIRST_QUARTER.lt(other.FIRST_QUARTER.plus(other.QUARTERS))));
        check.assertThat(clashes).as("stays that overlap").isZero();
    }

    private static void matsAreWellUsed(SoftAssertions check, DSLContext sql, LocalDate today) {
        int quarters = 4 * sql.select(DSL.sum(MAT.PLACES)).from(MAT).fetchSingle(0, Integer.class);
        int taken = sql.fetchCount(QUARTER_DAY, QUARTER_DAY.KIND.eq("mat").and(QUARTER_DAY.ON_DAY.eq(today)));
        check.assertThat(100 * taken / quarters)
                .as("percent of the mats' quarters")
                .isBetween(60, 80);
        check.assertThat(sql.selectDistinct(QUARTER_DAY.CELSIUS)
                        .from(QUARTER_DAY)
                        .where(QUARTER_DAY.ON_DAY.eq(today), QUARTER_DAY.KIND.eq("mat"))
                        .fetch(QUARTER_DAY.CELSIUS))
                .contains(22.0, 30.0)
                .hasSizeGreaterThanOrEqualTo(6);
    }

    private static void entriesReachFromSixWeeksAgoUntilToday(SoftAssertions check, DSLContext sql, Instant now) {
        LocalDate today = LocalDate.ofInstant(now, DemoGroup.ZONE);
        var days = sql.select(DSL.min(ENTRY.SEEN_ON), DSL.max(ENTRY.SEEN_ON), DSL.max(ENTRY.SEEN_AT))
                .from(ENTRY)
                .fetchSingle();
        check.assertThat(days.value1()).isBefore(today.minusWeeks(6).plusDays(1));
        check.assertThat(days.value2()).isEqualTo(today);
        check.assertThat(days.value3().toInstant()).isBeforeOrEqualTo(now);
        check.assertThat(sql.fetchCount(ENTRY, ENTRY.SUPERSEDES.isNotNull()))
                .as("corrections")
                .isEqualTo(1);
        check.assertThat(sql.fetchCount(ENTRY, ENTRY.PROBLEM.isNotNull()))
                .as("problems")
                .isGreaterThanOrEqualTo(5);
    }

    private static void assertThatSomeoneIsOnDuty(SoftAssertions check, TodayStore duties, LocalDate today) {
        today.minusWeeks(3)
                .datesUntil(today.plusWeeks(2))
                .forEach(day ->
                        check.assertThat(duties.onDuty(day)).as("%s", day).hasSize(2));
    }
}
