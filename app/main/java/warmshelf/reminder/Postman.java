package warmshelf.reminder;

import org.simplejavamail.MailException;
import org.simplejavamail.api.email.Email;
import org.simplejavamail.api.mailer.Mailer;
import org.simplejavamail.api.mailer.config.TransportStrategy;
import org.simplejavamail.email.EmailBuilder;
import org.simplejavamail.mailer.MailerBuilder;

/** Hands letters to a mail server (SMTP). */
final class Postman {
    private static final int PATIENCE_MILLIS = 20_000;

    private final Mailer mailer;
    private final MailServer server;

    Postman(MailServer server) {
        this.server = server;
        this.mailer = MailerBuilder.withSMTPServer(server.host(), server.port(), server.user(), server.password())
                .withTransportStrategy(
                        switch (server.security()) {
                            case STARTTLS -> TransportStrategy.SMTP_TLS;
                            case TLS -> TransportStrategy.SMTPS;
                            case NONE -> TransportStrategy.SMTP;
                        })
                .withSessionTimeout(PATIENCE_MILLIS)
                .buildMailer();
    }

    /** A letter was not taken. */
    static final class NotTaken extends Exception {
        private static final long serialVersionUID = 1L;

        NotTaken(MailException cause) {
            super(deepest(cause), cause);
        }

        /** What the library says of it tells less than what the network or the server said. */
        private static String deepest(Throwable cause) {
            Throwable inner = cause.getCause();
            return inner == null ? String.valueOf(cause.getMessage()) : deepest(inner);
        }
    }

    void send(String fromName, String to, String subject, String words) throws NotTaken {
        Email email = EmailBuilder.startingBlank()
                .from(fromName, server.from())
                .to(to)
                .withSubject(subject)
                .withPlainText(words)
                // RFC 3834: so that no absence note answers it
                .withHeader("Auto-Submitted", "auto-generated")
                .buildEmail();
        try {
            mailer.sendMail(email, false).join();
        } catch (MailException notTaken) {
            throw new NotTaken(notTaken);
        }
    }
}
