package warmshelf.crop;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A response read from trials. The rate of emergence (1/days) and the share of normal seedlings are linear between
 * neighbouring tested temperatures, as rates nearly are (thermal time), so that the trial's own temperatures give the
 * trial's own days. Outside the temperatures where seed came up nothing is promised, not even between the last of them and
 * a temperature where nothing grew: the edge lies somewhere between the two and no one looked where.
 */
final class TestedResponse implements TemperatureResponse {
    private final List<TestedCell> cells;
    private final List<TestedCell> emerged;
    private final CelsiusRange possible;
    private final ComfortableBand band;
    private final String source;
    private final List<EmergenceDisagreement> disagreements;

    TestedResponse(List<TestedCell> cells, String source) {
        this(cells, source, List.of());
    }

    TestedResponse(List<TestedCell> cells, String source, List<EmergenceDisagreement> disagreements) {
        this.cells = cells.stream().filter(cell -> cell.share().isPresent()).toList();
        this.emerged = cells.stream().filter(cell -> cell.days().isPresent()).toList();
        this.possible = new CelsiusRange(
                emerged.get(0).celsius(), emerged.get(emerged.size() - 1).celsius());
        this.source = source;
        this.disagreements = List.copyOf(disagreements);
        this.band = ComfortableBand.of(this);
    }

    @Override
    public Optional<Emergence> at(double celsius) {
        if (!possible.contains(celsius)) {
            return Optional.empty();
        }
        OptionalDouble days =
                interpolated(emerged, celsius, cell -> 1 / cell.days().getAsDouble());
        return Optional.of(EmergenceSpread.around(1 / days.getAsDouble(), shareAt(celsius)));
    }

    private OptionalDouble shareAt(double celsius) {
        return interpolated(cells, celsius, cell -> cell.share().getAsDouble());
    }

    private static OptionalDouble interpolated(List<TestedCell> cells, double celsius, Figure figure) {
        for (int i = 0; i < cells.size(); i++) {
            TestedCell here = cells.get(i);
            if (here.celsius() == celsius) {
                return OptionalDouble.of(figure.of(here));
            }
            if (here.celsius() > celsius) {
                return i == 0
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(between(cells.get(i - 1), here, celsius, figure));
            }
        }
        return OptionalDouble.empty();
    }

    private static double between(TestedCell colder, TestedCell warmer, double celsius, Figure figure) {
        double way = (celsius - colder.celsius()) / (warmer.celsius() - colder.celsius());
        return figure.of(colder) + way * (figure.of(warmer) - figure.of(colder));
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

    private interface Figure {
        double of(TestedCell cell);
    }
}
