package warmshelf.sowing;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import warmshelf.crop.Method;

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

    private AskAddress() {}

    static String of(String path, Map<String, String> answers) {
        return answers.entrySet().stream()
                .map(each -> encoded(each.getKey()) + "=" + encoded(each.getValue()))
                .collect(Collectors.joining("&", answers.isEmpty() ? path : path + "?", ""));
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
        Map<String, String> answers = new LinkedHashMap<>();
        answers.put("lot", String.valueOf(sowing.lotId()));
        answers.put("plants", String.valueOf(sowing.plantsWanted()));
        answers.put("method", sowing.method().word());
        answers.put("heat", sowing.warm() ? "warm" : "room");
        if (sowing.method() == Method.CELLS) {
            answers.put("container", sowing.container().word());
        }
        answers.put("part", sowing.part().word());
        return of("/ask", answers);
    }

    /** A way back to the first question, with the other answers. */
    static String firstQuestion(Map<String, String> answers) {
        return of("/ask", withoutSeed(answers));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
