package warmshelf.seed;

/** What growers said of a variety after earlier seasons; told by whoever keeps it. */
public interface GrownBefore {
    /** In words, for example 'Again: 3 of 4 who grew it.'; empty where nobody has said anything. */
    String words(String cropId, String variety);
}
