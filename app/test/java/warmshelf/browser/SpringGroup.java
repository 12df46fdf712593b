package warmshelf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import warmshelf.loop.Cellar;
import warmshelf.testing.Answer;
import warmshelf.testing.TestGroup;
import warmshelf.testing.Upload;
import warmshelf.web.Role;

/** A group in the middle of its spring: sowings at many stages, requests that wait, long names, and a page that fails. */
final class SpringGroup implements AutoCloseable {
    static final String LONG_NOTE =
            "The label is on the short side; please keep it away from the door, the last one dried out there.";

    final Cellar cellar;
    final String underLight;
    final String inTheBag;
    final String onTheMat;
    final String unheated;
    final String refused;
    final String placed;
    final String waiting;
    final String givenUp;
    final String thermometer;
    final String stations;
    final String lots;
    final String ownTurn;
    final String seedAsked;

    private SpringGroup(Cellar cellar) {
        this.cellar = cellar;
        addGreenhouse();
        underLight = placed(cellar.ask(asking("pepper", "Lantern Row", Map.of())));
        inTheBag = placed(cellar.ask(asking("pepper-very-hot", "Ember Chocolate", Map.of("method", "bag"))));
        givenUp = cellar.ask(asking("lettuce", "Winter Bowl", Map.of("heat", "room")));
        passUntil(LocalDate.of(2027, 3, 26));
        sow(underLight, inTheBag, givenUp);
        passUntil(LocalDate.of(2027, 4, 5));
        entry(underLight, Map.of("step", "look", "sprouted", "14"));
        entry(inTheBag, Map.of("step", "look", "sprouted", "3"));
        entry(
                underLight,
                Map.of(
                        "step",
                        "under-light",
                        "lightPlace",
                        cellar.lightPlaces(underLight).get(0)));
        onTheMat = placed(cellar.ask(asking("tomato", "Amish Paste from the long garden", Map.of("plants", "12"))));
        passUntil(LocalDate.of(2027, 4, 12));
        sow(onTheMat);
        unheated = cellar.ask(asking("kale", "Curly Blue", Map.of("heat", "room", "note", LONG_NOTE)));
        sow(unheated);
        entry(givenUp, Map.of("step", "gave-up"));
        refused = cellar.ask(asking("tomato", "Late Giant", Map.of()));
        posted("/requests/" + refused + "/refusal", Map.of("reason", "The mats are off that week."));
        placed = placed(cellar.ask(asking("basil", "Sweet Large", Map.of())));
        waiting = cellar.ask(asking("tomato", "Black Plum", Map.of("note", LONG_NOTE)));
        cellar.ask(asking("eggplant", "Long Purple", Map.of("container", "tray")));
        passUntil(LocalDate.of(2027, 4, 16));
        entry(onTheMat, Map.of("step", "look", "nothing", "0"));
        seedAsked = askTheMemberForSeed();
        ownTurn = keepTheRota();
        thermometer = hangThermometer();
        stations = sendStations();
        lots = sendLots();
    }

    /** The coordinator asks twice for seed of the member's; once the answer is no. */
    private String askTheMemberForSeed() {
        String lot = firstLot().substring("/seeds/".length());
        Map<String, String> asked = new HashMap<>(Cellar.peppers());
        asked.putAll(Map.of("lot", lot, "crop", "", "plants", "2", "acceptFewer", "yes"));
        String refusedSeed = asCoordinator(asked);
        Answer no = cellar.member()
                .post("/sowings/" + refusedSeed + "/seed", Map.of("answer", "no", "reason", "For the school bed."));
        assertThat(no.status()).as(no.text()).isEqualTo(303);
        return asCoordinator(asked);
    }

    private String asCoordinator(Map<String, String> asked) {
        Answer answer = cellar.coordinator().post("/sowings", asked);
        assertThat(answer.status()).as(answer.text()).isEqualTo(303);
        return answer.location().substring("/sowings/".length());
    }

    private String sendStations() {
        Answer answer = new Upload()
                .field("kind", "stations")
                .file("stations of the county, as the extension service sent them.csv", """
                    station,latitude,longitude,elevation_m,spring_p50,autumn_p50
                    Lakeside,46.8,-92.1,180,05-14,10-10
                    Hill,46.9,-92.2,high,05-20,09-28
                    """)
                .post(cellar.coordinator(), "/frost/imports");
        assertThat(answer.status()).as(answer.text()).isEqualTo(303);
        return answer.location();
    }

    private String sendLots() {
        Answer answer = new Upload()
                .field("kind", "lots")
                .field("whose", "group")
                .file("lots from the seed swap in the hall.csv", """
                    crop,variety,year,seeds_left,treated
                    pepper,Corno di Toro,2026,30,no
                    peper,Jalapeño,26,many,perhaps
                    """)
                .post(cellar.coordinator(), "/files/incoming");
        assertThat(answer.status()).as(answer.text()).isEqualTo(303);
        return answer.location();
    }

    static SpringGroup open() {
        return new SpringGroup(Cellar.in(TestGroup.with(routes -> routes.get(
                "/broken",
                ctx -> {
                    throw new IllegalStateException("for a test of the fault page");
                },
                Role.ANYONE))));
    }

    /** The stay of a basil tray that is to be sown in some days. */
    String stayToCome() {
        return Cellar.first(
                cellar.coordinator().get("/weeks").body(),
                "href=\"/stays/([0-9a-f-]{36})\"[^>]*data-from[^>]*><title>Basil");
    }

