package warmshelf.testing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import warmshelf.web.RouteRight;

/** The addresses to which forms are posted, taken from the program itself, so that none that comes later is forgotten. */
public final class EveryWrite {
    private static final Pattern PART = Pattern.compile("\\{[^}]*}");

    private final List<String> addresses;

    private EveryWrite(List<String> addresses) {
        this.addresses = addresses;
    }

    public static EveryWrite of(Collection<RouteRight> rights) {
        return new EveryWrite(rights.stream()
                .filter(right -> right.method().equals("POST"))
                .map(RouteRight::path)
                .sorted()
                .toList());
    }

    public List<String> addresses() {
        return addresses;
    }

    /** The forms by the address that takes them, as the program writes it, such as {@code /sowings/{id}/entries}. */
    public Map<String, List<PageForm>> sorted(Collection<PageForm> forms) {
        Map<String, List<PageForm>> byAddress = new TreeMap<>();
        for (PageForm form : forms) {
            String path = form.action().replaceAll("\\?.*", "");
            addresses.stream()
                    .filter(address -> matches(address, path))
                    // '/frost/areas' rather than '/frost/{id}'
                    .min(Comparator.comparingInt(EveryWrite::parts))
                    .ifPresent(address -> byAddress
                            .computeIfAbsent(address, first -> new ArrayList<>())
                            .add(form));
        }
        return byAddress;
    }

    private static boolean matches(String address, String path) {
        return path.matches(PART.matcher(address).replaceAll("[^/]+"));
    }

    /** How many things an address names, such as 1 for {@code /sowings/{id}/entries}. */
    static int parts(String address) {
        return (int) PART.matcher(address).results().count();
    }
}
