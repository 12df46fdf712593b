package warmshelf.reminder.push;

/** What a member wants to be told on their devices. */
public record PushWish(boolean inTheMorning, boolean inTheEvening, boolean ofAlarms, boolean ofStandIns) {
    /** Of somebody who has not said: a device is added to be told. */
    public static final PushWish EVERYTHING = new PushWish(true, true, true, true);
}
