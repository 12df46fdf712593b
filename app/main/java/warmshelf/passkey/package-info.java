/**
 * Passkeys: signing in by what a phone or computer keeps, instead of a passphrase (W3C Web Authentication, level 2).
 *
 * <p>{@code PasskeyParty} says for which address they are, from {@code --base-url} alone: a key made for one address is of no use at
 * another, so no address is taken from a request. {@code PasskeyCheck} is the one place that knows the library. A challenge is kept by
 * the database, used once and over after five minutes; a counter that goes backwards is refused; the device must have made sure who
 * holds it. Whoever signs in names nobody, and every no is the same sentence, so that nothing can be learned of who belongs here.
 */
package warmshelf.passkey;
