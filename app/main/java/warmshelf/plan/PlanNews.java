package warmshelf.plan;

import org.jspecify.annotations.Nullable;
import warmshelf.plan.engine.Refused;
import warmshelf.words.Message;
import warmshelf.words.Units;

/**
 * What a member is told of one sowing by a publication.
 *
 * @param begins in words without any figure that has a unit
 * @param refused why it has no place, where it was refused; null where the words say all
 */
record PlanNews(String begins, @Nullable Refused refused) implements Message {

    /** News that need no more than words. */
    static PlanNews of(String words) {
        return new PlanNews(words, null);
    }

    /** As the database keeps it. */
    static PlanNews kept(String words, @Nullable String refused) {
        return new PlanNews(words, refused == null ? null : RefusedJson.read(refused));
    }

    @Nullable
    String refusedText() {
        return refused == null ? null : RefusedJson.write(refused);
    }

    /** How it begins, cut where it would be too long to be kept. */
    String begins(int longest) {
        return begins.length() <= longest ? begins : begins.substring(0, longest);
    }

    @Override
    public String words(Units units) {
        return refused == null ? begins : (begins + " " + refused.words(units)).strip();
    }
}
