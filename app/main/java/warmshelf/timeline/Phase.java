package warmshelf.timeline;

import static warmshelf.timeline.TimelineSentences.SAY;

/** Where plants are, in the order in which they come there. */
public enum Phase {
    HEAT("heat", SAY.heatBar(), SAY.onTheHeat()),
    /** In a room without bottom heat: sown there, or in cells off the mat and not up yet. */
    ROOM("room", SAY.roomBar(), SAY.inTheRoom()),
    LIGHT("light", SAY.lightBar(), SAY.underTheLight()),
    HARDENING("hardening", SAY.hardeningBar(), SAY.hardeningOff()),
    OUT("out", SAY.outBar(), SAY.outdoors());

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
