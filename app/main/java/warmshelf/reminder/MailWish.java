package warmshelf.reminder;

/**
 * When a member wants to be written to.
 *
 * @param ofAlarms when a mat with something of theirs on it, for coordinators any mat, is too hot or too cold
 * @param ofStandIns when they are to look because the person on duty has not
 */
record MailWish(String address, boolean inTheMorning, boolean inTheEvening, boolean ofAlarms, boolean ofStandIns) {
    static final MailWish NONE = new MailWish("", false, false, false, false);
}
