package wallchart.people;

import java.util.Locale;

/**
 * Somebody who is to have an account.
 *
 * @param name what they will sign in with; taken in lower case
 * @param printedName their name as it is to stand beside a signature
 * @param role any but workstation
 * @param password as they chose it
 */
public record NewPerson(String name, String printedName, Role role, String password) {

    public NewPerson {
        name = name.strip().toLowerCase(Locale.ROOT);
        printedName = printedName.strip();
    }

    /** Without the password. */
    @Override
    public String toString() {
        return name + " (" + printedName + "), " + role.slug();
    }
}
