package warmshelf.frost;

import java.util.List;

/**
 * What a frost climate rests on, so that a reader can judge it.
 *
 * @param cells grid cells used, in words
 * @param referenceElevationM the elevation that the surface's dates hold for
 * @param elevationM the point's elevation
 * @param elevationSdM how well that elevation is known, standard deviation in metres; 0 where it was typed in
 * @param nearestStationKm distance of the nearest station with published dates
 * @param freezeRareShare share of near stations where a freeze comes in fewer than one year in ten
 * @param notes cautions in plain sentences
 */
public record FrostEvidence(
        List<String> cells,
        double referenceElevationM,
        double elevationM,
        double elevationSdM,
        double nearestStationKm,
        double freezeRareShare,
        List<String> notes) {}
