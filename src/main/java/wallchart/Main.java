package wallchart;

/** Where the program starts: arguments become a command, a command becomes an exit code. */
public final class Main {

    private Main() {}

    public static void main(String[] args) {
        throw new UnsupportedOperationException("no command yet");
    }
}
