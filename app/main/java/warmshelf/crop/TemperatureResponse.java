package warmshelf.crop;

import java.util.List;
import java.util.Optional;

/** How one crop's seed answers to the temperature of what it lies in. */
public interface TemperatureResponse {
    /** The expected emergence at a temperature; empty where it does not come up, or nobody can say when. */
    Optional<Emergence> at(double celsius);

    /** What is known of a temperature, and on what it rests. */
    default Prospect prospect(double celsius) {
        return at(celsius)
                .<Prospect>map(emergence -> new Prospect.Timed(emergence, Prospect.Basis.STATED))
                .orElseGet(Prospect.NotTested::new);
    }

    /** The temperatures for which somebody gives days. */
    default CelsiusRange timed() {
        return possible();
    }

    /** The temperature of the fastest emergence among those that give a good share of seedlings. */
    double bestC();

    /** Within 25 % of the fastest emergence and 90 % of the best share. */
    CelsiusRange comfortable();

    /** Whether the group itself said at which temperatures its seed is laid to come up, so that no other rule narrows them. */
    default boolean isSaidByTheGroup() {
        return false;
    }

    /** Where it was seen to come up, or is said to. */
    CelsiusRange possible();

    /** The figures before anything was learned here: these themselves, unless they were shifted. */
    default TemperatureResponse published() {
        return this;
    }

    /** Where reprints of the trials behind the figures print different ones; none where they rest on others. */
    default List<EmergenceDisagreement> disagreements() {
        return List.of();
    }

    /** Where the figures come from, in words for the reader. */
    String source();
}
