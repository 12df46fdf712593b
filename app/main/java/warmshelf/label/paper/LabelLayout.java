package warmshelf.label.paper;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import warmshelf.label.paper.LabelDrawing.Written;
import warmshelf.label.paper.LabelFlow.Chosen;

/**
 * What stands on a label of a size, and how large. Everything in full, in letters that are read at arm's length, where it fits;
 * else in shorter forms; else in smaller letters; else what tells least apart is left out, and said so. The code always stays.
 */
public final class LabelLayout {
    /** Sizes of letters (em) in millimetres that are read standing in front of a shelf: about 7 to 14 points. */
    private static final double[] COMFORTABLE = {4.8, 4.2, 3.7, 3.2, 2.8, 2.5};

    /** About 5 and 6 points, as on packets: common practice has 5 points as the least that is read at all. */
    private static final double[] SMALL = {2.2, 1.9};

    /** What printers put a label off by, and what is cut with it: more where there is room to give. */
    private static final double MARGIN = 1.5;

    private static final double NARROW_MARGIN = 0.9;
    private static final double NARROW = 18;
    private static final double LEAST_SIDE = 3;

    private final LabelStock stock;
    private final TextWidth letters;

    public LabelLayout(LabelStock stock, Lettering letters) {
        this(stock, letters::width);
    }

    LabelLayout(LabelStock stock, TextWidth letters) {
        this.stock = stock;
        this.letters = letters;
    }

    /** The label; empty where not even its code can be written. */
    public Optional<LabelDrawing> of(LabelText text) {
        double across = stock.across();
        if (across < LEAST_SIDE) {
            return Optional.empty();
        }
        Optional<QrSquare> qr = QrSquare.fitting(text.address(), across);
        return qr.flatMap(square -> beside(square, text)).or(() -> set(text, margin(), null));
    }

    /** The shortest side on which a QR code of an address can be read, in millimetres. */
    public static double leastForQr(String address) {
        return QrSquare.leastRoom(address);
    }

    private double margin() {
        return stock.across() < NARROW ? NARROW_MARGIN : MARGIN;
    }

    private Optional<LabelDrawing> beside(QrSquare square, LabelText text) {
        return set(text, square.side(), square);
    }

    private Optional<LabelDrawing> set(LabelText text, double from, @Nullable QrSquare square) {
        double width = stock.along() - from - margin();
        double height = stock.across() - 2 * margin();
        return choose(text, width, height).map(chosen -> {
            double down = margin() + (height - depth(chosen.written())) / 2;
            return new LabelDrawing(
                    square,
                    0,
                    square == null ? 0 : (stock.across() - square.side()) / 2,
                    chosen.written().stream()
                            .map(each -> new Written(
                                    each.text(), each.bold(), each.x() + from, each.baseline() + down, each.size()))
                            .toList(),
                    chosen.leftOut());
        });
    }

    /** How far down the last line reaches. */
    private static double depth(List<Written> written) {
        return written.stream()
                .mapToDouble(each -> each.baseline() + 0.25 * each.size())
                .max()
                .orElse(0);
    }

    private record Choice(List<Written> written, List<LabelPart.Kind> leftOut) {}

    private Optional<Choice> choose(LabelText text, double width, double height) {
        List<LabelPart> parts = text.parts().stream()
                .sorted(Comparator.comparing(LabelPart::kind))
                .toList();
        Room room = new Room(text.code(), width, height);
        return room.inFull(parts, COMFORTABLE)
                .or(() -> room.shortened(parts, COMFORTABLE))
                .or(() -> room.shortened(parts, SMALL))
                .or(() -> room.withoutSome(parts));
    }

    private final class Room {
        private final String code;
        private final double width;
        private final double height;

        Room(String code, double width, double height) {
            this.code = code;
            this.width = width;
            this.height = height;
        }

        Optional<Choice> inFull(List<LabelPart> parts, double[] sizes) {
            List<Chosen> all = parts.stream()
                    .map(part -> new Chosen(part.kind(), part.longest()))
                    .toList();
            return largest(all, sizes).map(written -> new Choice(written, List.of()));
        }

        /** All of them, the first in as long a form as leaves room for the rest. */
        Optional<Choice> shortened(List<LabelPart> parts, double[] sizes) {
            for (double size : sizes) {
                Optional<List<Written>> written = lengthened(parts, size);
                if (written.isPresent()) {
                    return written.map(each -> new Choice(each, List.of()));
                }
            }
            return Optional.empty();
        }

        private Optional<List<Written>> lengthened(List<LabelPart> parts, double size) {
            List<Chosen> chosen = new ArrayList<>(parts.stream()
                    .map(part -> new Chosen(part.kind(), part.shortest()))
                    .toList());
            Optional<List<Written>> written = set(chosen, size);
            for (int i = 0; i < parts.size() && written.isPresent(); i++) {
                for (String form : parts.get(i).forms()) {
                    Chosen before = chosen.set(i, new Chosen(parts.get(i).kind(), form));
                    Optional<List<Written>> longer = set(chosen, size);
                    if (longer.isPresent()) {
                        written = longer;
                        break;
                    }
                    chosen.set(i, before);
                }
            }
            return written;
        }

        /** As many as there is room for, those first that tell most apart. */
        Optional<Choice> withoutSome(List<LabelPart> parts) {
            List<LabelPart> kept = new ArrayList<>();
            List<LabelPart.Kind> leftOut = new ArrayList<>();
            for (LabelPart part : parts) {
                kept.add(part);
                if (shortened(kept, SMALL).isEmpty()) {
                    kept.remove(kept.size() - 1);
                    leftOut.add(part.kind());
                }
            }
            return (kept.isEmpty() ? shortened(kept, COMFORTABLE) : Optional.<Choice>empty())
                    .or(() -> shortened(kept, SMALL))
                    .map(choice -> new Choice(choice.written(), List.copyOf(leftOut)));
        }

        private Optional<List<Written>> largest(List<Chosen> parts, double[] sizes) {
            for (double size : sizes) {
                Optional<List<Written>> written = set(parts, size);
                if (written.isPresent()) {
                    return written;
                }
            }
            return Optional.empty();
        }

        private Optional<List<Written>> set(List<Chosen> parts, double size) {
            return LabelFlow.of(code, parts, width, height, size, letters);
        }
    }
}
