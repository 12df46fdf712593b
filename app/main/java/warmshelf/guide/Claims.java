package warmshelf.guide;

/** What single sources say, by the names of their rows, for the tables of an article. */
public final class Claims {
    private final Figures figures;
    private final ContainerTable containers = ContainerTable.bundled();

    Claims(Figures figures) {
        this.figures = figures;
    }

    /** What a row says, where it is a figure. */
    public Claim figure(String of, String topic, String item) {
        return figure(of, topic, item, item);
    }

    /**
     * A figure that a row gives in its words or its note.
     *
     * @param quoted the name of that figure
     */
    public Claim figure(String of, String topic, String item, String quoted) {
        PracticeRow row = figures.row(topic, item);
        Amount amount = figures.amount(topic, quoted);
        return new Claim(of, amount.words(), amount, row.printed(), row.source());
    }

    /** What a row says, where that is no figure, in our words. */
    public Claim told(String of, String topic, String item, String says) {
        PracticeRow row = figures.row(topic, item);
        return new Claim(of, says, null, row.printed(), row.source());
    }

    /** What a row of the table of trays and mats says, in our words. */
    public Claim container(String of, String name, String says) {
        return containers.told(name, of, says);
    }

    /** The outside of a tray along one side, 'length' or 'width'. */
    public Claim side(String side, String name) {
        return containers.side(side, name, figures.inches());
    }

    /** What one cell of a tray holds, and what compost the tray takes. */
    public Claim cells(String name) {
        return containers.cells(name, figures.inches());
    }
}
