package warmshelf.crop;

import java.util.Arrays;
import java.util.OptionalDouble;

/** What an extension service says of a crop, and the figure that the crop itself has for it. */
public enum SourceMatter {
    /** Weeks from sowing to planting out. */
    WEEKS_INDOORS("weeks-indoors") {
        @Override
        double read(String cell) {
            return Double.parseDouble(cell);
        }

        @Override
        OptionalDouble least(Crop crop) {
            return OptionalDouble.of(crop.weeksIndoorsMin());
        }

        @Override
        OptionalDouble most(Crop crop) {
            return OptionalDouble.of(crop.weeksIndoorsMax());
        }
    },
    /** Days from the average last spring frost to planting out; negative: before it. */
    PLANTING_OUT("planting-out") {
        @Override
        double read(String cell) {
            return Double.parseDouble(cell);
        }

        @Override
        OptionalDouble least(Crop crop) {
            return OptionalDouble.of(crop.plantOutOffsetDays());
        }

        @Override
        OptionalDouble most(Crop crop) {
            return OptionalDouble.of(crop.plantOutOffsetDaysLatest());
        }
    },
    /** Millimetres of covering; the table has inches, as the sources do. */
    DEPTH("depth") {
        @Override
        double read(String cell) {
            return Math.round(MM_PER_INCH * Double.parseDouble(cell));
        }

        @Override
        OptionalDouble least(Crop crop) {
            return crop.depthMm() == null ? OptionalDouble.empty() : OptionalDouble.of(crop.depthMm());
        }

        @Override
        OptionalDouble most(Crop crop) {
            return least(crop);
        }
    },
    /** How seed is covered with a view to light, as the place of a {@link SeedCover}. */
    LIGHT("light") {
        @Override
        double read(String cell) {
            return SeedCover.named(cell).place();
        }

        @Override
        OptionalDouble least(Crop crop) {
            return OptionalDouble.of(SeedCover.leastOf(crop).place());
        }

        @Override
        OptionalDouble most(Crop crop) {
            return OptionalDouble.of(SeedCover.mostOf(crop).place());
        }
    },
    /** The cold that it bears, as the place of a {@link Hardiness}. */
    HARDINESS("hardiness") {
        @Override
        double read(String cell) {
            return Hardiness.named(cell).place();
        }

        @Override
        OptionalDouble least(Crop crop) {
            return OptionalDouble.of(crop.hardiness().place());
        }

        @Override
        OptionalDouble most(Crop crop) {
            return least(crop);
        }
    };

    private static final double MM_PER_INCH = 25.4;

    private final String code;

    SourceMatter(String code) {
        this.code = code;
    }

    static SourceMatter named(String code) {
        return Arrays.stream(values())
                .filter(matter -> matter.code.equals(code))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no source speaks of '" + code + "'"));
    }

    /** The number of a cell of the table. */
    abstract double read(String cell);

    /** The crop's own figure, or the lower end of it; empty where it has none. */
    abstract OptionalDouble least(Crop crop);

    /** The crop's own figure, or the upper end of it; empty where it has none. */
    abstract OptionalDouble most(Crop crop);
}
