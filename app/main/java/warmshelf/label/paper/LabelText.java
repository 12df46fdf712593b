package warmshelf.label.paper;

import java.util.List;

/**
 * All that one label could say.
 *
 * @param code the short code as it is read, for example 'K7P 4MX'
 * @param address where the QR code leads
 * @param parts what else, in any order, each kind once at most
 */
public record LabelText(String code, String address, List<LabelPart> parts) {}
