package wallchart.chart;

import java.util.List;

/** What comes of publishing. */
public sealed interface Publication {

    /**
     * The version is signed and stored.
     *
     * @param version as it will be read from now on
     * @param cautions what somebody should know about it
     */
    record Published(ChartVersion version, List<Finding> cautions) implements Publication {
        public Published {
            cautions = List.copyOf(cautions);
        }
    }

    /** The chart cannot be published; nothing was written. */
    record Refused(List<Finding> findings) implements Publication {
        public Refused {
            findings = List.copyOf(findings);
        }
    }

    /** Another version was published meanwhile; nothing was written. */
    record Outdated(int currentVersion) implements Publication {}

    /** Whoever asked may not publish; nothing was written. */
    record NotPermitted(String reason) implements Publication {}
}
