package warmshelf.exchange;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import warmshelf.crop.CropCatalogue;

/** Crops that are raised from seed, by what tables call them: their id or their name, in letters of any size. */
final class CropNames {
    private final Map<String, String> ids = new HashMap<>();

    CropNames(CropCatalogue crops) {
        crops.fromSeed().forEach(crop -> ids.putIfAbsent(key(crop.name()), crop.id()));
        crops.fromSeed().forEach(crop -> ids.put(key(crop.id()), crop.id()));
    }

    Optional<String> id(String text) {
        return Optional.ofNullable(ids.get(key(text)));
    }

    private static String key(String text) {
        return text.toLowerCase(Locale.ROOT);
    }
}
