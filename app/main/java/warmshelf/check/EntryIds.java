package warmshelf.check;

import java.nio.charset.StandardCharsets;
import java.util.UUID;
import warmshelf.words.FormReader;

/** The id of an entry that came from a form which does not bring one. */
final class EntryIds {
    private EntryIds() {}

    /**
     * The round has hundreds of forms, so they share one random number a page instead of carrying an id each; with what the
     * form is about it makes an id that is the same each time this form is sent, so that pressing twice keeps one entry.
     *
     * @param subject the sowing or mat it is about
     */
    static UUID of(FormReader form, UUID subject) {
        String page = form.text("page");
        if (page.isEmpty()) {
            return UUID.randomUUID();
        }
        String about = page + "/" + subject + "/" + form.text("step");
        return UUID.nameUUIDFromBytes(about.getBytes(StandardCharsets.UTF_8));
    }
}
