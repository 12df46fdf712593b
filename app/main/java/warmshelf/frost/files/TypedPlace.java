package warmshelf.frost.files;

/** Where a station lies, as somebody typed it: degrees, south and west negative, and metres above the sea. */
public record TypedPlace(double latitude, double longitude, double elevationM) {}
