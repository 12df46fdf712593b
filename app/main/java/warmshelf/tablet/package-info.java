/**
 * Tablets at the racks: a coordinator makes one for a site, it is opened once by a link, and from then on it shows the round of that
 * site and ticks there. {@code web.Access} lets it to routes of {@code Role.TABLET} and no others; what of the group's it reaches by
 * those is for {@code TickReach} to say, whoever is at work.
 *
 * <p><b>Who it was.</b> Every entry names its author. A tablet has a row of its own in {@code member}, never present and without a
 * passphrase, in whose name it writes; its key is that of its row in {@code tablet}. Where somebody said that they tick, the entry
 * is theirs and that row has typed it, as with what is typed in from paper: so both are told. {@code LookerCookie} keeps who it is
 * for some minutes; {@code static/js/round/who.js} does the same without signal, and each tick that waits says who pressed.
 */
package warmshelf.tablet;
