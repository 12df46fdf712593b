package warmshelf.web;

import static warmshelf.web.WebSentences.SAY;

import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Takes in what is sent before any page reads it, so that what cannot be read is told to whoever sent it rather than taken for
 * a fault of ours.
 */
final class SentBody {
    private static final Pattern CHARSET = Pattern.compile("(?i);\\s*charset\\s*=\\s*\"?([^\";]*)");

    private SentBody() {}

    /** @throws Refusal when its charset is unknown */
    static void refuseUnknownCharset(Context ctx) {
        String type = ctx.header("Content-Type");
        Matcher charset = CHARSET.matcher(type == null ? "" : type);
        if (charset.find() && !known(charset.group(1).strip())) {
            throw Refusal.of(
                    HttpStatus.UNSUPPORTED_MEDIA_TYPE,
                    SAY.charsetUnknown(charset.group(1).strip()));
        }
    }

    /**
     * Takes in a form without files.
     *
     * @throws Refusal when it is cut off, or is not such a form
     */
    static void receive(Context ctx) {
        if (isMultipart(ctx)) {
            throw Refusal.of(HttpStatus.UNSUPPORTED_MEDIA_TYPE, SAY.noFiles());
        }
        try {
            ctx.bodyAsBytes();
        } catch (HttpResponseException tooLarge) {
            throw tooLarge;
        } catch (Exception cutOff) {
            // an IOException, which Javalin does not declare
            throw unreadable();
        }
    }

    static boolean isMultipart(Context ctx) {
        String type = ctx.header("Content-Type");
        return type != null && type.toLowerCase(Locale.ROOT).startsWith("multipart/form-data");
    }

    static Refusal unreadable() {
        return Refusal.of(HttpStatus.BAD_REQUEST, SAY.formUnreadable());
    }

    private static boolean known(String charset) {
        try {
            return Charset.isSupported(charset);
        } catch (IllegalCharsetNameException noName) {
            return false;
        }
    }
}
