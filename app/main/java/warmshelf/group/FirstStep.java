package warmshelf.group;

import static warmshelf.group.GroupSentences.SAY;

/** What a new group does on its first evening, in this order. */
public enum FirstStep {
    SITE("/sites/new"),
    RACK("/sites"),
    PEOPLE("/people/invites"),
    DUTY("/duty"),
    SPACE("/ask");

    private final String address;

    FirstStep(String address) {
        this.address = address;
    }

    public String address() {
        return address;
    }

    public String words() {
        return switch (this) {
            case SITE -> SAY.firstSite();
            case RACK -> SAY.firstRack();
            case PEOPLE -> SAY.firstPeople();
            case DUTY -> SAY.firstDuty();
            case SPACE -> SAY.firstSpace();
        };
    }
}
