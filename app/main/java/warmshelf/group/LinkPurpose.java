package warmshelf.group;

import java.time.Duration;

/** What a link is for, the address it stands under, and how long it stays open. */
public enum LinkPurpose {
    OPEN_GROUP("open-group", "/open/", Duration.ofDays(7)),
    JOIN("join", "/join/", Duration.ofDays(14)),
    SIGN_IN("sign-in", "/in/", Duration.ofDays(1)),
    TABLET("tablet", "/tablet/", Duration.ofDays(1));

    private final String stored;
    private final String address;
    private final Duration life;

    LinkPurpose(String stored, String address, Duration life) {
        this.stored = stored;
        this.address = address;
        this.life = life;
    }

    /** The link's address on this server, for example '/join/...'. */
    public String address(String token) {
        return address + token;
    }

    String stored() {
        return stored;
    }

    /** How long it lets somebody in. */
    public Duration life() {
        return life;
    }

    static LinkPurpose of(String stored) {
        for (LinkPurpose purpose : values()) {
            if (purpose.stored.equals(stored)) {
                return purpose;
            }
        }
        throw new IllegalArgumentException("no such purpose of a link: " + stored);
    }
}
