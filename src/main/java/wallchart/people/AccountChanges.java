package wallchart.people;

import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import wallchart.audit.Ledger;
import wallchart.people.Registration.Reason;
import wallchart.people.Registration.Refused;
import wallchart.people.Registration.Registered;
import wallchart.store.Actor;
import wallchart.store.Database;
import wallchart.store.Tx;

/**
 * The part of {@link People} that changes accounts. Whoever changes one names the revision they saw; the rows of all
 * administrators are held meanwhile, so that two administrators cannot shut each other out at the same moment.
 */
final class AccountChanges {

    private static final int LONGEST_REASON = 1000;

    private final Database database;
    private final Ledger ledger = new Ledger();
    private final PersonStore people = new PersonStore();
    private final SessionStore sessions = new SessionStore();

    AccountChanges(Database database) {
        this.database = database;
    }

    /** @param kept the session that goes on, where the person sets it themselves */
    Registration setPassword(Actor by, long id, int revision, String password, OptionalLong kept) {
        var person = database.<Optional<Person>>read(tx -> people.find(tx, id));
        var refused = person.isEmpty()
                ? Optional.of(unknown(id))
                : PasswordRules.check(password, person.get().name());
        if (refused.isPresent()) {
            return refused.get();
        }
        var hash = PasswordHashes.of(password); // takes a while: before the transaction
        return change(by, id, revision, (tx, found) -> {
            people.setPasswordHash(tx, id, hash);
            sessions.endAllOf(tx, id, kept);
            ledger.append(tx, AccountEvents.passwordSet(found, kept.isPresent(), hash));
            return Optional.empty();
        });
    }

    Registration changeRole(Actor by, long id, int revision, Role role) {
        if (role == Role.WORKSTATION) {
            return Accounts.notForPeople();
        }
        return change(by, id, revision, (tx, found) -> {
            if (found.role() == role) {
                return Optional.empty();
            }
            if (isLastAdministrator(tx, found)) {
                return Optional.of(lastAdministrator(found));
            }
            people.setRole(tx, id, role);
            sessions.endAllOf(tx, id, OptionalLong.empty());
            ledger.append(tx, AccountEvents.roleChanged(found, role));
            return Optional.empty();
        });
    }

    Registration disable(Actor by, long id, int revision, String reason) {
        return withReason(
                reason,
                () -> change(by, id, revision, (tx, found) -> {
                    if (found.isDisabled()) {
                        return Optional.empty();
                    }
                    if (isLastAdministrator(tx, found)) {
                        return Optional.of(lastAdministrator(found));
                    }
                    people.disable(tx, id);
                    sessions.endAllOf(tx, id, OptionalLong.empty());
                    ledger.append(tx, AccountEvents.disabled(found, reason));
                    return Optional.empty();
                }));
    }

    Registration enable(Actor by, long id, int revision, String reason) {
        return withReason(
                reason,
                () -> change(by, id, revision, (tx, found) -> {
                    if (found.isDisabled()) {
                        people.enable(tx, id);
                        ledger.append(tx, AccountEvents.enabled(found, reason));
                    }
                    return Optional.empty();
                }));
    }

    /** Each step that changes the account raises its revision; what is so already is left alone, without an event. */
    private Registration change(Actor by, long id, int revision, BiFunction<Tx, Person, Optional<Refused>> step) {
        return database.<Registration>write(by, tx -> {
            people.holdAdministrators(tx);
            var found = people.findToChange(tx, id);
            if (found.isEmpty()) {
                return unknown(id);
            }
            if (found.get().revision() != revision) {
                return changedMeanwhile(found.get());
            }
            return step.apply(tx, found.get())
                    .<Registration>map(refused -> refused)
                    .orElseGet(() -> new Registered(people.find(tx, id).orElseThrow()));
        });
    }

    private boolean isLastAdministrator(Tx tx, Person person) {
        return person.role() == Role.ADMINISTRATOR && !person.isDisabled() && people.administrators(tx) == 1;
    }

    private static Registration withReason(String reason, Supplier<Registration> act) {
        return Lines.isLine(reason, LONGEST_REASON)
                ? act.get()
                : new Refused(
                        Reason.REASON_UNUSABLE,
                        "reason must be one line of 1 to " + LONGEST_REASON + " characters: it goes into the record");
    }

    private static Refused unknown(long id) {
        return new Refused(Reason.UNKNOWN_PERSON, "person " + id + " is unknown: look at the list of people");
    }

    private static Refused changedMeanwhile(Person person) {
        return new Refused(
                Reason.CHANGED_MEANWHILE,
                "the account of \"" + person.name() + "\" was changed meanwhile: look at it again, then decide");
    }

    private static Refused lastAdministrator(Person person) {
        return new Refused(
                Reason.LAST_ADMINISTRATOR,
                "\"" + person.name() + "\" is the last administrator who may sign in: make somebody else one first");
    }
}
