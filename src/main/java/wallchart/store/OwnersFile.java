package wallchart.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

/**
 * Keeps the file of an H2 database to the account that runs the program: password hashes and all charts stand in it. On systems
 * that know these rights; elsewhere the folder has to do.
 */
final class OwnersFile {

    private static final String PREFIX = "jdbc:h2:file:";
    private static final Set<PosixFilePermission> OWNER_ONLY = PosixFilePermissions.fromString("rw-------");
    private static final Set<PosixFilePermission> OWNERS_FOLDER = PosixFilePermissions.fromString("rwx------");

    private OwnersFile() {}

    /** Makes the file, still empty, where there is none, so that there is no moment in which others may read it. */
    static void prepare(String url) {
        if (!url.startsWith(PREFIX)) {
            return;
        }
        var path = url.substring(PREFIX.length());
        var file = Path.of(path.replaceFirst("^~", System.getProperty("user.home")) + ".mv.db")
                .toAbsolutePath();
        if (!file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            return;
        }
        try {
            if (Files.exists(file)) {
                Files.setPosixFilePermissions(file, OWNER_ONLY);
            } else {
                Files.createDirectories(file.getParent(), PosixFilePermissions.asFileAttribute(OWNERS_FOLDER));
                Files.createFile(file, PosixFilePermissions.asFileAttribute(OWNER_ONLY));
            }
        } catch (IOException failed) {
            throw StoreException.cannotOpen(
                    "database " + url + " cannot be kept to its owner: " + failed + ": make its folder writable",
                    failed);
        }
    }
}
