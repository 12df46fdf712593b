package warmshelf.shelf;

import static warmshelf.shelf.ShelfSentences.SAY;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import warmshelf.words.FormReader;
import warmshelf.words.Units;

/** Reads what was typed of a new rack with its shelves. All its mats are alike, and so are its lights; each can be changed later. */
final class NewRackForm {
    /** As many as one form shows; more are added one by one. */
    static final int SHELVES = 6;

    private static final Pattern NUMBERED = Pattern.compile("M(\\d{1,5})");

    private NewRackForm() {}

    /** The field of a shelf, counted from the top. */
    static String field(int fromTop) {
        return "shelf-" + fromTop;
    }

    /**
     * What was typed as a draft; to be used only if the reader is ok afterwards.
     *
     * @param mats of the group, so that no new one gets a name twice
     */
    static NewRack read(FormReader reader, Units units, List<Mat> mats) {
        RackDraft rack = RackForm.read(reader);
        Map<Integer, ShelfContent> contents = new HashMap<>();
        for (int fromTop = 1; fromTop <= SHELVES; fromTop++) {
            content(reader, fromTop, contents);
        }
        int next = nextNumber(mats);
        boolean lit = contents.values().stream().anyMatch(ShelfContent::lit);
        int litPlaces = lit ? reader.wholeNumber("litPlaces", SAY.litPlacesField(), 1, 12) : 0;
        int lightWatts = lit ? reader.wholeNumber("lightWatts", SAY.lightWattsField(), 1, 5000) : 0;
        Optional<MatDraft> alike = contents.values().stream().anyMatch(each -> each.mats() > 0)
                ? Optional.of(MatForm.readNameless(reader, units))
                : Optional.empty();
        List<NewRack.NewShelf> shelves = new ArrayList<>();
        for (int fromTop = 1; fromTop <= SHELVES; fromTop++) {
            ShelfContent content = contents.get(fromTop);
            if (content != null) {
                int first = next;
                next += content.mats();
                shelves.add(new NewRack.NewShelf(
                        new ShelfDraft(fromTop, content.lit() ? litPlaces : 0, content.lit() ? lightWatts : 0),
                        alike.stream()
                                .flatMap(mat -> IntStream.range(0, content.mats())
                                        .mapToObj(number -> mat.named("M" + (first + number), number + 1)))
                                .toList()));
            }
        }
        return new NewRack(rack, shelves);
    }

    /** Left out: there is no such shelf. */
    private static void content(FormReader reader, int fromTop, Map<Integer, ShelfContent> contents) {
        String field = field(fromTop);
        if (!reader.text(field).isEmpty()) {
            String word = reader.choice(
                    field,
                    SAY.shelfField(fromTop),
                    ShelfContent.all().stream().map(ShelfContent::word).toList());
            contents.put(fromTop, ShelfContent.named(word));
        }
    }

    /** Mats are called M1, M2 and so on through the whole group. */
    private static int nextNumber(List<Mat> mats) {
        return 1
                + mats.stream()
                        .map(mat -> NUMBERED.matcher(mat.name()))
                        .filter(Matcher::matches)
                        .mapToInt(found -> Integer.parseInt(found.group(1)))
                        .max()
                        .orElse(0);
    }

    /**
     * What the form shows at first: mats and lights as the group has them, and the shelves of a rack that the new one is like.
     *
     * @param like the shelves of that rack; none: of no rack
     */
    static Map<String, List<String>> blank(int walkOrder, List<Shelf> like, List<Shelf> all, Units units) {
        Map<String, List<String>> typed = new HashMap<>(RackForm.blank(walkOrder));
        Stream.concat(all.stream(), like.stream())
                .flatMap(shelf -> shelf.mats().stream())
                .reduce((one, other) -> other)
                .ifPresent(mat -> typed.putAll(MatForm.alike(mat, units)));
        Stream.concat(all.stream(), like.stream())
                .filter(Shelf::isLit)
                .reduce((one, other) -> other)
                .ifPresent(shelf -> {
                    typed.put(
                            "litPlaces",
                            List.of(String.valueOf(shelf.litPlaces().size())));
                    typed.put("lightWatts", List.of(String.valueOf(shelf.lightWatts())));
                });
        like.stream()
                .filter(shelf -> shelf.fromTop() <= SHELVES)
                .forEach(shelf -> typed.put(
                        field(shelf.fromTop()), List.of(ShelfContent.of(shelf).word())));
        return typed;
    }
}
