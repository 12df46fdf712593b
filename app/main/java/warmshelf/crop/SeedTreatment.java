package warmshelf.crop;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a crop's seed wants before it is sown, as far as the program needs to know.
 *
 * @param hours how long to soak, where somebody says
 * @param nick whether its hard coat may be nicked
 * @param coldWeeks how long to keep it cold and moist first, where somebody says
 * @param traits what else is known of it
 * @param words in the words of whoever wrote it: read by people only
 */
public record SeedTreatment(Soak soak, Span hours, boolean nick, Span coldWeeks, List<SeedTrait> traits, String words) {
    public static final SeedTreatment UNKNOWN = of(Soak.UNKNOWN);

    public SeedTreatment {
        traits = List.copyOf(traits);
    }

    /** From so many to so many; null where nobody says. */
    public record Span(@Nullable Integer least, @Nullable Integer most) {
        public static final Span UNKNOWN = new Span(null, null);
    }

    /** Nothing but what is said of soaking. */
    public static SeedTreatment of(Soak soak) {
        return new SeedTreatment(soak, Span.UNKNOWN, false, Span.UNKNOWN, List.of(), "");
    }

    /** Whether that is known of it. */
    public boolean has(SeedTrait.Kind kind) {
        return traits.stream().anyMatch(trait -> trait.kind() == kind);
    }

    /** The figures of what is known of it; empty where it is not. */
    public Optional<SeedTrait> trait(SeedTrait.Kind kind) {
        return traits.stream().filter(trait -> trait.kind() == kind).findFirst();
    }

    /** Whether a source speaks for softening its coat, by water or a file. */
    public boolean softens() {
        return soak.spokenFor() || nick;
    }
}
