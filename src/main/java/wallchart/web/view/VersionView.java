package wallchart.web.view;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import wallchart.chart.ChartVersion;
import wallchart.chart.Signature;
import wallchart.chart.VersionHead;

/** One version of a room's chart: its head, and how much it holds. */
public record VersionView(String room, @JsonUnwrapped HeadView head, int rows, int adjustments) {

    /** Who answers for it. */
    public record SignatureView(String printedName, String role, Instant at, String meaning) {
        static SignatureView of(Signature signature) {
            return new SignatureView(signature.printedName(), signature.role(), signature.at(), signature.meaning());
        }
    }

    /** All of a version but its content. */
    public record HeadView(
            int version,
            String digest,
            String title,
            String reason,
            Instant inForceFrom,
            LocalDate reviewDue,
            SignatureView signature) {
        static HeadView of(VersionHead head) {
            return new HeadView(
                    head.number(),
                    head.digest(),
                    head.title(),
                    head.reason(),
                    head.inForceFrom(),
                    head.reviewDue(),
                    SignatureView.of(head.signature()));
        }
    }

    /**
     * A version among all of its room.
     *
     * @param inForceTo when one with a higher number came or will come into force, or null; before {@code inForceFrom} of one that
     *     never answers
     */
    public record Listed(@JsonUnwrapped HeadView head, Instant inForceTo) {
        static Listed of(VersionHead head, List<VersionHead> all) {
            return new Listed(
                    HeadView.of(head),
                    all.stream()
                            .filter(other -> other.number() > head.number())
                            .map(VersionHead::inForceFrom)
                            .min(Comparator.naturalOrder())
                            .orElse(null));
        }
    }

    /** Every version of a room's chart. */
    public record History(String room, List<Listed> versions) {
        public static History of(String room, List<VersionHead> heads) {
            return new History(
                    room, heads.stream().map(head -> Listed.of(head, heads)).toList());
        }
    }

    /** The whole content of a version. */
    public record Content(
            String room, int version, String digest, List<RowView> rows, List<AdjustmentView> adjustments) {
        public static Content of(ChartVersion version) {
            return new Content(
                    version.head().room(),
                    version.head().number(),
                    version.head().digest(),
                    version.content().rows().stream().map(RowView::of).toList(),
                    version.content().adjustments().stream()
                            .map(AdjustmentView::of)
                            .toList());
        }
    }

    public static VersionView of(ChartVersion version) {
        return new VersionView(
                version.head().room(),
                HeadView.of(version.head()),
                version.content().rows().size(),
                version.content().adjustments().size());
    }
}
