package warmshelf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
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
    private static final String LONG_NOTE =
            "The label is on the short side; please keep it away from the door, the last one dried out there.";

    private final Cellar cellar;
    private final String underLight;
    private final String inTheBag;
    private final String onTheMat;
    private final String unheated;
    private final String refused;
    private final String placed;
    private final String waiting;
    private final String givenUp;
    private final String thermometer;
    private final String stations;
    private final String ownTurn;
    private final String seedAsked;

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

    /** Every page there is, with who looks at it. */
    List<PageVisit> pages() {
        takeAMatOut();
        List<PageVisit> pages = new ArrayList<>(pagesOfMembers());
        pages.addAll(pagesOfCoordinators());
        pages.addAll(pagesOfStrangers());
        return pages;
    }

    /** So that Racks, Weeks and Today draw one, with what lies there. */
    private void takeAMatOut() {
        if (cellar.coordinator().get("/plans/out-of-service").text().contains("Every mat can be used.")) {
            LocalDate today = LocalDate.ofInstant(cellar.group().clock().instant(), ZoneId.of("America/Chicago"));
            Map<String, String> days = Map.of(
                    "mat",
                    aMat(),
                    "first",
                    today.toString(),
                    "last",
                    today.plusDays(8).toString(),
                    "reason",
                    "The thermostat is broken");
            cellar.coordinator().post("/plans/out-of-service", days);
        }
    }

    private String aMat() {
        return Cellar.first(cellar.coordinator().get("/sites").body(), "/sites/mats/([0-9a-f-]{36})/change");
    }

    private String outage() {
        String page = cellar.coordinator().get("/plans/out-of-service").body();
        return "/plans/out-of-service/" + Cellar.first(page, "/out-of-service/([0-9a-f-]{36})/end");
    }

    private List<PageVisit> pagesOfMembers() {
        var member = group().member();
        var idle = group().onDuty();
        return List.of(
                new PageVisit("today, mine", "/today?show=mine", member),
                new PageVisit("today, the round", "/today?show=all", member),
                new PageVisit("today, empty", "/today?show=mine", idle),
                new PageVisit("open by code", "/code", member),
                new PageVisit("open by code, wrong", "/code?code=K7P", member),
                new PageVisit("codes", "/codes", member),
                new PageVisit("codes of sowings", "/codes/sowings", member),
                new PageVisit("codes, none", "/codes/sowings", idle),
                new PageVisit("reminders", "/reminders", member),
                new PageVisit("ask", "/ask", member),
                new PageVisit("ask, wrong", "/ask/plan?lot=new&plants=none&crop=", member),
                new PageVisit("plan", "/ask/plan?" + planQuery(), member),
                new PageVisit("plan, too late", "/ask/plan?" + planQuery().replace("crop=pepper", "crop=leek"), member),
                new PageVisit("sowings", "/sowings", member),
                new PageVisit("sowings, empty", "/sowings", idle),
                new PageVisit("crops", "/crops", member),
                new PageVisit("crop", "/crops/pepper", member),
                new PageVisit("supplies", "/supplies", member),
                new PageVisit("findings", "/findings", member),
                new PageVisit("predictions", "/findings/predictions", member),
                new PageVisit("harvest, nothing yet", "/harvest", idle),
                new PageVisit("harvest", "/harvest", member),
                new PageVisit("findings of a crop", "/findings/2027/crops/pepper?by=sowing", member),
                new PageVisit(
                        "photo of a packet", "/packets/new?lot=" + firstLot().replace("/seeds/", ""), member),
                new PageVisit("crop whose reprints disagree", "/crops/eggplant", member),
                new PageVisit("how to", "/how-to", member),
                new PageVisit("how to soak", "/how-to/soak", member),
                new PageVisit("how to sow", "/how-to/sow?crop=pepper-very-hot", member),
                new PageVisit("how to warm", "/how-to/bottom-heat", member),
                new PageVisit("how to light", "/how-to/light", member),
                new PageVisit("how to plant out", "/how-to/plant-out?crop=tomato", member),
                new PageVisit("how to, no such crop", "/how-to/sow?crop=moonflower", member),
                new PageVisit("sowing under light", "/sowings/" + underLight, member),
                new PageVisit("sowing in a bag", "/sowings/" + inTheBag, member),
                new PageVisit("sowing on a mat", "/sowings/" + onTheMat, member),
                new PageVisit("sowing at home", "/sowings/" + unheated, member),
                new PageVisit("sowing refused", "/sowings/" + refused, member),
                new PageVisit("sowing placed", "/sowings/" + placed, member),
                new PageVisit("withdrawal", "/sowings/" + placed + "/withdrawal", member),
                new PageVisit("sowing waiting", "/sowings/" + waiting, member),
                new PageVisit("sowing given up", "/sowings/" + givenUp, member),
                new PageVisit("entry", "/sowings/" + onTheMat + "/entry", member),
                new PageVisit("entry for a bag", "/sowings/" + inTheBag + "/entry", member),
                new PageVisit("racks", "/racks", member),
                new PageVisit("weeks", "/weeks", member),
                new PageVisit("seed box", "/seeds", member),
                new PageVisit("seed box, nothing found", "/seeds?q=turnip", member),
                new PageVisit("lot", firstLot(), member),
                new PageVisit("new lot", "/seeds/new", member),
                new PageVisit("offer of seed", firstLot() + "/offer", member),
                new PageVisit("when others want seed", firstLot() + "/sharing", member),
                new PageVisit("seed is asked for", "/sowings/" + seedAsked + "/seed", member),
                new PageVisit("another lot", "/sowings/" + waiting + "/lot", member),
                new PageVisit("frost", "/frost", member),
                new PageVisit("frost, mistyped", "/frost?country=US&postcode=55899", member),
                new PageVisit("my garden", "/frost/garden", member),
                new PageVisit("areas", "/frost/areas", member),
                new PageVisit("thermometers", "/frost/thermometers", member),
                new PageVisit("new thermometer", "/frost/thermometers/new", member),
                new PageVisit("thermometer", thermometer, member),
                new PageVisit("many nights", thermometer + "/nights", member),
                new PageVisit("shares", "/plans/fairness", member),
                new PageVisit("sites, for a member", "/sites", member),
                new PageVisit("people, for a member", "/people", member),
                new PageVisit("duty, for a member", "/duty", member),
                new PageVisit("settings", "/settings", member),
                new PageVisit("duty, for a member", "/duty", member),
                new PageVisit("my days", "/duty/mine", member),
                new PageVisit("swaps", "/duty/swaps", member),
                new PageVisit("swaps, asked", "/duty/swaps", idle),
                new PageVisit("a new swap", "/duty/swaps/new?turn=" + ownTurn, member),
                new PageVisit("help", "/help", member),
                new PageVisit("numbers", "/numbers", member),
                new PageVisit("not allowed", "/requests", member),
                new PageVisit("not there", "/sowings/00000000-0000-0000-0000-000000000000", member),
                new PageVisit("fault", "/broken", member));
    }

    private List<PageVisit> pagesOfCoordinators() {
        var coordinator = group().coordinator();
        String sites = cellar.coordinator().get("/sites").body();
        List<PageVisit> pages = new ArrayList<>(List.of(
                new PageVisit("new crop", "/new-crop", coordinator),
                new PageVisit("change of a crop", "/crops/pepper/change", coordinator),
                new PageVisit("variety of a crop", "/crops/pepper/varieties", coordinator),
                new PageVisit("supplies, for a coordinator", "/supplies", coordinator),
                new PageVisit("a promise to change", promiseToChange(), coordinator),
                new PageVisit("sowings, one without seed", "/sowings", coordinator),
                new PageVisit("requests", "/requests", coordinator),
                new PageVisit("one request", "/requests/" + waiting, coordinator),
                new PageVisit("request refused", "/requests/" + refused, coordinator),
                new PageVisit("racks to move on", "/racks", coordinator),
                new PageVisit("weeks to move in", "/weeks", coordinator),
                new PageVisit("stay", "/stays/" + stayToCome(), coordinator),
                new PageVisit("move", "/stays/" + stayToCome() + "/move?from=2027-05-01", coordinator),
                new PageVisit("move, wrong", "/stays/" + stayToCome() + "/move?from=soon", coordinator),
                new PageVisit("areas, for a coordinator", "/frost/areas", coordinator),
                new PageVisit("frost evidence", "/frost/evidence", coordinator),
                new PageVisit("send a file", "/frost/imports/new", coordinator),
                new PageVisit("a file that was read", stations, coordinator),
                new PageVisit("monthly means", "/frost/months", coordinator),
                new PageVisit("season plans", "/plans", coordinator),
                new PageVisit("mats out of service", "/plans/out-of-service", coordinator),
                new PageVisit("a mat out of service", outage(), coordinator),
                new PageVisit("a mat out of service, for a member", outage(), group().member()),
                new PageVisit("mat", "/mats/" + aMat(), coordinator),
                new PageVisit("sites", "/sites", coordinator),
                new PageVisit("new site", "/sites/new", coordinator),
                new PageVisit("people", "/people", coordinator),
                new PageVisit("handbook", "/handbook", coordinator),
                new PageVisit("handbook, options", "/handbook/options", coordinator),
                new PageVisit("handbook, commands", "/handbook/commands", coordinator),
                new PageVisit("somebody leaves", "/people/" + group().member().id() + "/leaving", coordinator),
                new PageVisit("duty", "/duty", coordinator),
                new PageVisit(
                        "days of another",
                        "/duty/mine?member=" + group().member().id(),
                        coordinator),
                new PageVisit("proposal", "/duty/proposal", coordinator),
                new PageVisit("proposal, wrong", "/duty/proposal?days=900&from=soon&site=none", coordinator),
                new PageVisit("swaps, for a coordinator", "/duty/swaps", coordinator),
                new PageVisit("group settings", "/settings/group", coordinator)));
        for (String form : List.of(
                "/sites/[0-9a-f-]{36}/change",
                "/sites/[0-9a-f-]{36}/racks/new",
                "/sites/racks/[0-9a-f-]{36}/change",
                "/sites/racks/[0-9a-f-]{36}/shelves/new",
                "/sites/shelves/[0-9a-f-]{36}/change",
                "/sites/shelves/[0-9a-f-]{36}/mats/new",
                "/sites/mats/[0-9a-f-]{36}/change")) {
            String path = Cellar.first(sites, "(" + form + ")");
            pages.add(new PageVisit(path.replaceAll("[0-9a-f-]{36}", "…"), path, coordinator));
        }
        return pages;
    }

    private List<PageVisit> pagesOfStrangers() {
        return List.of(
                new PageVisit("sign in", "/sign-in", null),
                new PageVisit("join", group().invitation(false), null),
                new PageVisit("used link", "/join/not-a-link", null),
                new PageVisit("help, not signed in", "/help", null));
    }

    private String promiseToChange() {
        posted("/supplies", Map.of("item", "pots", "amount", "30", "whose", "cupboard", "note", LONG_NOTE));
        return Cellar.first(cellar.coordinator().get("/supplies").body(), "(/supplies/[0-9a-f-]{36}/change)");
    }

    private String firstLot() {
        return Cellar.first(cellar.member().get("/seeds").body(), "href=\"(/seeds/[0-9a-f-]{36})\"");
    }

    private static String planQuery() {
        StringBuilder query = new StringBuilder();
        Cellar.peppers()
                .forEach((name, value) -> query.append(name)
                        .append('=')
                        .append(value.replace(" ", "+"))
                        .append('&'));
        return query.toString();
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

    private void posted(String path, Map<String, String> fields) {
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
