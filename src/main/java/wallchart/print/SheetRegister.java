package wallchart.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
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

    /** @param inForce version in force of each room whose sheets are looked for on the walls */
    ListedSheets listed(Map<String, Integer> inForce, int most) {
        return database.read(tx -> listed(tx, inForce, store.newest(tx, most), store.count(tx), most));
    }

    /** The same of one room. */
    ListedSheets listed(String room, Map<String, Integer> inForce, int most) {
        return database.read(tx -> listed(tx, inForce, store.newest(tx, room, most), store.count(tx, room), most));
    }

    private ListedSheets listed(
            ReadTx tx, Map<String, Integer> inForce, List<PrintedSheet> newest, int sheets, int most) {
        var hanging = new ArrayList<PrintedSheet>();
        int all = 0;
        for (var room : new TreeMap<>(inForce).entrySet()) {
            int left = most - hanging.size();
            hanging.addAll(store.hangingOfOthers(tx, room.getKey(), room.getValue(), left));
            all += store.countHangingOfOthers(tx, room.getKey(), room.getValue());
        }
        return new ListedSheets(List.copyOf(hanging), all - hanging.size(), newest, sheets - newest.size());
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
