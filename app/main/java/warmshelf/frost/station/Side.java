package warmshelf.frost.station;

/** The two frosts of a year: the last of spring comes later where it is colder, the first of autumn earlier. */
public enum Side {
    SPRING(1),
    AUTUMN(-1);

    private final int sign;

    Side(int sign) {
        this.sign = sign;
    }

    /** 1 for spring, -1 for autumn: the sense in which colder is later. */
    public int sign() {
        return sign;
    }
}
