package warmshelf.shelf;

import org.jspecify.annotations.Nullable;
import warmshelf.words.FormReader;

/**
 * A form for a site, rack, shelf or mat.
 *
 * @param template where its fields stand
 * @param address where it is sent
 * @param stored what it says in the database; null when it is being added
 * @param overtaken whether someone else changed it while this form was filled in
 */
public record ShelvingEditPage(
        String template,
        String heading,
        String address,
        FormReader form,
        @Nullable Stored stored,
        boolean overtaken) {

    /** What the thing says now, and its version. */
    public record Stored(String words, int version) {}

    static ShelvingEditPage adding(String template, String heading, String address, FormReader form) {
        return new ShelvingEditPage(template, heading, address, form, null, false);
    }

    static ShelvingEditPage changing(
            String template, String heading, String address, FormReader form, String words, int version) {
        return new ShelvingEditPage(template, heading, address, form, new Stored(words, version), false);
    }

    /** The version to save over: the one the person has seen. */
    public String version() {
        String current = stored == null ? "" : String.valueOf(stored.version());
        return overtaken ? current : form.typed().getOrDefault("version", current);
    }

    /** Where it can be deleted; only what stands can. */
    public String deletion() {
        return address.replaceFirst("/change$", "/deletion");
    }

    /** Where it can be retired, or brought back. */
    public String retirement() {
        return address.replaceFirst("/change$", "/retirement");
    }

    /** The same text once more, to be saved over the newer state by someone who has now seen it. */
    ShelvingEditPage whenOvertaken() {
        return new ShelvingEditPage(template, heading, address, form, stored, true);
    }
}
