package wallchart.chart;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The versions of one room's chart: all heads, and in full what answers now or will answer later. Immutable.
 *
 * <p>Of the versions that have come into force, the one with the highest number answers: one that was overtaken before its instant
 * never does.
 *
 * @param heads oldest first
 * @param answering newest first
 */
record RoomHistory(List<VersionHead> heads, List<ChartVersion> answering) {

    static final RoomHistory NONE = new RoomHistory(List.of(), List.of());

    /** @param whole gives the version of a head in full; asked only for those that answer at {@code now} or later */
    static RoomHistory of(List<VersionHead> heads, Instant now, Function<VersionHead, ChartVersion> whole) {
        var answering = new ArrayList<ChartVersion>();
        for (int i = heads.size() - 1; i >= 0; i--) {
            answering.add(whole.apply(heads.get(i)));
            if (!heads.get(i).inForceFrom().isAfter(now)) {
                break;
            }
        }
        return new RoomHistory(List.copyOf(heads), List.copyOf(answering));
    }

    List<VersionHead> newestFirst() {
        var newestFirst = new ArrayList<>(heads);
        Collections.reverse(newestFirst);
        return List.copyOf(newestFirst);
    }

    /** Numbers have no gaps and begin at 1. */
    Optional<VersionHead> find(int number) {
        return number < 1 || number > heads.size() ? Optional.empty() : Optional.of(heads.get(number - 1));
    }

    Optional<ChartVersion> findAnswering(int number) {
        return answering.stream()
                .filter(version -> version.head().number() == number)
                .findFirst();
    }

    /** The version that answers at an instant, if it is one of those held in full: what is asked for every technique. */
    Optional<ChartVersion> findAnswering(Instant at) {
        for (var version : answering) {
            if (!version.head().inForceFrom().isAfter(at)) {
                return Optional.of(version);
            }
        }
        return Optional.empty();
    }

    /** The head of the version that answered at an instant, however long ago. */
    Optional<VersionHead> findInForce(Instant at) {
        for (int i = heads.size() - 1; i >= 0; i--) {
            if (!heads.get(i).inForceFrom().isAfter(at)) {
                return Optional.of(heads.get(i));
            }
        }
        return Optional.empty();
    }
}
