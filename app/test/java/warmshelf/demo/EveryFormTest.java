package warmshelf.demo;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.http.HttpRequest;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.slf4j.LoggerFactory;
import warmshelf.Server;
import warmshelf.Settings;
import warmshelf.check.TodayStore;
import warmshelf.db.Audit;
import warmshelf.group.LinkStore;
import warmshelf.group.MemberStore;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.EveryWrite;
import warmshelf.testing.FormFiller;
import warmshelf.testing.MutableClock;
import warmshelf.testing.PageForm;
import warmshelf.testing.PageWalk;
import warmshelf.testing.TestDatabase;

/**
 * Every form that stands on a page of the demo group, sent as no page sends it: without a field, with nonsense in one, in a
 * charset that nobody knows, cut off. None of that is a fault of ours, so none is answered or logged as one.
 */
class EveryFormTest {
    private static final Instant NOW = Instant.parse("2027-05-08T17:00:00Z");
    private static final LocalDate TODAY = LocalDate.of(2027, 5, 8);
    private static final int EACH_KIND = 3;
    private static final List<String> NONSENSE =
            List.of("", "x", "-1", "99999999999999999999", "\u0000", "a".repeat(3000));
    private static final String BROKEN_PART =
            "--x\r\nContent-Disposition: form-data; name=\"file\"; filename=\"a.csv\"\r\n\r\n1,2";

    private static final ListAppender<ILoggingEvent> LOG = new ListAppender<>();

    private static TestDatabase place;
    private static Server server;
    private static List<Sample> samples;

    /** One form with somebody who may send it. */
    private record Sample(Browser browser, String address, PageForm form) {}

    @BeforeAll
    static void open() {
        place = TestDatabase.h2();
        DemoGroup.fill(place.database(), NOW);
        MutableClock clock = new MutableClock(NOW);
        Audit audit = new Audit(clock);
        server = Server.start(Settings.onFreePort(Path.of("unused")), place.database(), clock);
        List<DemoLinks.SignIn> links = new DemoLinks(
                        new MemberStore(place.database(), audit), new LinkStore(place.database(), audit))
                .make(new TodayStore(place.database()).onDuty(TODAY));
        samples = new ArrayList<>();
        addFormsOf(Browser.at(address()), List.of("/sign-in", links.get(0).path()));
        addFormsOf(signedIn(links.get(1)), PageWalk.EVERYWHERE);
        addFormsOf(signedIn(links.get(0)), PageWalk.EVERYWHERE);
        root().addAppender(LOG);
        LOG.start();
    }

    private static Logger root() {
        return (Logger) LoggerFactory.getLogger(org.slf4j.Logger.ROOT_LOGGER_NAME);
    }

    private static String address() {
        return "http://127.0.0.1:" + server.port();
    }

    private static Browser signedIn(DemoLinks.SignIn link) {
        Browser browser = Browser.at(address());
        assertThat(browser.post(link.path()).status()).isEqualTo(303);
        return browser;
    }

    /** Forms that go to one address with other fields are another form. */
    private static void addFormsOf(Browser browser, List<String> starts) {
        FormFiller filler = new FormFiller(TODAY, DemoGroup.PASSPHRASE);
        Set<String> met = new HashSet<>();
        EveryWrite.of(server.rights())
                .sorted(PageWalk.from(browser, EACH_KIND, starts).forms())
                .forEach((address, forms) -> {
                    for (PageForm form : forms) {
                        // signing out would end the session that the other forms need
                        if (!address.equals("/sign-out") && met.add(address + kindsOf(form))) {
                            PageForm filled =
                                    new PageForm(form.page(), form.action(), filler.filled(form), form.uploads());
                            samples.add(new Sample(browser, address, filled));
                        }
                    }
                });
    }

    private static Set<String> kindsOf(PageForm form) {
        Set<String> kinds = new TreeSet<>();
        form.fields().keySet().forEach(field -> kinds.add(PageWalk.kind(field)));
        return kinds;
    }

    @AfterAll
    static void close() {
        root().detachAppender(LOG);
        server.close();
        place.close();
    }

    @BeforeEach
    void forgetWhatWasLogged() {
        LOG.list.clear();
    }

    @AfterEach
    void nothingIsLoggedAsAFault() {
        assertThat(LOG.list)
                .filteredOn(line -> line.getLevel().isGreaterOrEqual(Level.WARN))
                .extracting(ILoggingEvent::getFormattedMessage)
                .isEmpty();
    }

    @Test
    void most_addresses_that_take_a_form_are_tried() {
        assertThat(samples).extracting(Sample::address).hasSizeGreaterThan(60).doesNotContainNull();
    }

