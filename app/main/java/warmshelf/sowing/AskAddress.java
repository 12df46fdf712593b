package warmshelf.sowing;

import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import warmshelf.crop.Method;
import warmshelf.words.FormReader;

/** Addresses of the pages of Ask, which carry all that was answered so far. */
final class AskAddress {
    /** What says which seed it is; the rest stays when another seed is chosen. */
    private static final Set<String> OF_SEED = Set.of(
            "lot",
            "crop",
            "variety",
            "seedYear",
            "packetSeeds",
            "germinated",
            "tested",
            "source",
            "storage",
            "treated",
            "q",
            "csrf",
            "submission");

    /** What of it answers nothing. */
    private static final Set<String> NO_ANSWER = Set.of("q", "csrf", "submission");

    /** What is taken for granted until somebody changes it; part and note are asked there too. */
    private static final Set<String> ASSUMED = Set.of(
            "method",
            "heat",
            "after",
            "container",
            "trayLong",
            "trayShort",
            "cellsInATray",
            "seedsPerCell",
            "where",
            "coverOn",
            "part",
            "risk",
            "acceptFewer",
            "note");

    /** Names what was gathered before and is planned anew. */
    static final String GATHERED = "gathered";

    private AskAddress() {}

    static String of(String path, Map<String, String> answers) {
        return answers.isEmpty() ? path : path + "?" + written(answers);
    }

    /** The answers as they stand in an address. */
    static String written(Map<String, String> answers) {
        return answers.entrySet().stream()
                .map(each -> encoded(each.getKey()) + "=" + encoded(each.getValue()))
                .collect(Collectors.joining("&"));
    }

    /** What {@link #written} wrote. */
    static Map<String, String> read(String written) {
        Map<String, String> answers = new LinkedHashMap<>();
        for (String pair : written.split("&", -1)) {
            int at = pair.indexOf('=');
            answers.put(decoded(pair.substring(0, at)), decoded(pair.substring(at + 1)));
        }
        return answers;
    }

    /** Of a form that was found good what is kept until it is sent: the answers of Ask and nothing else that came with them. */
    static Map<String, String> toKeep(FormReader form) {
        return Stream.of(OF_SEED, ASSUMED, Set.of("plants"))
                .flatMap(Set::stream)
                .filter(field -> !NO_ANSWER.contains(field) && !form.text(field).isEmpty())
                .sorted()
                .collect(Collectors.toMap(Function.identity(), form::text, (one, other) -> one, LinkedHashMap::new));
    }

    /** What of the things gathered before this form plans anew, if it does. */
    static Optional<UUID> gathered(FormReader form) {
        String typed = form.text(GATHERED);
        return typed.matches("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}")
                ? Optional.of(UUID.fromString(typed))
                : Optional.empty();
    }

    /** The same answers with one of them other. */
    static String with(String path, Map<String, String> answers, String field, String answer) {
        Map<String, String> all = new LinkedHashMap<>(answers);
        all.put(field, answer);
        return of(path, all);
    }

    /** What was typed, the first of each; a form's own token is no answer. */
    static Map<String, String> answers(Map<String, List<String>> typed) {
        Map<String, String> texts = new LinkedHashMap<>();
        typed.forEach((name, values) -> {
            if (!name.equals("csrf") && !name.equals("submission") && !values.isEmpty()) {
                texts.put(name, values.get(0));
            }
        });
        return texts;
    }

    /** What stays when another seed is chosen. */
    static Map<String, String> withoutSeed(Map<String, String> answers) {
        Map<String, String> rest = new LinkedHashMap<>(answers);
        rest.keySet().removeAll(OF_SEED);
        return rest;
    }

    /** What the folds of the assumptions do not ask. */
    static Map<String, String> withoutAssumed(Map<String, String> answers) {
        Map<String, String> rest = new LinkedHashMap<>(answers);
        rest.keySet().removeAll(ASSUMED);
        return rest;
    }

    /** The same asked for again; where it goes out is asked for as it was, under cover on a day yet to be named. */
    static String again(Sowing sowing) {
        return of("/ask", answersOf(sowing));
    }

    /** The answers of which that address is made. */
    static Map<String, String> answersOf(Sowing sowing) {
        Map<String, String> answers = new LinkedHashMap<>();
        answers.put("lot", String.valueOf(sowing.lotId()));
        answers.put("plants", String.valueOf(sowing.plantsWanted()));
        answers.put("method", sowing.method().word());
        answers.put("heat", sowing.warm() ? "warm" : "room");
        if (sowing.method() == Method.CELLS) {
            answers.put("container", sowing.container().word());
        }
        answers.put("where", sowing.underCoverOn() == null ? "outdoors" : "cover");
        answers.put("part", sowing.part().word());
        return answers;
    }

    /** A way back to the first question, with the other answers. */
    static String firstQuestion(Map<String, String> answers) {
        return of("/ask", withoutSeed(answers));
    }

    private static String decoded(String text) {
        return URLDecoder.decode(text, StandardCharsets.UTF_8);
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
