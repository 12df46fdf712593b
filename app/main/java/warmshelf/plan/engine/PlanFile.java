package warmshelf.plan.engine;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import warmshelf.BadInput;
import warmshelf.Given;
import warmshelf.allocation.Band;
import warmshelf.shelf.Circuit;
import warmshelf.shelf.LightAbove;

/** Reads what is to be planned from JSON, and refuses with a sentence what cannot be meant. */
public final class PlanFile {
    static final String THE_FILE = "The file";

    private static final int LONGEST_DAYS = 800;
    private static final int MOST_PLACES = 200;
    private static final int MOST_CHOICES = 1_000;
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private PlanFile() {}

    public static PlanQuestion read(Path file) {
        PlanQuestion question = question(tree(file));
        FixedStays.check(question);
        return question;
    }

    /** The JSON in a file. */
    static JsonNode tree(Path file) {
        try {
            return MAPPER.readTree(Files.readAllBytes(file));
        } catch (JacksonException notJson) {
            int line = notJson.getLocation() == null ? 1 : notJson.getLocation().getLineNr();
            throw new BadInput(
                    "'%s' is not JSON that can be read; line %d is where it stops making sense.".formatted(file, line));
        } catch (IOException unreadable) {
            throw new BadInput("'%s' cannot be read; the path of a JSON file is accepted.".formatted(file));
        }
    }

    static PlanQuestion question(JsonNode tree) {
        JsonFields file =
                new JsonFields(tree, THE_FILE).only("days", "circuits", "mats", "litShelves", "fixed", "requests");
        DayRange days = file.object("days").only("from", "to").days();
        if (days.length() > LONGEST_DAYS) {
            throw new BadInput(
                    "'days' holds %,d days; at most %,d are accepted.".formatted(days.length(), LONGEST_DAYS));
        }
        PlanQuestion question = new PlanQuestion(
                days,
                file.objects("circuits").stream().map(PlanFile::circuit).toList(),
                file.objects("mats").stream().map(PlanFile::mat).toList(),
                file.has("litShelves")
                        ? file.objects("litShelves").stream()
                                .map(PlanFile::litShelf)
                                .toList()
                        : null,
                file.objects("fixed").stream().map(PlanFile::fixed).toList(),
                file.objects("requests").stream().map(PlanFile::request).toList());
        distinct("circuits", question.circuits().stream().map(CircuitFeed::id).toList());
        distinct("mats", question.mats().stream().map(PlannedMat::id).toList());
        distinct("fixed", question.fixed().stream().map(FixedStay::id).toList());
        distinct("requests", question.requests().stream().map(Request::id).toList());
        return question;
    }

    private static void distinct(String list, List<String> ids) {
        Set<String> seen = new HashSet<>();
        for (String id : ids) {
            if (!seen.add(id)) {
                throw new BadInput(
                        "The id '%s' stands twice in '%s'; each is accepted once.".formatted(Given.shown(id), list));
            }
        }
    }

    private static CircuitFeed circuit(JsonFields given) {
        JsonFields circuit = given.only("id", "amps", "volts").namedByItsId();
        return new CircuitFeed(
                circuit.text("id"), new Circuit(circuit.decimal("amps", 0.1, 1_000), circuit.whole("volts", 1, 1_000)));
    }

    private static PlannedMat mat(JsonFields given) {
        JsonFields mat = given.only("id", "places", "minC", "maxC", "watts", "circuit", "light", "out")
                .namedByItsId();
        int low = mat.whole("minC", JsonFields.COLDEST, JsonFields.HOTTEST);
        int high = mat.whole("maxC", JsonFields.COLDEST, JsonFields.HOTTEST);
        if (low > high) {
            throw mat.refusal(": 'maxC' was %d, below 'minC', %d.".formatted(high, low));
        }
        List<DayRange> out = mat.objects("out").stream()
                .map(range -> range.only("from", "to").days())
                .toList();
        // part of a watt counts as a whole one: a circuit had better be judged too full than too empty
        int watts = mat.has("watts") ? (int) Math.ceil(mat.decimal("watts", 0, 100_000)) : 0;
        return new PlannedMat(
                mat.text("id"),
                mat.whole("places", 1, MOST_PLACES),
                new Band(low, high),
                watts,
                mat.textOrNull("circuit"),
                light(mat),
                out);
    }

