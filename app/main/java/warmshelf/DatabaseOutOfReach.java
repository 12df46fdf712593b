package warmshelf;

/** The database server does not answer, which may pass by itself. */
public final class DatabaseOutOfReach extends BadInput {
    private static final long serialVersionUID = 1;

    DatabaseOutOfReach(String sentence) {
        super(sentence);
    }
}
