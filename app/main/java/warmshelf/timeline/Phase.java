package warmshelf.timeline;

/** Where plants are, in the order in which they come there. */
public enum Phase {
    HEAT("heat", "heat", "on the heat"),
    /** In a room without bottom heat: sown there, or in cells off the mat and not up yet. */
    ROOM("room", "room", "in the room"),
    LIGHT("light", "light", "under the light"),
    HARDENING("hardening", "harden", "hardening off"),
    OUT("out", "out", "out");

    private final String word;
    private final String label;
    private final String words;

    Phase(String word, String label, String words) {
        this.word = word;
        this.label = label;
        this.words = words;
    }

    /** Names the style of its bars. */
    public String word() {
        return word;
    }

    /** What stands in a bar that is wide enough. */
    public String label() {
        return label;
    }

    public String words() {
        return words;
    }
}