    @Test
    void a_form_without_one_of_its_fields_or_with_none_is_no_fault() {
        Set<String> faults = new TreeSet<>();
        for (Sample sample : samples) {
            for (String field : oneOfEachKind(sample.form())) {
                Map<String, String> fields = new HashMap<>(sample.form().fields());
                fields.remove(field);
                send(faults, sample, fields, "without " + PageWalk.kind(field));
            }
            send(faults, sample, Map.of(), "with nothing");
        }
        assertThat(faults).isEmpty();
    }

    @Test
    void nonsense_in_one_field_is_no_fault() {
        Set<String> faults = new TreeSet<>();
        for (Sample sample : samples) {
            for (String field : oneOfEachKind(sample.form())) {
                for (String nonsense : NONSENSE) {
                    Map<String, String> fields = new HashMap<>(sample.form().fields());
                    fields.put(field, nonsense);
                    send(faults, sample, fields, "with '%.20s' as %s".formatted(nonsense, PageWalk.kind(field)));
                }
            }
        }
        assertThat(faults).isEmpty();
    }

    private static Set<String> oneOfEachKind(PageForm form) {
        Set<String> met = new HashSet<>();
        Set<String> fields = new TreeSet<>();
        for (String field : form.fields().keySet()) {
            if (!field.equals("csrf") && met.add(PageWalk.kind(field))) {
                fields.add(field);
            }
        }
        return fields;
    }

    private static void send(Set<String> faults, Sample sample, Map<String, String> fields, String how) {
        Answer answer = sample.browser().post(sample.form().action(), fields);
        if (answer.status() >= 500) {
            faults.add(answer.status() + " " + sample.address() + " " + how);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "application/x-www-form-urlencoded; charset=unheard-of",
                "application/x-www-form-urlencoded; charset=",
                "application/x-www-form-urlencoded; charset=\"not a name\"",
                "multipart/form-data; boundary=x; charset=unheard-of",
                "text/plain; charset=unheard-of",
                "application/json; charset=unheard-of"
            })
    void an_unknown_charset_is_told_as_what_cannot_be_read(String type) {
        for (Sample sample : samples) {
            Answer answer = sample.browser().send(tokened(sample, type, "a=b"));

            assertThat(answer.status()).as(sample.address()).isEqualTo(415);
            assertThat(answer.text()).contains("not known here; UTF-8 is accepted. Nothing was changed.");
        }
    }

    @ParameterizedTest
    @CsvSource({"multipart/form-data", "multipart/form-data; boundary=x", "Multipart/Form-Data; boundary=y"})
    void a_broken_form_with_files_is_told_as_what_cannot_be_read(String type) {
        for (Sample sample : samples) {
            Answer answer = sample.browser().send(tokened(sample, type, BROKEN_PART));

            assertThat(answer.status())
                    .as(sample.address())
                    .isEqualTo(sample.form().uploads() ? 400 : 415);
            assertThat(answer.text()).containsPattern("send it once more\\.");
        }
    }

    private static HttpRequest.Builder tokened(Sample sample, String type, String body) {
        HttpRequest.Builder request = sample.browser()
                .request(sample.form().action())
                .header("Content-Type", type)
                .POST(HttpRequest.BodyPublishers.ofString(body));
        String token = sample.browser().token();
        return token == null ? request : request.header("X-CSRF-Token", token);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "application/x-www-form-urlencoded",
                "multipart/form-data; boundary=x",
                "application/json",
                "text/plain"
            })
    void what_is_cut_off_on_its_way_is_no_fault(String type) throws IOException {
        for (Sample sample : samples) {
            String answer = cutOff(sample, type);

            assertThat(answer).as(sample.address()).matches("(?s)HTTP/1.1 4.. .*|");
        }
    }

    /** Says that 5,000 bytes come, sends some and hangs up; the answer is what still comes back. */
    private static String cutOff(Sample sample, String type) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
            String head = "POST %s HTTP/1.1\r\nHost: localhost\r\nContent-Type: %s\r\nContent-Length: 5000\r\n"
                    + "Cookie: warmshelf=%s\r\nX-CSRF-Token: %s\r\nConnection: close\r\n\r\n%s";
            socket.getOutputStream()
                    .write(head.formatted(
                                    sample.form().action(),
                                    type,
                                    sample.browser().cookie("warmshelf"),
                                    sample.browser().token(),
                                    BROKEN_PART)
                            .getBytes(StandardCharsets.UTF_8));
            socket.shutdownOutput();
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
