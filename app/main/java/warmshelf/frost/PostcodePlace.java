package warmshelf.frost;

/**
 * Where a postcode lies.
 *
 * @param country ISO code of two letters
 * @param region state or province
 * @param elevationM metres above the sea, the average of a cell about nine kilometres across
 */
public record PostcodePlace(
        String country,
        String code,
        String place,
        String region,
        double latitude,
        double longitude,
        double elevationM) {

    /** For example 'Duluth, MN 55811'; some codes stand for no settlement, these are named by their digits alone; a point has no code. */
    public String name() {
        if (code.isEmpty()) {
            return place;
        }
        return place.isEmpty() ? "Postcode " + code : "%s, %s %s".formatted(place, region, code);
    }
}
