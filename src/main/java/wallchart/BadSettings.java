package wallchart;

/** The settings cannot be used; the message is one line that names the file, the key, the value and what would be right. */
final class BadSettings extends RuntimeException {

    private static final long serialVersionUID = 1;

    BadSettings(String message) {
        super(message);
    }
}