    TestGroup group() {
        return cellar.group();
    }

    /** The page of a label that was just printed. */
    String labelsPrinted() {
        return cellar.member()
                .post("/labels/runs", Map.of("of", "sowing-" + inTheBag, "take", "bag-" + inTheBag))
                .location()
                .replace("?fresh=yes", "");
    }

    String firstLot() {
        return Cellar.first(cellar.member().get("/seeds").body(), "href=\"(/seeds/[0-9a-f-]{36})\"");
    }

    private void addGreenhouse() {
        posted(
                "/sites",
                Map.of(
                        "name",
                        "Grange greenhouse, the back room behind the potting bench",
                        "walkOrder",
                        "2",
                        "amps",
                        "15",
                        "volts",
                        "120",
                        "note",
                        "The key hangs behind the door."));
        String sites = cellar.coordinator().get("/sites").body();
        List<String> ids = Cellar.all(sites, "/sites/([0-9a-f-]{36})/racks/new");
        posted("/sites/" + ids.get(1) + "/racks", Map.of("name", "South wall", "walkOrder", "1"));
        String rack =
                last(Cellar.all(cellar.coordinator().get("/sites").body(), "/sites/racks/([0-9a-f-]{36})/shelves/new"));
        posted("/sites/racks/" + rack + "/shelves", Map.of("fromTop", "1", "litPlaces", "4", "lightWatts", "160"));
        String shelf =
                last(Cellar.all(cellar.coordinator().get("/sites").body(), "/sites/shelves/([0-9a-f-]{36})/mats/new"));
        Map<String, String> mat = new HashMap<>(
                Map.of("name", "Long mat", "walkOrder", "1", "places", "4", "watts", "107", "low", "68", "high", "90"));
        mat.put("usual", "80");
        posted("/sites/shelves/" + shelf + "/mats", mat);
    }

    private String hangThermometer() {
        Map<String, String> shift =
                Map.of("how", "shift", "springDays", "5", "springWay", "earlier", "reason", "The lake keeps it warm");
        Map<String, String> area = new HashMap<>(shift);
        area.putAll(Map.of("country", "US", "start", "558"));
        posted("/frost/areas", area);
        assertThat(cellar.member().post("/frost/garden/corrections", shift).status())
                .isEqualTo(303);
        Answer added = cellar.coordinator()
                .post(
                        "/frost/thermometers",
                        Map.of(
                                "name", "Long garden, north side of the tool shed",
                                "whose", "group",
                                "latitude", "46.84",
                                "longitude", "-92.22",
                                "elevation", "1405"));
        posted(
                added.location() + "/many-nights",
                Map.of("nights", "2027-04-10,33\n2027-04-11,27.5\n2027-04-12,31\n2027-04-15,38\n2027-04-16,35"));
        return added.location();
    }

    /** Two days of the member's, one of which everyone is asked to take; the days after are to be filled. */
    private String keepTheRota() {
        List<String> fields = Cellar.all(cellar.coordinator().get("/duty").body(), "<select[^>]*name=\"([^\"]+)\"");
        String member = group().member().id().toString();
        posted("/duty", Map.of(fields.get(0), member, fields.get(4), member));
        String site = Cellar.first(fields.get(0), "duty/([^/]+)/");
        assertThat(cellar.member()
                        .post("/duty/mine", Map.of("can", site + "/3"))
                        .status())
                .isEqualTo(303);
        assertThat(cellar.member()
                        .post("/duty/mine/away", Map.of("first", "2027-05-03", "last", "2027-05-09"))
                        .status())
                .isEqualTo(303);
        String asked = fields.get(4).substring("duty/".length());
        assertThat(cellar.member()
                        .post("/duty/swaps", Map.of("turn", asked, "whom", "anyone", "inReturn", "none"))
                        .status())
                .isEqualTo(303);
        return fields.get(0).substring("duty/".length());
    }

    private static Map<String, String> asking(String crop, String variety, Map<String, String> more) {
        Map<String, String> asked = Cellar.peppers();
        asked.putAll(Map.of("crop", crop, "variety", variety, "germinated", "", "tested", "", "packetSeeds", "60"));
        asked.putAll(more);
        return asked;
    }

    private String placed(String sowing) {
        Answer answer = cellar.placeAsSuggested(sowing);
        assertThat(answer.status()).as(answer.text()).isEqualTo(303);
        return sowing;
    }

    private void sow(String... sowings) {
        for (String sowing : sowings) {
            entry(sowing, Map.of("step", "sown"));
        }
    }

    private void entry(String sowing, Map<String, String> fields) {
        Answer answer = cellar.tick(sowing, fields);
        assertThat(answer.status()).as(fields + " " + answer.text()).isEqualTo(303);
    }

    void posted(String path, Map<String, String> fields) {
        Answer answer = cellar.coordinator().post(path, fields);
        assertThat(answer.status()).as(path + " " + answer.text()).isEqualTo(303);
    }

    private void passUntil(LocalDate day) {
        // Both look in meanwhile: whoever stays away for long is signed out.
        cellar.coordinator().get("/today");
        cellar.member().get("/today");
        Duration until = Duration.ofDays(day.toEpochDay() - TestGroup.TODAY.toEpochDay());
        cellar.group().clock().set(TestGroup.MORNING.plus(until));
    }

    private static String last(List<String> all) {
        return all.get(all.size() - 1);
    }

    @Override
    public void close() {
        cellar.close();
    }
}
