package warmshelf.plan;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import warmshelf.allocation.MatSpace;
import warmshelf.allocation.SpaceRequest;
import warmshelf.allocation.Stay;
import warmshelf.allocation.plan.PlanQuestion;
import warmshelf.allocation.plan.Request;
import warmshelf.sowing.Sowing;

/**
 * What is to be planned, as the group's records stand, with the names behind the question's ids. Mats, circuits and lit shelves
 * go by their names; requests by the id of their sowing, stays by their own.
 *
 * @param asked requests by id
 * @param lying fixed stays by id
 * @param mats by name, in walking order
 */
public record SeasonQuestion(
        PlanQuestion question, Map<String, Asked> asked, Map<String, Lying> lying, Map<String, MatSpace> mats) {

    /**
     * A request.
     *
     * @param freed the published stay that the plan may move; null for one that waits
     */
    public record Asked(
            Sowing sowing,
            SpaceRequest request,
            Request wanted,
            @Nullable Stay freed) {
        /** For example 'Tom Okafor's Pepper · Lantern Row'. */
        public String title() {
            return "%s's %s".formatted(sowing.grower().name(), sowing.title());
        }
    }

    /**
     * A stay that no plan moves.
     *
     * @param mat its mat's name; null under a light
     * @param place its number
     */
    public record Lying(Stay stay, Sowing sowing, @Nullable String mat, int place) {
        public String title() {
            return "%s's %s".formatted(sowing.grower().name(), sowing.title());
        }
    }

    public LocalDate today() {
        return question.days().from();
    }

    /** A sentence of the planner or its judge with names in the place of ids. */
    String named(String sentence) {
        String named = sentence;
        if (!named.contains("-")) {
            return named;
        }
        for (Map.Entry<String, Asked> each : asked.entrySet()) {
            named = replaced(named, "request", each.getKey(), each.getValue().title());
        }
        for (Map.Entry<String, Lying> each : lying.entrySet()) {
            named = replaced(named, "fixed stay", each.getKey(), each.getValue().title());
        }
        return named;
    }

    List<String> named(List<String> sentences) {
        return sentences.stream().map(this::named).toList();
    }

    private static String replaced(String sentence, String kind, String id, String title) {
        if (!sentence.contains(id)) {
            return sentence;
        }
        return sentence.replace("The " + kind + " '" + id + "'", title)
                .replace("the " + kind + " '" + id + "'", title)
                .replace("'" + id + "'", title)
                .replace(id, title);
    }

    /** SHA-256 of everything asked, in hexadecimal: equal questions have equal hashes. */
    String hash() {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(digest.digest(question.toString().getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("every Java has SHA-256", missing);
        }
    }
}
