package warmshelf.frost.evidence;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import warmshelf.frost.FrostClimate;
import warmshelf.frost.FrostClimates;
import warmshelf.frost.FrostEvidence;
import warmshelf.frost.FrostSeason;
import warmshelf.frost.MeasuredError;
import warmshelf.frost.Threshold;
import warmshelf.frost.station.Side;
import warmshelf.frost.station.StationEstimate;
import warmshelf.frost.station.StationFrost;
import warmshelf.frost.station.StationSet;

/** What the evidence alone tells of a garden at one threshold, before anybody corrects it. */
final class UncorrectedFrost {
    /** Stations farther than this are left out: they would say less than the garden's own country does. */
    private static final double FARTHEST_KM = 300;
    /** How far an elevation guessed from the stations around may be off, a standard deviation in metres. */
    private static final double GUESSED_ELEVATION_SD_M = 150;

    private final Garden garden;
    private final GroupEvidence evidence;
    private final Threshold threshold;
    private final StationSet stations;

    UncorrectedFrost(Garden garden, GroupEvidence evidence, Threshold threshold) {
        this.garden = garden;
        this.evidence = evidence;
        this.threshold = threshold;
        stations = new StationSet(elsewhere());
    }

    /** The climate; empty where neither the surface nor a station tells it. */
    Optional<FrostClimate> climate() {
        OptionalDouble known = garden.elevationM().isPresent()
                ? garden.elevationM()
                : stations.elevationAround(garden.latitude(), garden.longitude());
        if (known.isEmpty()) {
            return Optional.empty();
        }
        double elevation = known.getAsDouble();
        Optional<FrostClimate> surface = FrostClimates.find(
                        garden.name(), garden.latitude(), garden.longitude(), elevation, garden.exact())
                .map(this::atThreshold);
        double elevationSd = surface.map(climate -> climate.evidence().elevationSdM())
                .orElse(garden.exact() ? 0.0 : GUESSED_ELEVATION_SD_M);
        Optional<StationEstimate> estimate =
                StationEstimate.at(stations, garden.latitude(), garden.longitude(), elevation, elevationSd);
        return joined(elevation, elevationSd, surface, estimate).map(this::withOwnThermometers);
    }

    /** Stations near enough to tell something; a thermometer in this very garden is reckoned apart. */
    private List<StationFrost> elsewhere() {
        return evidence.stations().stream()
                .filter(station -> !isOwn(station))
                .filter(station -> StationSet.distanceKm(
                                station.latitude(), station.longitude(), garden.latitude(), garden.longitude())
                        < FARTHEST_KM)
                .flatMap(station -> station.at(threshold).stream())
                .toList();
    }

    private boolean isOwn(LocalStation station) {
        return station.garden() != null && station.garden().equals(garden.memberId());
    }

    private FrostClimate atThreshold(FrostClimate climate) {
        return threshold == Threshold.FROST
                ? climate
                : with(
                        climate,
                        shifted(Side.SPRING, climate.spring()),
                        shifted(Side.AUTUMN, climate.autumn()),
                        climate.evidence());
    }

    private FrostSeason shifted(Side side, FrostSeason season) {
        return ThresholdShift.moved(side, threshold, season);
    }

    private Optional<FrostClimate> joined(
            double elevation, double elevationSd, Optional<FrostClimate> surface, Optional<StationEstimate> estimate) {
        if (estimate.isEmpty()) {
            return surface;
        }
        StationEstimate told = estimate.get();
        FrostSeason spring = told.spring().withAnyFrost(anyFrost(Side.SPRING, told));
        FrostSeason autumn = told.autumn().withAnyFrost(anyFrost(Side.AUTUMN, told));
        if (surface.isPresent()) {
            return Optional.of(blended(surface.get(), told, spring, autumn));
        }
        double least = leastSdDays(told);
        FrostEvidence rests = new FrostEvidence(
                null,
                EvidenceParts.stations(told, 1, evidence),
                elevationSd,
                null,
                EvidenceParts.notes(garden, elevation, told, byMonths(told)));
        return Optional.of(new FrostClimate(
                garden.name(),
                garden.latitude(),
                garden.longitude(),
                elevation,
                atLeast(least, spring),
                atLeast(least, autumn),
                rests));
    }

