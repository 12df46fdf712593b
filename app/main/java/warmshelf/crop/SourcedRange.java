package warmshelf.crop;

import java.util.List;
import java.util.OptionalDouble;

/** The range over what sources say of one matter of a crop, beside the crop's own figure. */
public record SourcedRange(SourceMatter matter, Crop crop, List<SourceStatement> statements) {
    public SourcedRange {
        statements = List.copyOf(statements);
    }

    public boolean isEmpty() {
        return statements.isEmpty();
    }

    /** The least that any source says. */
    public double low() {
        return statements.stream()
                .mapToDouble(SourceStatement::least)
                .min()
                .orElseThrow(() -> new IllegalStateException("no source says anything"));
    }

    /** The most that any source says. */
    public double high() {
        return statements.stream()
                .mapToDouble(SourceStatement::most)
                .max()
                .orElseThrow(() -> new IllegalStateException("no source says anything"));
    }

    /** How many publishers speak: several pages of one are one source. */
    public long publishers() {
        return statements.stream().map(SourceStatement::publisher).distinct().count();
    }

    /**
     * Whether somebody should be shown the range: some source goes beyond what the crop's own figure allows. What all sources
     * keep within is no disagreement.
     */
    public boolean differs() {
        OptionalDouble least = matter.least(crop);
        OptionalDouble most = matter.most(crop);
        return !isEmpty()
                && least.isPresent()
                && most.isPresent()
                && (low() < least.getAsDouble() || high() > most.getAsDouble());
    }

    /** The publishers all of whose statements leave the crop's own figure out. */
    public List<String> against() {
        OptionalDouble least = matter.least(crop);
        OptionalDouble most = matter.most(crop);
        if (least.isEmpty() || most.isEmpty()) {
            return List.of();
        }
        return statements.stream()
                .map(SourceStatement::publisher)
                .distinct()
                .filter(publisher -> statements.stream()
                        .filter(statement -> statement.publisher().equals(publisher))
                        .allMatch(statement -> statement.isOutside(least.getAsDouble(), most.getAsDouble())))
                .toList();
    }
}
