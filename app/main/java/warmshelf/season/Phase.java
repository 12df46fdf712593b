package warmshelf.season;

/** Where plants are, in the order in which they come there. */
public enum Phase {
    HEAT("heat", "on the heat"),
    /** In a room without bottom heat: sown there, or in cells off the mat and not up yet. */
    ROOM("room", "in the room"),
    LIGHT("light", "under the light"),
    HARDENING("hardening", "hardening off"),
    OUT("out", "out");

    private final String word;
    private final String words;

    Phase(String word, String words) {
        this.word = word;
        this.words = words;
    }

    /** Short, for a bar and its style. */
    public String word() {
        return word;
    }

    public String words() {
        return words;
    }
}
