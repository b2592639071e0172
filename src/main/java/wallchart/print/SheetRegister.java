package wallchart.print;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import wallchart.audit.Ledger;
import wallchart.audit.RecordCheck;
import wallchart.store.Actor;
import wallchart.store.ConstraintViolated;
import wallchart.store.Database;
import wallchart.store.ReadTx;

/** Who printed which sheet when, and which of them were taken from the wall. Safe for many threads. */
public final class SheetRegister {

    private final Database database;
    private final Ledger ledger = new Ledger();
    private final SheetStore store = new SheetStore();

    public SheetRegister(Database database) {
        this.database = database;
    }

    /** How the ledger's check holds the register against its events. */
    public static RecordCheck records() {
        return new SheetRecords();
    }

    /** Enters a sheet with its event, by the one who printed it. */
    public void enter(Actor by, PrintedSheet sheet) {
        enter(by, sheet, tx -> true);
    }

    /**
     * Enters a sheet with its event, if what stands on it still holds in the same transaction.
     *
     * @return whether it was entered
     */
    boolean enter(Actor by, PrintedSheet sheet, Predicate<ReadTx> holds) {
        return database.<Boolean>write(by, tx -> {
            if (!holds.test(tx)) {
                return false;
            }
            store.add(tx, sheet);
            ledger.append(tx, SheetEvents.printed(sheet));
            return true;
        });
    }

    public Optional<PrintedSheet> find(SheetNumber number) {
        return database.read(tx -> store.find(tx, number));
    }

    /** The newest sheets of all rooms, newest first. */
    List<PrintedSheet> newest(int most) {
        return database.read(tx -> store.newest(tx, most));
    }

    /** The newest sheets of one room, newest first. */
    List<PrintedSheet> newest(String room, int most) {
        return database.read(tx -> store.newest(tx, room, most));
    }

    /** Sheets of a room with another version on them than that, which nobody has taken down. */
    List<PrintedSheet> hangingOfOthers(String room, int version, int most) {
        return database.read(tx -> store.hangingOfOthers(tx, room, version, most));
    }

    /** Notes that a sheet was taken from the wall. Who comes second finds it noted; the first one's name stays. */
    public Optional<PrintedSheet> takeDown(Actor by, SheetNumber number) {
        try {
            return database.<Optional<PrintedSheet>>write(by, tx -> {
                var sheet = store.find(tx, number);
                sheet.filter(hanging -> hanging.takenDown().isEmpty()).ifPresent(hanging -> {
                    store.takeDown(tx, number);
                    ledger.append(tx, SheetEvents.takenDown(hanging));
                });
                return store.find(tx, number);
            });
        } catch (ConstraintViolated rival) {
            return find(number); // somebody else noted it in the same instant
        }
    }
}
