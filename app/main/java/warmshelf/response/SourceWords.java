package warmshelf.response;

import static warmshelf.response.ResponseSentences.SAY;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BinaryOperator;
import warmshelf.crop.Crop;
import warmshelf.crop.CropSources;
import warmshelf.crop.Hardiness;
import warmshelf.crop.PlantingOutWords;
import warmshelf.crop.SeedCover;
import warmshelf.crop.SourceMatter;
import warmshelf.crop.SourceStatement;
import warmshelf.crop.SourcedRange;
import warmshelf.words.Counted;
import warmshelf.words.Units;

/** What extension services say of a crop, in the reader's units. */
final class SourceWords {
    private final Units units;

    SourceWords(Units units) {
        this.units = units;
    }

    /**
     * One source's word.
     *
     * @param label what it speaks of
     * @param words what it says of it
     */
    public record Said(String label, String words, SourceStatement statement) {}

    /** All that the sources say, one line each. */
    List<Said> all(Crop crop) {
        List<Said> said = new ArrayList<>();
        for (SourceMatter matter : SourceMatter.values()) {
            for (SourceStatement each : CropSources.bundled().of(crop, matter).statements()) {
                said.add(new Said(label(matter), words(matter, each), each));
            }
        }
        return said;
    }

    /** The range over the sources, where it goes beyond the crop's own figure; else empty. */
    String range(Crop crop, SourceMatter matter) {
        SourcedRange range = CropSources.bundled().of(crop, matter);
        return range.differs() ? span(matter, range.low(), range.high()) : "";
    }

    private String words(SourceMatter matter, SourceStatement said) {
        String span = span(matter, said.least(), said.most());
        if (said.low() == null) {
            return SAY.orLess(span);
        }
        return said.high() == null ? SAY.orMore(span) : span;
    }

    private String span(SourceMatter matter, double low, double high) {
        return switch (matter) {
            case WEEKS_INDOORS -> Counted.weeks((int) Math.round(low), (int) Math.round(high));
            case PLANTING_OUT -> PlantingOutWords.of((int) low, (int) high);
            case DEPTH -> ends(units.length(low), units.length(high), SAY::range);
            case LIGHT ->
                ends(SeedCover.at((int) low).words(), SeedCover.at((int) high).words(), SAY::either);
            case HARDINESS ->
                ends(Hardiness.at((int) low).words(), Hardiness.at((int) high).words(), SAY::range);
        };
    }

    private static String ends(String low, String high, BinaryOperator<String> both) {
        return low.equals(high) ? low : both.apply(low, high);
    }

    static String label(SourceMatter matter) {
        return switch (matter) {
            case WEEKS_INDOORS -> SAY.weeksIndoors();
            case PLANTING_OUT -> SAY.plantingOut();
            case DEPTH -> SAY.depth();
            case LIGHT -> SAY.light();
            case HARDINESS -> SAY.cold();
        };
    }
}
