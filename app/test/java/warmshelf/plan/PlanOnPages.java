package warmshelf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static warmshelf.db.generated.Tables.SPACE_REQUEST;
import static warmshelf.db.generated.Tables.STAY;

import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jooq.DSLContext;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;

/** A cellar whose coordinator plans its season; what the tests of plans on pages share. */
abstract class PlanOnPages {
    Cellar cellar;

    @BeforeEach
    void open() {
        cellar = Cellar.open();
    }

    @AfterEach
    void close() {
        cellar.close();
    }

    String planned() {
        return planned(Map.of("seconds", "5", "startingNumber", "1"));
    }

    /** Starts a run and waits until its page says that it is over. */
    String planned(Map<String, String> fields) {
        Answer started = cellar.coordinator().post("/plans", fields);
        assertThat(started.status()).as(started.text()).isEqualTo(303);
        String plan = started.location();
        org.junit.jupiter.api.Assertions.assertTimeoutPreemptively(Duration.ofSeconds(60), () -> {
            while (!cellar.coordinator().get(plan).header("Refresh").isEmpty()) {
                Thread.onSpinWait();
            }
        });
        return plan;
    }

    Answer publish(String plan) {
        String body = cellar.coordinator().get(plan).body();
        Map<String, String> fields = body.contains("/publication\"")
                ? Cellar.hiddenFields(body, plan + "/publication")
                : Map.of("version", "1");
        return cellar.coordinator().post(plan + "/publication", fields);
    }

    /** What the form of a request in a plan holds. */
    Map<String, String> typed(String editor) {
        Answer page = cellar.coordinator().get(editor);
        Map<String, String> fields = new HashMap<>();
        for (String name : List.of("version", "from", "celsius")) {
            fields.put(name, String.valueOf(page.typed(name)));
        }
        String body = page.body();
        fields.put(
                "place", body.contains("\" selected") || body.contains("\" checked") ? chosen(body, "place") : "M1/1");
        fields.put("quarter", chosen(body, "quarter"));
        return fields;
    }

    static String chosen(String body, String name) {
        java.util.regex.Matcher radio = java.util.regex.Pattern.compile(
                        "name=\"" + name + "\" value=\"([^\"]+)\"[^>]* checked")
                .matcher(body);
        return radio.find() ? radio.group(1) : name.equals("place") ? "M1/1" : "1";
    }

    DSLContext sql() {
        return cellar.group().database().sql();
    }

    int stays() {
        return sql().fetchCount(STAY, STAY.FROM_DAY.lt(STAY.TO_DAY));
    }

    String state(String sowing) {
        return sql().select(SPACE_REQUEST.STATE)
                .from(SPACE_REQUEST)
                .where(SPACE_REQUEST.SOWING_ID.eq(UUID.fromString(sowing)))
                .fetchSingle(SPACE_REQUEST.STATE);
    }
}