    private boolean byMonths(StationEstimate told) {
        return told.stations().stream()
                .flatMap(part -> evidence.station(part.station().id()).stream())
                .anyMatch(station -> station.kind() == LocalStation.Kind.MONTHLY);
    }

    /** What was measured elsewhere than in the United States, by the way in which the station that counts most is told. */
    private double leastSdDays(StationEstimate told) {
        double around = MeasuredError.leastSdAbroadDays(nearestKm(told));
        boolean monthsCountMost = evidence.station(
                        told.stations().get(0).station().id())
                .map(LocalStation::kind)
                .equals(Optional.of(LocalStation.Kind.MONTHLY));
        return monthsCountMost
                ? Math.max(around, MeasuredError.monthlySdDays(garden.latitude(), garden.longitude()))
                : around;
    }

    private static double nearestKm(StationEstimate told) {
        return told.stations().stream()
                .mapToDouble(StationEstimate.Part::distanceKm)
                .min()
                .orElse(FARTHEST_KM);
    }

    private static FrostSeason atLeast(double sdDays, FrostSeason season) {
        return season.withScatter(Math.max(sdDays, season.stationScatterDays()), season.elevationSdDays());
    }

    private FrostClimate blended(FrostClimate grid, StationEstimate told, FrostSeason spring, FrostSeason autumn) {
        SeasonBlend both = SeasonBlend.of(grid.spring(), spring);
        FrostEvidence rests = grid.evidence();
        FrostEvidence.Surface surface = rests.surface();
        return with(
                grid,
                both.season(),
                SeasonBlend.of(grid.autumn(), autumn).season(),
                new FrostEvidence(
                        surface == null ? null : surface.weighing(1 - both.secondShare()),
                        EvidenceParts.stations(told, both.secondShare(), evidence),
                        rests.elevationSdM(),
                        null,
                        rests.notes()));
    }

    /** The share of seasons with any frost as the stations know it, the weightier counting more; 1 where none tells. */
    private double anyFrost(Side side, StationEstimate told) {
        double sum = 0;
        double total = 0;
        for (StationEstimate.Part part : told.stations()) {
            double weight = Math.max(0, part.weight());
            OptionalDouble any = evidence.station(part.station().id())
                    .map(station -> station.of(threshold, side).anyFrost())
                    .orElse(OptionalDouble.empty());
            sum += weight * any.orElse(1);
            total += weight;
        }
        return total == 0 ? 1 : sum / total;
    }

    private FrostClimate withOwnThermometers(FrostClimate told) {
        FrostClimate climate = told;
        for (LocalStation own : evidence.stations()) {
            if (isOwn(own)) {
                climate = withOwn(climate, own);
            }
        }
        return climate;
    }

    private FrostClimate withOwn(FrostClimate climate, LocalStation own) {
        Optional<SeasonBlend> spring = own.blended(threshold, Side.SPRING, climate.spring());
        Optional<SeasonBlend> autumn = own.blended(threshold, Side.AUTUMN, climate.autumn());
        if (spring.isEmpty() && autumn.isEmpty()) {
            return climate;
        }
        double share = spring.map(SeasonBlend::secondShare).orElse(0.0);
        return with(
                climate,
                spring.map(SeasonBlend::season).orElse(climate.spring()),
                autumn.map(SeasonBlend::season).orElse(climate.autumn()),
                EvidenceParts.withOwn(climate.evidence(), own, threshold, share));
    }

    private static FrostClimate with(
            FrostClimate climate, FrostSeason spring, FrostSeason autumn, FrostEvidence evidence) {
        return new FrostClimate(
                climate.place(),
                climate.latitude(),
                climate.longitude(),
                climate.elevationM(),
                spring,
                autumn,
                evidence);
    }
}
