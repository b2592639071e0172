package wallchart.store;

/** What the program may do with the rows of a table or view when it serves requests: the same on both databases. */
final class TableRights {

    private static final String APPEND_ONLY = "append-only";

    private TableRights() {}

    /**
     * The rights as GRANT lists them.
     *
     * @param isTable false for a view
     * @param comment of the table, as its migration wrote it
     */
    static String of(boolean isTable, String comment) {
        if (!isTable) {
            return "SELECT";
        }
        return comment.startsWith(APPEND_ONLY) ? "SELECT, INSERT" : "SELECT, INSERT, UPDATE, DELETE";
    }
}
