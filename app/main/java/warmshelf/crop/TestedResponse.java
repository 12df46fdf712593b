package warmshelf.crop;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A response read from trials. The rate of emergence (1/days) and the share of normal seedlings are linear between
 * neighbouring tested temperatures, as rates nearly are (thermal time), so that the trial's own temperatures give the
 * trial's own days.
 *
 * <p>Beyond the temperatures with days, seed is said to come up only where the published range takes them in and nothing
 * speaks against it: no temperature nearer by where nothing grew. Its days are reckoned there ({@link BeyondTrials}) and
 * called so. Elsewhere nothing is promised.
 */
final class TestedResponse implements TemperatureResponse {
    private final List<TestedCell> cells;
    private final CelsiusRange timed;
    private final CelsiusRange possible;
    private final BeyondTrials beyond;
    private final ComfortableBand band;
    private final String source;
    private final List<EmergenceDisagreement> disagreements;

    /** Without a published range: nothing is said beyond the trials. */
    TestedResponse(List<TestedCell> cells, String source) {
        this(cells, null, source, List.of());
    }

    TestedResponse(
            List<TestedCell> cells,
            @Nullable PublishedRange published,
            String source,
            List<EmergenceDisagreement> disagreements) {
        this.cells = List.copyOf(cells);
        List<TestedCell.CameUp> cameUp = TrialLine.timed(cells);
        this.timed = new CelsiusRange(
                cameUp.get(0).celsius(), cameUp.get(cameUp.size() - 1).celsius());
        this.beyond = new BeyondTrials(cells, published);
        this.possible = beyond.possible();
        this.source = source;
        this.disagreements = List.copyOf(disagreements);
        this.band = ComfortableBand.of(possible, this::wellKnown);
    }

    @Override
    public Optional<Emergence> at(double celsius) {
        return prospect(celsius).emergence();
    }

    @Override
    public Prospect prospect(double celsius) {
        return timed.contains(celsius)
                ? new Prospect.Timed(trial(celsius), Prospect.Basis.TRIAL)
                : beyond.prospect(celsius, TrialLine.share(cells, celsius));
    }

    private Emergence trial(double celsius) {
        return EmergenceSpread.around(TrialLine.days(cells, celsius), TrialLine.share(cells, celsius));
    }

    /** What the comfortable temperatures are judged by: trials, and beyond their days counted seedlings within what is published as best. */
    private Optional<Emergence> wellKnown(double celsius) {
        if (timed.contains(celsius)) {
            return Optional.of(trial(celsius));
        }
        return at(celsius).filter(reckoned -> reckoned.normalShare().isPresent() && beyond.isPublishedBest(celsius));
    }

    @Override
    public CelsiusRange timed() {
        return timed;
    }

    @Override
    public double bestC() {
        return band.bestC();
    }

    @Override
    public CelsiusRange comfortable() {
        return band.range();
    }

    @Override
    public CelsiusRange possible() {
        return possible;
    }

    @Override
    public List<EmergenceDisagreement> disagreements() {
        return disagreements;
    }

    @Override
    public String source() {
        return source;
    }
}
