package warmshelf.testing;

import warmshelf.crop.Crop;
import warmshelf.crop.CropCatalogue;

/** The crops that tests speak of by name. */
public final class Crops {
    public static final Crop PEPPER = of("pepper");
    public static final Crop HOT_PEPPER = of("pepper-very-hot");
    public static final Crop TOMATO = of("tomato");
    public static final Crop LETTUCE = of("lettuce");
    public static final Crop KALE = of("kale");
    public static final Crop MARIGOLD = of("marigold");

    private Crops() {}

    public static Crop of(String id) {
        return CropCatalogue.bundled().get(id);
    }
}
