package wallchart.people;

/** What came of giving somebody an account, or of changing it. */
public sealed interface Registration {

    /** It is done, or was so already; this is the account now. */
    record Registered(Person person) implements Registration {}

    /**
     * It is not done, and nothing was written.
     *
     * @param reason for programs
     * @param text for people: what, the limit, the next step; never the password
     */
    record Refused(Reason reason, String text) implements Registration {}

    /** Why an account or a change of it is refused. */
    enum Reason {
        NAME_UNUSABLE,
        NAME_TAKEN,
        PRINTED_NAME_UNUSABLE,
        ROLE_NOT_FOR_PEOPLE,
        PASSWORD_TOO_SHORT,
        PASSWORD_TOO_LONG,
        PASSWORD_NOT_NORMALIZED,
        PASSWORD_COMMON,
        PASSWORD_HAS_NAME,
        PASSWORD_FOR_DEMONSTRATION,
        UNKNOWN_PERSON,
        /** The account is no longer what the one who changes it saw. */
        CHANGED_MEANWHILE,
        /** Nobody would be left who can give accounts. */
        LAST_ADMINISTRATOR,
        REASON_UNUSABLE
    }
}
