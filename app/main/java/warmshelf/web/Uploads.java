package warmshelf.web;

import static warmshelf.web.WebSentences.SAY;

import io.javalin.http.ContentTooLargeResponse;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import jakarta.servlet.MultipartConfigElement;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.Part;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;

/**
 * The few addresses that take large files. What is sent there goes into files, not into memory, and only after it is known
 * that its sender may send it.
 */
public final class Uploads {
    static final long LARGEST_MB = 250;
    /** The form around the file: field names, separators, the other fields. */
    private static final long FORM_ROOM = 1_000_000;

    private static final long LARGEST_REQUEST = LARGEST_MB * 1_000_000 + FORM_ROOM;
    private static final int KEPT_IN_MEMORY = 65_536;
    private static final long LARGEST_FIELD = 10_000;
    // A browser shows the answer to an over-large form only if its sending was not cut off, so that much is read and
    // dropped.
    private static final long READ_AND_DROPPED = 4 * LARGEST_REQUEST;
    private static final String FOLDER = "warmshelf.upload-folder";
    private static final String MULTIPART = "org.eclipse.jetty.multipartConfig";

    private final Set<String> addresses;
    private final Path folder;

    Uploads(Set<String> addresses, Path folder) {
        this.addresses = addresses;
        this.folder = folder;
    }

    /** A fresh folder for files of this request, to be deleted by whoever asked for it. */
    public static Path freshFolder(Context ctx) throws IOException {
        Path parent = ctx.attribute(FOLDER);
        if (parent == null) {
            throw new IllegalStateException("no folder was lent to " + ctx.path());
        }
        return Files.createTempDirectory(parent, "files");
    }

    /** Has a request find where its files may lie. */
    void lendFolder(Context ctx) {
        ctx.attribute(FOLDER, folder);
    }

    Set<String> addresses() {
        return addresses;
    }

    boolean takes(Context ctx) {
        return ctx.method().equals(HandlerType.POST) && addresses.contains(ctx.path());
    }

    /**
     * Receives the form of somebody who may send it.
     *
     * @throws Refusal when it is too large
     */
    void receive(Context ctx) {
        if (ctx.req().getContentLengthLong() > LARGEST_REQUEST) {
            drop(ctx, READ_AND_DROPPED);
            throw tooLarge();
        }
        if (!SentBody.isMultipart(ctx)) {
            // any other form is small, as everywhere
            if (ctx.req().getContentLengthLong() > FORM_ROOM) {
                drop(ctx, READ_AND_DROPPED);
                throw new ContentTooLargeResponse();
            }
            SentBody.receive(ctx);
            return;
        }
        ctx.req()
                .setAttribute(
                        MULTIPART,
                        new MultipartConfigElement(
                                folder.toString(), LARGEST_REQUEST, LARGEST_REQUEST, KEPT_IN_MEMORY));
        refuseLargeFields(ctx);
    }

    /** Fields become texts in memory, so that these are held to the size of fields. */
    private static void refuseLargeFields(Context ctx) {
        try {
            for (Part part : ctx.req().getParts()) {
                if (part.getSubmittedFileName() == null && part.getSize() > LARGEST_FIELD) {
                    throw new ContentTooLargeResponse();
                }
            }
        } catch (IOException | ServletException | IllegalStateException unreadable) {
            // the server hangs up after this answer; a browser that is not told sends its next form into nothing
            ctx.header("Connection", "close");
            throw beyondLimit(unreadable) ? tooLarge() : SentBody.unreadable();
        }
    }

    /** Where the length was not told beforehand, the server itself stops at the limit and says so in words only. */
    private static boolean beyondLimit(Throwable trouble) {
        for (Throwable cause = trouble; cause != null; cause = cause.getCause()) {
            String words = String.valueOf(cause.getMessage());
            if (words.contains("exceeded") || words.contains("larger than max")) {
                return true;
            }
        }
        return false;
    }

    private static Refusal tooLarge() {
        return Refusal.of(HttpStatus.CONTENT_TOO_LARGE, SAY.filesTooLarge(LARGEST_MB));
    }

    /** Reads what a browser is still sending, so that it comes to reading the answer. */
    static void drop(Context ctx, long most) {
        try {
            InputStream body = ctx.req().getInputStream();
            byte[] dropped = new byte[65_536];
            long total = 0;
            for (int n = body.read(dropped); n >= 0 && total < most; n = body.read(dropped)) {
                total += n;
            }
        } catch (IOException cutOff) {
            // whoever hung up does not wait for an answer either
            return;
        }
    }
}
