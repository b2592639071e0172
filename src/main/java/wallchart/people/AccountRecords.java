package wallchart.people;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import wallchart.audit.RecordCheck;
import wallchart.audit.RecordWalk;
import wallchart.store.ReadTx;

/** Holds every account against the events that made it and changed it: nobody becomes a lead radiographer unseen. */
final class AccountRecords implements RecordCheck {

    private final PersonStore people = new PersonStore();

    @Override
    public Set<String> actions() {
        return Set.of(
                AccountEvents.ADDED,
                AccountEvents.DISABLED,
                AccountEvents.ENABLED,
                AccountEvents.ROLE_CHANGED,
                AccountEvents.PASSWORD_SET);
    }

    @Override
    public RecordWalk begin(ReadTx tx) {
        return new ReplayedRecords(AccountRecords::follow, () -> people.records(tx));
    }

    private static Optional<String> follow(ReplayedRecords.Replay replay) {
        var event = replay.event();
        return switch (event.action()) {
            case AccountEvents.ADDED ->
                replay.begin(Map.of(
                        "name", detail(replay, "name"),
                        "printed_name", detail(replay, "printedName"),
                        "role", detail(replay, "role"),
                        "created_at", event.at().toString(),
                        "created_by", event.actor(),
                        "revision", "1"));
            case AccountEvents.DISABLED -> changed(replay, person -> person.with("disabled_at", event.at()));
            case AccountEvents.ENABLED -> changed(replay, person -> person.with("disabled_at", Optional.empty()));
            case AccountEvents.ROLE_CHANGED ->
                replay.goOn(
                        Map.of("name", detail(replay, "name"), "role", detail(replay, "from")),
                        person -> revised(person).with("role", detail(replay, "to")));
            default -> changed(replay, person -> person).or(replay::withDigest);
        };
    }

    private static Optional<String> changed(ReplayedRecords.Replay replay, UnaryOperator<StoredRecord> change) {
        return replay.goOn(Map.of("name", detail(replay, "name")), person -> change.apply(revised(person)));
    }

    private static StoredRecord revised(StoredRecord person) {
        int revision = Integer.parseInt(person.find("revision").orElseThrow());
        return person.with("revision", String.valueOf(revision + 1));
    }

    private static String detail(ReplayedRecords.Replay replay, String name) {
        return replay.event().detail(name).orElse("");
    }
}
