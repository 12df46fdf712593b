package warmshelf.frost.evidence;

import static warmshelf.frost.evidence.EvidenceSentences.SAY;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import warmshelf.frost.PostcodePlace;
import warmshelf.frost.Postcodes;
import warmshelf.frost.evidence.Garden.Postcode;
import warmshelf.frost.garden.GardenPoint;

/** Finds where a garden lies: at the point its member has given, or else in the middle of its postcode. */
public final class Gardens {
    private final FrostSource source;

    public Gardens(FrostSource source) {
        this.source = source;
    }

    /** A member's own garden; empty where no point is given and the postcode is in no table. */
    public Optional<Garden> ofMember(UUID memberId, String country, String postcode) {
        Optional<Garden> place = atPostcode(country, postcode, memberId);
        GardenPoint point = source.evidence().gardens().get(memberId);
        if (point == null) {
            return place;
        }
        return Optional.of(new Garden(
                SAY.atOwnPoint(place.map(Garden::name).orElse(postcode)),
                point.latitude(),
                point.longitude(),
                OptionalDouble.of(point.elevationM()),
                true,
                memberId,
                new Postcode(country, postcode)));
    }

    /** The middle of a postcode, no one's garden in particular. */
    public Optional<Garden> atPostcode(String country, String postcode) {
        return atPostcode(country, postcode, null);
    }

    /** A point that was typed in. */
    public static Garden at(double latitude, double longitude, double elevationM) {
        return new Garden(
                String.format(Locale.ROOT, "%.3f, %.3f", latitude, longitude),
                latitude,
                longitude,
                OptionalDouble.of(elevationM),
                true,
                null,
                null);
    }

    private Optional<Garden> atPostcode(String country, String postcode, @Nullable UUID memberId) {
        Optional<Garden> bundled = Postcodes.bundled().find(country, postcode).map(place -> garden(place, memberId));
        return bundled.isPresent()
                ? bundled
                : source.imported(
                                country.strip().toUpperCase(Locale.ROOT),
                                postcode.toUpperCase(Locale.ROOT).replaceAll("[ -]", ""))
                        .map(place -> garden(place, memberId));
    }

    private static Garden garden(PostcodePlace place, @Nullable UUID memberId) {
        return new Garden(
                place.name(),
                place.latitude(),
                place.longitude(),
                OptionalDouble.of(place.elevationM()),
                false,
                memberId,
                new Postcode(place.country(), place.code()));
    }

    private static Garden garden(FrostSource.ImportedPlace place, @Nullable UUID memberId) {
        return new Garden(
                "%s, %s %s".formatted(place.place(), place.country(), place.code()),
                place.latitude(),
                place.longitude(),
                OptionalDouble.empty(),
                false,
                memberId,
                new Postcode(place.country(), place.code()));
    }
}
