package warmshelf.web;

import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.decision.Reach;
import warmshelf.words.Units;

/**
 * The signed-in person behind a request, with what every page needs to know of the group.
 *
 * @param name whole, for this person's own eyes
 * @param called what others see of the name
 * @param reach how far they decide as a coordinator
 * @param season year of planting out that the group works towards
 * @param tablet no person but a tablet at a rack, whose own row the member is; null: a person
 */
public record Visitor(
        UUID memberId,
        String name,
        String called,
        Reach reach,
        String country,
        String postcode,
        Units units,
        String groupName,
        ZoneId zone,
        int season,
        LocalDate today,
        String csrfToken,
        @Nullable TabletVisit tablet) {

    private static final String ATTRIBUTE = "warmshelf.visitor";

    /** Whether they coordinate the whole group; elsewhere than at their site a coordinator of one is a member. */
    public boolean coordinator() {
        return reach.wholeGroup();
    }

    /** The visitor of a route that needs sign-in; the access check has put it there. */
    public static Visitor of(Context ctx) {
        Visitor visitor = ctx.attribute(ATTRIBUTE);
        if (visitor == null) {
            throw new IllegalStateException("no one is signed in on " + ctx.path());
        }
        return visitor;
    }

    /** The visitor of a route that strangers may use too. */
    public static Optional<Visitor> maybe(Context ctx) {
        return Optional.ofNullable(ctx.attribute(ATTRIBUTE));
    }

    /** Puts the visitor where {@link #of} finds it. */
    public void attachTo(Context ctx) {
        ctx.attribute(ATTRIBUTE, this);
    }
}
