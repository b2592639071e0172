package wallchart.chart;

import java.util.Set;
import wallchart.audit.RecordCheck;
import wallchart.audit.RecordWalk;
import wallchart.store.ReadTx;

/** Holds every stored version, and all that it wrote, against the event of its signature. */
final class VersionRecords implements RecordCheck {

    @Override
    public Set<String> actions() {
        return Set.of(VersionEvent.ACTION);
    }

    @Override
    public RecordWalk begin(ReadTx tx) {
        return new VersionWalk(tx);
    }
}
