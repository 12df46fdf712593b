package warmshelf.web;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import java.time.Duration;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.slf4j.LoggerFactory;
import warmshelf.db.Database;
import warmshelf.testing.Answer;
import warmshelf.testing.TestGroup;

/** Each request has a name, by which what the log has of it is found. */
class RequestNameTest {
    private final ListAppender<ILoggingEvent> log = new ListAppender<>();

    @BeforeEach
    void listen() {
        root().addAppender(log);
        log.start();
    }

    @AfterEach
    void listenNoMore() {
        root().detachAppender(log);
    }

    private static Logger root() {
        return (Logger) LoggerFactory.getLogger(org.slf4j.Logger.ROOT_LOGGER_NAME);
    }

    @Test
    void a_fault_is_told_by_the_name_of_its_request() {
        try (TestGroup group = TestGroup.with(routes -> routes.get(
                "/broken",
                ctx -> {
                    throw new IllegalStateException("for a test");
                },
                Role.MEMBER))) {
            Answer answer = group.signedIn(group.member()).get("/broken");
            String name = answer.header("X-Request-Id");

            assertThat(name).matches("[0-9a-f]{8}");
            assertThat(answer.text()).contains(name);
            assertThat(lines("fault " + name)).isEqualTo(1);
            assertThat(named("fault " + name)).isEqualTo(name);
        }
    }

    @Test
    void a_question_that_takes_the_database_long_is_told_with_its_request_and_without_what_it_was_about() {
        AtomicReference<Database> database = new AtomicReference<>();
        try (TestGroup group = TestGroup.with(routes -> routes.get(
                "/slow",
                ctx -> {
                    Database asked = Objects.requireNonNull(database.get());
                    asked.slowAfter(Duration.ofNanos(1));
                    asked.sql()
                            .resultQuery("select name from site where name = ?", "the secret cellar")
                            .fetch();
                    asked.slowAfter(Duration.ofMinutes(5));
                    ctx.result("done");
                },
                Role.MEMBER))) {
            database.set(group.database());
            Answer answer = group.signedIn(group.member()).get("/slow");

            assertThat(named("slow: ")).isEqualTo(answer.header("X-Request-Id"));
            assertThat(lines("select name from site where name = ?")).isEqualTo(1);
            assertThat(lines("the secret cellar")).isZero();
            assertThat(group.database().slowQueries()).isEqualTo(1);
        }
    }

    private long lines(String words) {
        return log.list.stream()
                .filter(line -> line.getFormattedMessage().contains(words))
                .count();
    }

    private String named(String words) {
        return log.list.stream()
                .filter(line -> line.getFormattedMessage().contains(words))
                .map(line -> line.getMDCPropertyMap().getOrDefault(RequestName.IN_LOG, ""))
                .findFirst()
                .orElse("");
    }
}
