package warmshelf.frost.garden;

/** Where a garden lies: degrees, south and west negative, and metres above the sea. */
public record GardenPoint(double latitude, double longitude, double elevationM) {}
