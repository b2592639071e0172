package wallchart.web.request;

import com.fasterxml.jackson.databind.ObjectReader;
import io.javalin.http.Context;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import wallchart.signoff.ChangeKind;
import wallchart.web.view.Json;

/** What people send about a change besides its rows. Whether words suffice as a reason is for the desk to say. */
public final class ChangeBodies {

    private static final int LONGEST_TEXT = 4000;
    private static final int LONGEST_PASSWORD = 256;
    private static final int MOST_VERSIONS = 999_999;
    private static final ObjectReader OPENING = Json.readerFor(OpeningBody.class);
    private static final ObjectReader WORDS = Json.readerFor(Words.class);
    private static final ObjectReader REVERT = Json.readerFor(RevertBody.class);
    private static final ObjectReader REASON = Json.readerFor(ReasonBody.class);
    private static final ObjectReader CONCURRENCE = Json.readerFor(ConcurrenceBody.class);
    private static final ObjectReader SIGNATURE = Json.readerFor(SignatureBody.class);
    private static final ObjectReader REVIEW = Json.readerFor(SecondReview.class);

    private ChangeBodies() {}

    record OpeningBody(String title, String reason, Integer baseVersion, String kind) {}

    /** What a change is called from now on, and why it is proposed. */
    public record Words(String title, String reason) {}

    record RevertBody(Integer version, String reason) {}

    record ReasonBody(String reason) {}

    record ConcurrenceBody(String password, String impactDigest) {
        @Override
        public String toString() {
            return "a concurrence";
        }
    }

    record SignatureBody(String password, String meaning, String impactDigest, String inForceFrom, String reviewDue) {
        @Override
        public String toString() {
            return "a signature";
        }
    }

    /** A change that is to be opened. */
    public record Opening(String title, String reason, int baseVersion, ChangeKind kind) {}

    /** A version that is to come back. */
    public record Revert(int version, String reason) {}

    /** A physicist's concurrence with what they saw. */
    public record Concurrence(String password, Optional<String> impactDigest) {
        /** Without the password. */
        @Override
        public String toString() {
            return "a concurrence with " + impactDigest.orElse("the impact as it is");
        }
    }

    /** A signature with what it states, and when the version is to answer. */
    public record Signature(
            String password,
            String meaning,
            String impactDigest,
            Optional<Instant> inForceFrom,
            Optional<LocalDate> reviewDue) {
        /** Without the password. */
        @Override
        public String toString() {
            return "a signature of " + impactDigest;
        }
    }

    /** What a physicist found in a fast-track change. */
    public record SecondReview(String password, String findings) {
        /** Without the password. */
        @Override
        public String toString() {
            return "a second review";
        }
    }

    /** A change to be opened. */
    public static Opening opening(Context ctx) {
        OpeningBody body = Bodies.readJson(ctx, OPENING);
        var members = new Members()
                .plainText("/title", body.title(), LONGEST_TEXT)
                .plainText("/reason", body.reason(), LONGEST_TEXT)
                .number("/baseVersion", body.baseVersion(), 0, MOST_VERSIONS);
        var kind = members.find("/kind", body.kind(), ChangeSyntaxes.KIND).orElse(ChangeKind.ORDINARY);
        members.refuseMistakes();
        return new Opening(body.title(), body.reason(), body.baseVersion(), kind);
    }

    /** Another title and reason. */
    public static Words words(Context ctx) {
        Words body = Bodies.readJson(ctx, WORDS);
        new Members()
                .plainText("/title", body.title(), LONGEST_TEXT)
                .plainText("/reason", body.reason(), LONGEST_TEXT)
                .refuseMistakes();
        return body;
    }

    /** A version to be brought back. */
    public static Revert revert(Context ctx) {
        RevertBody body = Bodies.readJson(ctx, REVERT);
        new Members()
                .number("/version", body.version(), 1, MOST_VERSIONS)
                .plainText("/reason", body.reason(), LONGEST_TEXT)
                .refuseMistakes();
        return new Revert(body.version(), body.reason());
    }

    /** Why a change goes back, or is not made. */
    public static String reason(Context ctx) {
        ReasonBody body = Bodies.readJson(ctx, REASON);
        new Members().plainText("/reason", body.reason(), LONGEST_TEXT).refuseMistakes();
        return body.reason();
    }

    /** A concurrence. */
    public static Concurrence concurrence(Context ctx) {
        ConcurrenceBody body = Bodies.readJson(ctx, CONCURRENCE);
        var members = new Members().text("/password", body.password(), LONGEST_PASSWORD);
        var digest = members.find("/impactDigest", body.impactDigest(), ChangeSyntaxes.DIGEST);
        members.refuseMistakes();
        return new Concurrence(body.password(), digest);
    }

    /** A signature. */
    public static Signature signature(Context ctx) {
        SignatureBody body = Bodies.readJson(ctx, SIGNATURE);
        var members = new Members()
                .text("/password", body.password(), LONGEST_PASSWORD)
                .plainText("/meaning", body.meaning(), LONGEST_TEXT)
                .given("/impactDigest", body.impactDigest(), ChangeSyntaxes.DIGEST);
        var from = members.find("/inForceFrom", body.inForceFrom(), ChangeSyntaxes.INSTANT);
        var due = members.find("/reviewDue", body.reviewDue(), ChangeSyntaxes.DAY);
        members.refuseMistakes();
        return new Signature(body.password(), body.meaning(), body.impactDigest(), from, due);
    }

    /** A second review. */
    public static SecondReview secondReview(Context ctx) {
        SecondReview body = Bodies.readJson(ctx, REVIEW);
        new Members()
                .text("/password", body.password(), LONGEST_PASSWORD)
                .plainText("/findings", body.findings(), LONGEST_TEXT)
                .refuseMistakes();
        return body;
    }
}
