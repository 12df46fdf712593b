package warmshelf.frost.evidence;

import java.util.Optional;

/** Where the group's own knowledge of frost is read. */
public interface FrostSource {
    /** All of it as it is now; the same object as long as nothing has changed. */
    GroupEvidence evidence();

    /** The place of a postcode in a table that the group has brought in; the code in capitals without spaces or hyphens. */
    Optional<ImportedPlace> imported(String country, String code);

    /** A group that has brought in nothing: only the bundled tables. */
    static FrostSource bundledOnly() {
        GroupEvidence none = GroupEvidence.none();
        return new FrostSource() {
            @Override
            public GroupEvidence evidence() {
                return none;
            }

            @Override
            public Optional<ImportedPlace> imported(String country, String code) {
                return Optional.empty();
            }
        };
    }

    /** A row of such a table, which does not tell how high the place lies. */
    record ImportedPlace(String country, String code, String place, double latitude, double longitude) {}
}
