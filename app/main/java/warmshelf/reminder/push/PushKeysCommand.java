package warmshelf.reminder.push;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import warmshelf.Output;

/** {@code push-keys}: makes a pair of keys for notices on phones. */
@Command(
        name = "push-keys",
        description =
                "Make a pair of keys for notices on phones. Keep both: devices are bound to the pair they were added"
                        + " with. Whoever has the private key can send notices in the group's name.",
        footerHeading = "%n",
        footer = {"Prints publicKey and privateKey. Run it once and keep both."},
        mixinStandardHelpOptions = true)
public final class PushKeysCommand implements Callable<Integer> {
    @Override
    public Integer call() {
        PushKeys.Texts made = PushKeys.fresh();
        Map<String, Object> answer = new LinkedHashMap<>();
        answer.put("publicKey", made.publicKey());
        answer.put("privateKey", made.privateKey());
        Output.json(answer);
        return 0;
    }
}
