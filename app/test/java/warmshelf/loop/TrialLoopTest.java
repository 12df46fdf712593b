package warmshelf.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.MEMBER;
import static warmshelf.db.generated.Tables.SOWING;
import static warmshelf.db.generated.Tables.STAY;
import static warmshelf.db.generated.Tables.TRIAL_SOWING;

import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import warmshelf.seed.LotStore;
import warmshelf.seed.NewLot;
import warmshelf.testing.TestGroup;

/** A trial from its declaration to what it comes to, through the pages. */
class TrialLoopTest {
    private static final int SEEDS = 12;

    @Test
    void a_warmer_mat_is_tried_looked_at_alike_and_found_faster() {
        try (Cellar cellar = Cellar.open()) {
            Map<String, String> ways = declare(cellar);
            String cooler = ways.getOrDefault("A", "");
            String warmer = ways.getOrDefault("B", "");
            assertThat(cellar.placeAsSuggested(cooler).status()).isEqualTo(303);
            assertThat(cellar.placeAsSuggested(warmer).status()).isEqualTo(303);
            assertThat(cellar.coordinator()
                            .get("/stays/" + stayOf(cellar, cooler))
                            .text())
                    .contains("Lantern Row · trial 1 way A");
            sow(cellar, cooler);
            sow(cellar, warmer);

            for (int day = 2; day <= 23; day++) {
                cellar.group().clock().advance(Duration.ofDays(1));
                String round = cellar.member().get("/today").text();
                assertThat(round.contains("trial 1 way A")).as("day " + day).isEqualTo(round.contains("trial 1 way B"));
                count(cellar, cooler, Math.min(SEEDS - 1, Math.max(0, 2 * (day - 11))));
                count(cellar, warmer, Math.min(SEEDS - 1, Math.max(0, 3 * (day - 6))));
                if (day == 9) {
                    assertThat(report(cellar))
                            .contains("Not finished: day 8 of about")
                            .doesNotContain("p = ");
                }
            }

            assertThat(report(cellar))
                    .contains("With 27 °C it was about")
                    .contains("faster than with 21 °C")
                    .contains("Shares did not differ beyond chance: 11 of 12")
                    .contains("One tray or bag of a way")
                    .doesNotContain("were not looked at on the same days")
                    .doesNotContain("Nobody dealt the seeds out");
        }
    }

    @Test
    void roots_in_the_bag_are_told_while_its_seedlings_are_not_counted_yet() {
        try (Cellar cellar = Cellar.open()) {
            Map<String, String> ways = declare(cellar, Map.of("kind", "method"));
            String bag = ways.getOrDefault("B", "");
            assertThat(cellar.placeAsSuggested(bag).status()).isEqualTo(303);
            sow(cellar, bag);
            assertThat(report(cellar)).contains("The bag: not counted yet.");
            cellar.group().clock().advance(Duration.ofDays(6));

            count(cellar, bag, 3);

            assertThat(report(cellar))
                    .contains("The bag: 3 roots show; its seedlings count once they are up in their cells.");
        }
    }

    private static UUID stayOf(Cellar cellar, String sowing) {
        return cellar.group()
                .database()
                .sql()
                .select(STAY.ID)
                .from(STAY)
                .where(STAY.SOWING_ID.eq(UUID.fromString(sowing)))
                .orderBy(STAY.FROM_DAY)
                .fetch(STAY.ID)
                .get(0);
    }

    private static String report(Cellar cellar) {
        String list = cellar.member().get("/trials").body();
        return cellar.member()
                .get(Cellar.first(list, "href=\"(/trials/[0-9a-f-]{36})\""))
                .text();
    }

    private static Map<String, String> declare(Cellar cellar) {
        return declare(cellar, Map.of("kind", "warmth", "degreesA", "21", "degreesB", "27"));
    }

    private static Map<String, String> declare(Cellar cellar, Map<String, String> compared) {
        TestGroup group = cellar.group();
        UUID owner = group.member().id();
        UUID lot = new LotStore(group.database(), group.audit())
                .add(new NewLot("pepper", "Lantern Row", 2026, 60, owner, false, ""), owner);
        group.database().sql().update(MEMBER).set(MEMBER.TEMPERATURE_UNIT, "C").execute();
        Map<String, String> typed = new HashMap<>(compared);
        typed.putAll(Map.of("lot", lot.toString(), "blocks", "1"));
        typed.put("seedsEach", String.valueOf(SEEDS));
        typed.put("sowOn", TestGroup.TODAY.plusDays(1).toString());
        assertThat(cellar.member().post("/trials", typed).status()).isEqualTo(303);
        Map<String, String> ways = new HashMap<>();
        group.database()
                .sql()
                .select(TRIAL_SOWING.LETTER, SOWING.ID)
                .from(TRIAL_SOWING)
                .join(SOWING)
                .on(SOWING.ID.eq(TRIAL_SOWING.SOWING_ID))
                .forEach(row -> ways.put(row.value1(), row.value2().toString()));
        assertThat(ways).hasSize(2);
        return ways;
    }

    private static void sow(Cellar cellar, String sowing) {
        if (cellar.group().clock().instant().equals(TestGroup.MORNING)) {
            cellar.group().clock().advance(Duration.ofDays(1));
        }
        assertThat(cellar.tick(sowing, Map.of("step", "sown")).status()).isEqualTo(303);
    }

    private static void count(Cellar cellar, String sowing, int soFar) {
        assertThat(cellar.tick(sowing, Map.of("step", "look", "sprouted", String.valueOf(soFar)))
                        .status())
                .isEqualTo(303);
    }
}
