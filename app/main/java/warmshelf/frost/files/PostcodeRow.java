package warmshelf.frost.files;

/**
 * Where a postcode lies; its elevation is not told.
 *
 * @param country two capital letters
 * @param code in capitals, without spaces and hyphens
 * @param region the largest part of the country that the file names
 */
public record PostcodeRow(
        String country, String code, String place, String region, double latitude, double longitude) {}
