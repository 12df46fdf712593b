/**
 * Notices on phones by web push: keys, addresses, what is laid ready, and how it is sent (RFC 8030, RFC 8291, RFC
 * 8292).
 *
 * <p><b>Notices on phones</b> are thought of by the same {@code Moments} as letters and laid ready in {@code
 * push_notice}, one for each device, in the same way. A device is one sign-in ({@code push_address.session_hash}):
 * when that is over, nothing is sent there. {@code com.interaso:webpush} encrypts and signs (RFC 8291, RFC 8292; it
 * brings nothing but Kotlin's library, which Javalin has too); {@code PushSender} carries it by Java's own client,
 * without redirects. The address is text from outside: {@code PublicEndpoints} takes https names at port 443 only
 * and looks again, when sending, that the name leads into the public network; tests give a rule of their own. 404
 * and 410 end a device, 429 and 5xx wait, everything else is given up and logged. TTL ends when the notice would be
 * stale; the topic is a hash, because the push service can read it.
 */
package warmshelf.reminder.push;
