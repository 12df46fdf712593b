package warmshelf.timeline;

import static warmshelf.timeline.TimelineSentences.SAY;

import java.util.Arrays;
import java.util.List;
import warmshelf.crop.Crop;
import warmshelf.crop.SecondCrop;

/** For which part of the year a sowing is meant. A season is named by the year of its spring and has all three. */
public enum SeasonPart {
    /** Planted out by the last frost of spring. */
    SPRING("spring", SAY.fromSpringOn()),
    /** Planted out in summer, to be ripe by the autumn's frosts. */
    AUTUMN("autumn", SAY.forAutumn()),
    /** Planted out before the autumn's frosts, to stand over winter. */
    WINTER("winter", SAY.overWinter());

    private final String word;
    private final String words;

    SeasonPart(String word, String words) {
        this.word = word;
        this.words = words;
    }

    /** The part of that word. */
    public static SeasonPart named(String word) {
        return Arrays.stream(values())
                .filter(part -> part.word.equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no part of a season is called '" + word + "'"));
    }

    /** Those for which a crop is grown, in the order of the year. */
    public static List<SeasonPart> of(Crop crop) {
        return Arrays.stream(values()).filter(part -> part.suits(crop)).toList();
    }

    private boolean suits(Crop crop) {
        return switch (this) {
            case SPRING -> true;
            case AUTUMN -> SecondCrop.isForAutumn(crop);
            case WINTER -> SecondCrop.overWinter(crop).isPresent();
        };
    }

    /** Its code. */
    public String word() {
        return word;
    }

    /** As in 'sown for autumn'. */
    public String words() {
        return words;
    }
}
