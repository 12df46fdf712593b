package warmshelf.reminder.push;

/**
 * Where a device takes notices.
 *
 * @param p256dh the device's public key
 * @param auth the secret it shares with this server; both base64url
 */
public record PushTarget(String endpoint, String p256dh, String auth) {}
