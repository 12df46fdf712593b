package warmshelf.reminder.push;

import java.net.Inet4Address;
import java.net.InetAddress;

/** Tells addresses of the public network from those of this machine, of local networks and of no one (IANA special-purpose registries). */
final class PublicNetwork {
    private PublicNetwork() {}

    static boolean holds(InetAddress address) {
        if (address.isAnyLocalAddress()
                || address.isLoopbackAddress()
                || address.isLinkLocalAddress()
                || address.isSiteLocalAddress()
                || address.isMulticastAddress()) {
            return false;
        }
        byte[] bytes = address.getAddress();
        return address instanceof Inet4Address ? holdsFour(bytes) : holdsSix(bytes);
    }

    private static boolean holdsFour(byte[] bytes) {
        int first = bytes[0] & 0xff;
        int second = bytes[1] & 0xff;
        int third = bytes[2] & 0xff;
        boolean thisNetwork = first == 0;
        boolean carrier = first == 100 && (second & 0xc0) == 64;
        boolean assigned = first == 192 && second == 0 && (third == 0 || third == 2);
        boolean relay = first == 192 && second == 88 && third == 99;
        boolean measuring = first == 198 && (second & 0xfe) == 18;
        boolean papers =
                (first == 198 && second == 51 && third == 100) || (first == 203 && second == 0 && third == 113);
        boolean reserved = first >= 240;
        return !(thisNetwork || carrier || assigned || relay || measuring || papers || reserved);
    }

    /** Only 2000::/3 is given out; in it tunnels (2001::/23, 2002::/16) could lead to any older address, and 2001:db8::/32 is for papers. */
    private static boolean holdsSix(byte[] bytes) {
        boolean givenOut = (bytes[0] & 0xe0) == 0x20;
        boolean starts2001 = bytes[0] == 0x20 && bytes[1] == 0x01;
        boolean tunnel = (starts2001 && (bytes[2] & 0xfe) == 0) || (bytes[0] == 0x20 && bytes[1] == 0x02);
        boolean papers = starts2001 && (bytes[2] & 0xff) == 0x0d && (bytes[3] & 0xff) == 0xb8;
        return givenOut && !tunnel && !papers;
    }
}