    private static LightAbove light(JsonFields mat) {
        if (!mat.has("light")) {
            return LightAbove.NOT_KNOWN;
        }
        String word = mat.text("light");
        return Stream.of(LightAbove.LAMP, LightAbove.DAYLIGHT, LightAbove.NONE)
                .filter(light -> light.word().equals(word))
                .findFirst()
                .orElseThrow(() -> mat.refusal(
                        ": 'light' was '%s'; lamp, daylight or none is accepted.".formatted(Given.shown(word))));
    }

    private static LitShelf litShelf(JsonFields given) {
        JsonFields shelf = given.only("id", "places").namedByItsId();
        return new LitShelf(shelf.text("id"), shelf.whole("places", 1, MOST_PLACES));
    }

    private static FixedStay fixed(JsonFields given) {
        JsonFields stay = given.only("id", "mat", "litShelf", "place", "quarters", "from", "to", "bandC")
                .namedByItsId();
        boolean lit = stay.has("litShelf");
        if (lit && stay.has("mat")) {
            throw stay.refusal(" has both 'mat' and 'litShelf'; one of them is accepted.");
        }
        return new FixedStay(
                stay.text("id"),
                stay.text(lit ? "litShelf" : "mat"),
                lit,
                stay.whole("place", 1, MOST_PLACES),
                stay.slot("quarters"),
                stay.days(),
                lit ? null : stay.band("bandC"));
    }

    private static Request request(JsonFields given) {
        JsonFields request = given.only(
                        "id",
                        "member",
                        "choice",
                        "quarters",
                        "days",
                        "daysAtC",
                        "earliest",
                        "ideal",
                        "latest",
                        "bandC",
                        "needsLight",
                        "litDays",
                        "litQuarters")
                .namedByItsId();
        int quarters = quarters(request, "quarters");
        Request read = new Request(
                request.text("id"),
                request.text("member"),
                request.whole("choice", 1, MOST_CHOICES, 1),
                quarters,
                request.wholeOrNull("days", 1, LONGEST_DAYS),
                daysAtC(request),
                request.date("earliest"),
                request.date("ideal"),
                request.date("latest"),
                request.band("bandC"),
                request.yes("needsLight"),
                light(request, quarters));
        inOrder(request, read);
        return read;
    }

    private static void inOrder(JsonFields request, Request read) {
        if (read.days() == null && read.daysAtC().isEmpty()) {
            throw request.refusal(" has neither 'days' nor 'daysAtC', so nobody knows how long it lies on a mat.");
        }
        if (read.latest().isBefore(read.earliest())) {
            throw request.refusal(
                    ": 'latest' was %s, before 'earliest', %s.".formatted(read.latest(), read.earliest()));
        }
        if (read.ideal().isBefore(read.earliest()) || read.ideal().isAfter(read.latest())) {
            throw request.refusal(": 'ideal' was %s; a day from 'earliest', %s, to 'latest', %s, is accepted."
                    .formatted(read.ideal(), read.earliest(), read.latest()));
        }
    }

    private static SortedMap<Integer, Integer> daysAtC(JsonFields request) {
        SortedMap<Integer, Integer> days = new TreeMap<>();
        if (request.has("daysAtC")) {
            JsonFields listed = request.object("daysAtC");
            for (String degree : listed.names()) {
                int celsius = Given.whole("A set-point in 'daysAtC'", degree, JsonFields.COLDEST, JsonFields.HOTTEST);
                days.put(celsius, listed.whole(degree, 1, LONGEST_DAYS));
            }
        }
        return days;
    }

    private static Request.@Nullable Light light(JsonFields request, int quarters) {
        if (!request.has("litDays")) {
            return null;
        }
        return new Request.Light(
                request.whole("litDays", 1, LONGEST_DAYS),
                request.has("litQuarters") ? quarters(request, "litQuarters") : quarters);
    }

    private static int quarters(JsonFields request, String name) {
        int quarters = request.whole(name, 1, 4);
        if (quarters == 3) {
            throw request.refusal(
                    ": '%s' was 3; 4 for a tray, 2 for a half tray or 1 for a bag is accepted.".formatted(name));
        }
        return quarters;
    }
}
