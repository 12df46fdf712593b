package warmshelf.testing;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;

/** Fills in what a form leaves empty, as somebody of a group near Duluth might who wants to be done with it. */
public final class FormFiller {
    private static final Map<String, String> TYPED = Map.ofEntries(
            Map.entry("across", "170"),
            Map.entry("amount", "3"),
            Map.entry("autumnDays", "2"),
            Map.entry("celsius", "75"),
            Map.entry("currency", "USD"),
            Map.entry("depth", "0.25"),
            Map.entry("down", "230"),
            Map.entry("elevation", "700"),
            Map.entry("emergenceDaysMax", "10"),
            Map.entry("emergenceDaysMin", "5"),
            Map.entry("emergenceHigh", "86"),
            Map.entry("emergenceLow", "68"),
            Map.entry("germinated", "8"),
            Map.entry("height", "1.5"),
            Map.entry("high", "86"),
            Map.entry("latitude", "46.8"),
            Map.entry("longitude", "-92.1"),
            Map.entry("low", "68"),
            Map.entry("maturityMax", "80"),
            Map.entry("maturityMin", "60"),
            Map.entry("night", "50"),
            Map.entry("note", "for a trial"),
            Map.entry("offset", "7"),
            Map.entry("offsetLatest", "14"),
            Map.entry("places", "2"),
            Map.entry("price", "0.2"),
            Map.entry("printer", "upstairs"),
            Map.entry("reason", "tried it out"),
            Map.entry("risk", ""),
            Map.entry("seeds", "12"),
            Map.entry("source", "our own notes"),
            Map.entry("species", "Ocimum africanum"),
            Map.entry("springDays", "3"),
            Map.entry("start", "558"),
            Map.entry("temperature", "31"),
            Map.entry("usual", "77"),
            Map.entry("varietySource", "the packet"),
            Map.entry("watts", "60"),
            Map.entry("width", "3"),
            Map.entry("weeksMax", "6"),
            Map.entry("weeksMin", "4"));
    private static final String[] MONTHS = {
        "jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"
    };
    // Duluth's average daily lows of 1991-2020 in whole degrees Fahrenheit, from memory; any plausible year would do
    private static final int[] LOWS = {2, 6, 19, 31, 41, 50, 57, 56, 48, 36, 23, 10};

    private final LocalDate today;
    private final String passphrase;
    private int made;

    /** @param passphrase of whoever fills in */
    public FormFiller(LocalDate today, String passphrase) {
        this.today = today;
        this.passphrase = passphrase;
    }

    public Map<String, String> filled(PageForm form) {
        Map<String, String> fields = new HashMap<>(form.fields());
        fields.replaceAll((name, value) -> value.isEmpty() ? text(name) : value);
        // a box that may stay empty is ticked by whoever fills in everything; these say that the figure is below zero
        fields.remove("minus");
        // the plan that is wanted soonest
        fields.replace("seconds", "5");
        // of the ways on that a form offers, the one that keeps what was typed
        fields.computeIfPresent("do", (name, value) -> "keep");
        // sent as if for the first time
        fields.replaceAll(
                (name, value) -> name.equals("submission") ? UUID.randomUUID().toString() : value);
        return fields;
    }

    private String text(String name) {
        for (int month = 0; month < MONTHS.length; month++) {
            if (MONTHS[month].equals(name)) {
                return String.valueOf(LOWS[month]);
            }
        }
        return switch (name) {
            case "name", "variety" -> "Trial " + ++made;
            case "id", "page" -> UUID.randomUUID().toString();
            case "first", "coverOn" -> today.plusDays(40).toString();
            case "last" -> today.plusDays(41).toString();
            case "nights" -> today.minusDays(2) + " 31";
            case "current", "passphrase" -> passphrase;
            default -> TYPED.getOrDefault(name, "");
        };
    }
}
