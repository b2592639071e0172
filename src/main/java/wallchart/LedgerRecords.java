package wallchart;

import java.util.List;
import java.util.stream.Stream;
import wallchart.audit.RecordCheck;
import wallchart.chart.Charts;
import wallchart.equipment.Rooms;
import wallchart.people.People;
import wallchart.print.SheetRegister;
import wallchart.signoff.SignoffDesk;

/** Every kind of record that is held against the ledger when it is checked. */
final class LedgerRecords {

    private LedgerRecords() {}

    static List<RecordCheck> all() {
        return Stream.concat(
                        Stream.of(Charts.records(), Rooms.records(), SignoffDesk.records(), SheetRegister.records()),
                        People.records().stream())
                .toList();
    }
}
