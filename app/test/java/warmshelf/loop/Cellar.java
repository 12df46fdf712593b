package warmshelf.loop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import warmshelf.testing.Answer;
import warmshelf.testing.Browser;
import warmshelf.testing.TestGroup;

/** A small cellar set up through the pages, and the presses that the loop is made of. */
public final class Cellar implements AutoCloseable {
    private static final Pattern ID = Pattern.compile("[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}");

    private final TestGroup group;
    private final Browser coordinator;
    private final Browser member;

    private Cellar(TestGroup group) {
        this.group = group;
        this.coordinator = group.signedIn(group.coordinator());
        this.member = group.signedIn(group.member());
    }

    /** One site, one rack; the top shelf has two mats of two places, the shelf below is lit and has four. */
    public static Cellar open() {
        return in(TestGroup.open());
    }

    /** The same in a group that has no site yet. */
    public static Cellar in(TestGroup group) {
        Cellar cellar = new Cellar(group);
        cellar.build();
        return cellar;
    }

    private void build() {
        accepted("/sites", Map.of("name", "Hall cellar", "walkOrder", "1", "amps", "15", "volts", "120", "note", ""));
        String site = idIn("/sites", "/sites/(" + ID + ")/racks/new");
        accepted("/sites/" + site + "/racks", Map.of("name", "North rack", "walkOrder", "1"));
        String rack = idIn("/sites", "/sites/racks/(" + ID + ")/shelves/new");
        accepted("/sites/racks/" + rack + "/shelves", Map.of("fromTop", "1", "litPlaces", "0", "lightWatts", "0"));
        accepted("/sites/racks/" + rack + "/shelves", Map.of("fromTop", "2", "litPlaces", "4", "lightWatts", "80"));
        String shelf = idIn("/sites", "/sites/shelves/(" + ID + ")/mats/new");
        mat(shelf, "M1", "20", "32", "26");
        mat(shelf, "M2", "18", "22", "20");
    }

    private void mat(String shelf, String name, String low, String high, String usual) {
        boolean fahrenheit =
                coordinator.get("/sites/shelves/" + shelf + "/mats/new").body().contains("°F");
        Map<String, String> fields =
                new HashMap<>(Map.of("name", name, "walkOrder", "1", "places", "2", "watts", "45"));
        fields.put("low", fahrenheit ? toFahrenheit(low) : low);
        fields.put("high", fahrenheit ? toFahrenheit(high) : high);
        fields.put("usual", fahrenheit ? toFahrenheit(usual) : usual);
        accepted("/sites/shelves/" + shelf + "/mats", fields);
    }

    private static String toFahrenheit(String celsius) {
        return String.valueOf(Math.round(Integer.parseInt(celsius) * 9 / 5.0 + 32));
    }

    private void accepted(String path, Map<String, String> fields) {
        Answer answer = coordinator.post(path, fields);
        assertThat(answer.status()).as(path + " " + answer.text()).isEqualTo(303);
    }

    private String idIn(String page, String pattern) {
        return first(coordinator.get(page).body(), pattern);
    }

    /** The first text that the pattern's group finds on a page. */
    public static String first(String body, String pattern) {
        Matcher found = Pattern.compile(pattern).matcher(body);
        assertThat(found.find()).as("'" + pattern + "' on the page").isTrue();
        return found.group(1);
    }

    /** Every text that the pattern's group finds on a page, in order. */
    public static List<String> all(String body, String pattern) {
        return Pattern.compile(pattern)
                .matcher(body)
                .results()
                .map(found -> found.group(1))
                .toList();
    }

    /** What a member types to ask for ten mild peppers in half a tray. */
    public static Map<String, String> peppers() {
        Map<String, String> fields = new HashMap<>();
        fields.put("lot", "new");
        fields.put("crop", "pepper");
        fields.put("variety", "Lantern Row");
        fields.put("seedYear", "2027");
        fields.put("packetSeeds", "40");
        fields.put("germinated", "18");
        fields.put("tested", "20");
        fields.put("plants", "10");
        fields.put("method", "cells");
        fields.put("heat", "warm");
        fields.put("container", "half-tray");
        fields.put("cellsInATray", "72");
        fields.put("seedsPerCell", "1");
        fields.put("where", "outdoors");
        fields.put("risk", "");
        fields.put("note", "");
        return fields;
    }

    /** Sends an asking and answers with the sowing's id. */
    public String ask(Map<String, String> fields) {
        Answer answer = member.post("/sowings", fields);
        assertThat(answer.status()).as(answer.text()).isEqualTo(303);
        return answer.location().substring("/sowings/".length());
    }

    /** Puts a request on the first place that is suggested for it. */
    public Answer placeAsSuggested(String sowing) {
        String body = coordinator.get("/requests/" + sowing).body();
        return coordinator.post(
                "/requests/" + sowing + "/placement", hiddenFields(body, "/requests/" + sowing + "/placement"));
    }

    /** The hidden fields of the first form that goes to an address. */
    public static Map<String, String> hiddenFields(String body, String action) {
        int form = body.indexOf("action=\"" + action + "\"");
        assertThat(form).as("a form to " + action).isPositive();
        String inner = body.substring(form, body.indexOf("</form>", form));
        Map<String, String> fields = new HashMap<>();
        Matcher hidden = Pattern.compile("<input type=\"hidden\" name=\"([^\"]+)\" value=\"([^\"]*)\"")
                .matcher(inner);
        while (hidden.find()) {
            if (!hidden.group(1).equals("csrf")) {
                fields.put(hidden.group(1), hidden.group(2).replace("&amp;", "&"));
            }
        }
        return fields;
    }

    /** Enters a step at a sowing. */
    public Answer tick(String sowing, Map<String, String> fields) {
        return member.post("/sowings/" + sowing + "/entries", fields);
    }

    public List<String> lightPlaces(String sowing) {
        Matcher options = Pattern.compile("value=\"(" + ID + "/[1-4])\"")
                .matcher(member.get("/sowings/" + sowing + "/entry").body());
        return options.results().map(found -> found.group(1)).toList();
    }

    public TestGroup group() {
        return group;
    }

    public Browser coordinator() {
        return coordinator;
    }

    public Browser member() {
        return member;
    }

    @Override
    public void close() {
        group.close();
    }
}
