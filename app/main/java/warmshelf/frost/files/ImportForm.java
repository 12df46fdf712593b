package warmshelf.frost.files;

import static warmshelf.frost.files.FilesSentences.SAY;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import warmshelf.BadInput;
import warmshelf.words.Choice;
import warmshelf.words.FormReader;
import warmshelf.words.Units;

/** The form that sends files: what they are, whose figures, and where a station lies that does not say so itself. */
public final class ImportForm {
    private static final String TELL = "tell";
    private static final int LONGEST_SOURCE = 200;

    private final FormReader reader;
    private final @Nullable TypedPlace place;
    private final String source;
    private @Nullable ImportKind kind;

    private ImportForm(FormReader reader, @Nullable TypedPlace place, String source) {
        this.reader = reader;
        this.place = place;
        this.source = source;
    }

    static ImportForm blank() {
        return new ImportForm(new FormReader(Map.of("kind", List.of(TELL))), null, "");
    }

    /**
     * The form as it was sent, with a look at the files' first line.
     *
     * @param files those sent; empty when none was chosen
     */
    static ImportForm of(Map<String, List<String>> typed, List<UploadedFile> files, Units units) throws IOException {
        FormReader reader = new FormReader(typed);
        String chosen = reader.choice(
                "kind", SAY.whatItIs(), choices().stream().map(Choice::value).toList());
        String source = reader.optionalText("source", SAY.source(), LONGEST_SOURCE);
        reader.optionalText("name", SAY.stationName(), PublishedStations.LONGEST_NAME);
        TypedPlace place = PlaceForm.optional(reader, units).orElse(null);
        ImportForm form = new ImportForm(reader, place, source);
        if (files.isEmpty()) {
            reader.refuse("file", SAY.noFileChosen());
        } else if (!reader.problems().containsKey("kind")) {
            form.look(files, ImportKind.named(chosen).orElse(null));
        }
        return form;
    }

    private void look(List<UploadedFile> files, @Nullable ImportKind chosen) throws IOException {
        try {
            FileRecognition.Told told = FileRecognition.tell(files, chosen);
            kind = told.kind();
            if (told.placeMissing() && place == null && reader.ok()) {
                PlaceForm.FIELDS.forEach(field -> reader.refuse(field, SAY.placeMissing(label(field))));
            }
        } catch (BadInput refused) {
            reader.refuse("file", String.valueOf(refused.getMessage()));
        }
    }

    private static String label(String field) {
        return switch (field) {
            case "latitude" -> SAY.latitude();
            case "longitude" -> SAY.longitude();
            default -> SAY.height();
        };
    }

    /** The kinds to choose from. */
    public static List<Choice> choices() {
        return Stream.concat(
                        Stream.of(new Choice(TELL, SAY.tellFromFile())),
                        Stream.of(ImportKind.values())
                                .map(kind -> new Choice(kind.word(), sentenceStart(kind.words()))))
                .toList();
    }

    private static String sentenceStart(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /** What the files are, where all can be used. */
    Optional<ImportKind> kind() {
        return reader.ok() ? Optional.ofNullable(kind) : Optional.empty();
    }

    Optional<TypedPlace> place() {
        return Optional.ofNullable(place);
    }

    String stationName() {
        return reader.text("name");
    }

    /** Where the figures are from; without words of its own the file's name tells. */
    String source(List<UploadedFile> files) {
        return source.isEmpty() ? StationCodes.shortened(files.get(0).name(), LONGEST_SOURCE) : source;
    }

    public Map<String, String> typed() {
        return reader.typed();
    }

    public Map<String, String> problems() {
        return reader.problems();
    }
}
