package warmshelf.testing;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.Server;
import warmshelf.Settings;
import warmshelf.db.Audit;
import warmshelf.db.Database;
import warmshelf.group.GroupProfile;
import warmshelf.group.GroupStore;
import warmshelf.group.LinkStore;
import warmshelf.group.MemberStore;
import warmshelf.group.NewMember;
import warmshelf.group.Passphrases;
import warmshelf.group.SessionStore;
import warmshelf.reminder.push.PushKeys;
import warmshelf.web.Pages;
import warmshelf.words.Units;

/**
 * The whole application on a free port, with a database of its own, a clock that stands still on 1 March 2027 in Duluth, and
 * always the same people: a coordinator, a member, the person on duty, and whoever is a stranger.
 *
 * <pre>{@code
 * try (TestGroup group = TestGroup.open()) {
 *     Answer answer = group.signedIn(group.member()).post("/sowings", Map.of("crop", "pepper"));
 *     assertThat(answer.status()).isEqualTo(422);
 * }
 * }</pre>
 */
public final class TestGroup implements AutoCloseable {
    /** Nine in the morning in Duluth on {@link #TODAY}. */
    public static final Instant MORNING = Instant.parse("2027-03-01T15:00:00Z");

    public static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    public static final String NAME = "Chester Bowl Seed Starters";

    private static final ZoneId ZONE = ZoneId.of("America/Chicago");
    private static final String PASSPHRASE = "three warm trays";
    /** At the least cost there is, because a test that signs in guards nothing. */
    private static final Passphrases PASSPHRASES = new Passphrases(8, 1);

    private static final String PASSPHRASE_HASH = PASSPHRASES.hash(PASSPHRASE);

    private final TestDatabase place;
    private final MutableClock clock = new MutableClock(MORNING);
    private final Server server;
    private final List<Person> cast;

    private TestGroup(TestDatabase place, boolean opened, List<Pages> more, @Nullable PushKeys push) {
        this(place, opened, more, push, null);
    }

    private TestGroup(
            TestDatabase place, boolean opened, List<Pages> more, @Nullable PushKeys push, @Nullable String baseUrl) {
        this.place = place;
        this.cast = opened ? moveIn(place.database(), new Audit(clock)) : List.of();
        try {
            this.server = Server.start(settings(push, baseUrl), place.database(), clock, PASSPHRASES, more);
        } catch (RuntimeException notStarted) {
            place.close();
            throw notStarted;
        }
    }

    /** A group with its cast, on H2. */
    public static TestGroup open() {
        return new TestGroup(TestDatabase.h2(), true, List.of(), null);
    }

    /** A group with its cast, on the database given, which it closes at the end. */
    public static TestGroup open(TestDatabase place) {
        return new TestGroup(place, true, List.of(), null);
    }

    /** A group with its cast and pages beside the application's own. */
    public static TestGroup with(Pages... more) {
        return new TestGroup(TestDatabase.h2(), true, List.of(more), null);
    }

    /** A group with its cast, in an installation that sends notices to phones. */
    public static TestGroup withPush(PushKeys keys) {
        return new TestGroup(TestDatabase.h2(), true, List.of(), keys);
    }

    /** A group with its cast, in an installation that people know by an address. */
    public static TestGroup at(String baseUrl) {
        return new TestGroup(TestDatabase.h2(), true, List.of(), null, baseUrl);
    }

    private static Settings settings(@Nullable PushKeys push, @Nullable String baseUrl) {
        return new Settings(
                "127.0.0.1", 0, baseUrl, Path.of("unused"), null, null, null, Set.of(), ZoneId.of("UTC"), null, push);
    }

    /** An installation whose group nobody has opened. */
    public static TestGroup unopened() {
        return new TestGroup(TestDatabase.h2(), false, List.of(), null);
    }

    public Person coordinator() {
        return cast.get(0);
    }

    public Person member() {
        return cast.get(1);
    }

    public Person onDuty() {
        return cast.get(2);
    }

    /** Where the server listens, on this machine. */
    public int port() {
        return server.port();
    }

    /** A browser that nobody is signed in on. */
    public Browser stranger() {
        return Browser.at("http://127.0.0.1:" + server.port());
    }

    /** A browser on which the person is signed in. */
    public Browser signedIn(Person person) {
        Browser browser = stranger();
        browser.setCookie("warmshelf", new SessionStore(database(), clock).open(person.id()));
        return browser;
    }

    /** The path of a fresh link by which someone joins, for example '/join/...'. */
    public String invitation(boolean asCoordinator) {
        String token = new LinkStore(database(), audit())
                .makeInvite(asCoordinator, "a neighbour", coordinator().id());
        return "/join/" + token;
    }

    /** The path of a link that opens the group, while nobody has. */
    public Optional<String> openingPath() {
        return server.openingLink().map(link -> link.substring(link.indexOf("/open/")));
    }

    /** A second node that serves the same group, to be closed by whoever asked for it. */
    public Server anotherNode() {
        return Server.start(settings(null, null), place.database(), clock);
    }

    public Database database() {
        return place.database();
    }

    public Audit audit() {
        return new Audit(clock);
    }

    public MutableClock clock() {
        return clock;
    }

    public Server server() {
        return server;
    }

    @Override
    public void close() {
        server.close();
        place.close();
    }

    /** Lets the cast move into any database: a coordinator, a member, the person on duty. */
    public static List<Person> moveIn(Database database, Audit audit) {
        MemberStore members = new MemberStore(database, audit);
        Person coordinator = person(database, members, "Ilse Brandt", "55803", true);
        new GroupStore(database, audit)
                .open(
                        database.sql(),
                        new GroupProfile(NAME, ZONE, Units.AMERICAN, "US", "55806", 2027),
                        coordinator.id());
        return List.of(
                coordinator,
                person(database, members, "Tom Okafor", "55804", false),
                person(database, members, "Priya Nair", "55811", false));
    }

    private static Person person(
            Database database, MemberStore members, String name, String postcode, boolean coordinator) {
        NewMember member = new NewMember(name, "US", postcode, PASSPHRASE_HASH);
        UUID id = members.add(database.sql(), member, coordinator, "for a test");
        return new Person(id, name, PASSPHRASE, postcode);
    }
}
