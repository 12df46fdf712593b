package warmshelf.plan.engine;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import warmshelf.BadInput;

/** Reads a plan as {@code plan} prints it, or as another program does: only what the rules speak of is looked at. */
public final class AnswerFile {
    private static final int ANY = Integer.MAX_VALUE;

    private AnswerFile() {}

    public static SeasonPlan read(Path file) {
        return plan(PlanFile.tree(file));
    }

    static SeasonPlan plan(JsonNode tree) {
        JsonFields plan = new JsonFields(tree, PlanFile.THE_FILE);
        for (String list : new String[] {"placed", "setPoints", "refused"}) {
            if (!plan.has(list)) {
                throw new BadInput("The plan has no list '%s', which is needed.".formatted(list));
            }
        }
        return new SeasonPlan(
                plan.objects("placed").stream().map(AnswerFile::placed).toList(),
                plan.objects("setPoints").stream().map(AnswerFile::span).toList(),
                plan.objects("refused").stream()
                        .map(refused -> new Refused(
                                refused.text("request"),
                                new NoPlaceReason.AsWritten(words(refused, "reason")),
                                new PlaceChange.Proposed(words(refused, "change"))))
                        .toList());
    }

    private static PlacedStay placed(JsonFields stay) {
        return new PlacedStay(
                stay.text("request"),
                stay.text("mat"),
                stay.whole("place", 1, ANY),
                stay.slot("quarters"),
                stay.days(),
                stay.has("light") ? light(stay.object("light")) : null);
    }

    private static PlacedStay.LitStay light(JsonFields stay) {
        return new PlacedStay.LitStay(
                stay.text("litShelf"), stay.whole("place", 1, ANY), stay.slot("quarters"), stay.days());
    }

    private static SetPointSpan span(JsonFields span) {
        return new SetPointSpan(
                span.text("mat"), span.days(), span.whole("celsius", JsonFields.COLDEST, JsonFields.HOTTEST));
    }

    private static String words(JsonFields refused, String name) {
        @Nullable String words = refused.textOrNull(name);
        return words == null ? "" : words;
    }
}
