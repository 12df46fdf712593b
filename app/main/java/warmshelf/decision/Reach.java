package warmshelf.decision;

import java.util.Collection;
import java.util.Set;
import java.util.UUID;

/**
 * How far somebody may decide as a coordinator: in the whole group, at some sites, or nowhere. The one judge of it, for what
 * pages offer and for what is saved.
 *
 * @param wholeGroup whether it reaches everywhere, and to what is of no site
 * @param sites those it reaches to otherwise
 */
public record Reach(boolean wholeGroup, Set<UUID> sites) {
    public static final Reach NOWHERE = new Reach(false, Set.of());
    public static final Reach WHOLE_GROUP = new Reach(true, Set.of());

    public Reach {
        sites = Set.copyOf(sites);
    }

    /** Of a coordinator of those sites alone; of none of them it is that of any member. */
    public static Reach at(Collection<UUID> sites) {
        return new Reach(false, Set.copyOf(sites));
    }

    /** Whether it reaches anywhere: such a person decides on what has no site yet. */
    public boolean coordinates() {
        return wholeGroup || !sites.isEmpty();
    }

    public boolean covers(UUID site) {
        return wholeGroup || sites.contains(site);
    }

    /** Whether all that a thing touches is within it; what touches no site is decided by whoever coordinates any. */
    public boolean coversAll(Collection<UUID> touched) {
        return coordinates() && touched.stream().allMatch(this::covers);
    }
}
