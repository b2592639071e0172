package wallchart;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.Base64;
import wallchart.store.DatabaseSettings;

/** Turns the database settings of a site into what opens it: above all, finds or makes the owner's password. */
final class DatabaseAccess {

    private static final String H2_FILE = "jdbc:h2:file:";
    private static final int PASSWORD_BYTES = 24;

    private DatabaseAccess() {}

    /** @throws Refusals.Refused if the password file cannot be used */
    static DatabaseSettings of(Settings.DatabasePart part) {
        try {
            return new DatabaseSettings(part.url(), part.user(), password(part), part.poolSize());
        } catch (IOException failed) {
            throw new Refusals.Refused(
                    "database.passwordFile " + part.passwordFile() + " cannot be used: " + failed.getMessage());
        }
    }

    private static String password(Settings.DatabasePart part) throws IOException {
        if (part.url().startsWith("jdbc:h2:mem:")) {
            return "";
        }
        if (Files.exists(part.passwordFile())) {
            return Files.readAllLines(part.passwordFile()).stream()
                    .findFirst()
                    .map(String::strip)
                    .filter(line -> !line.isEmpty())
                    .orElseThrow(() -> new Refusals.Refused("database.passwordFile " + part.passwordFile()
                            + " is empty: write the owner's password in its first line"));
        }
        if (!part.url().startsWith(H2_FILE) || Files.exists(databaseFile(part))) {
            throw new Refusals.Refused("database.passwordFile " + part.passwordFile()
                    + " does not exist: write the owner's password in its first line");
        }
        return newPassword(part.passwordFile());
    }

    private static Path databaseFile(Settings.DatabasePart part) {
        return Path.of(part.url().substring(H2_FILE.length()) + ".mv.db");
    }

    private static String newPassword(Path file) throws IOException {
        var bytes = new byte[PASSWORD_BYTES];
        new SecureRandom().nextBytes(bytes);
        var password = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        if (file.toAbsolutePath().getParent() != null) {
            Files.createDirectories(
                    file.toAbsolutePath().getParent(),
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------")));
        }
        Files.createFile(file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
        Files.writeString(file, password + System.lineSeparator(), StandardOpenOption.WRITE);
        return password;
    }
}
