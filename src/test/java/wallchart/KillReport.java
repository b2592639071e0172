package wallchart;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** What came of killing a service again and again. For one thread. */
final class KillReport {

    private final List<Integer> signatures = new ArrayList<>();
    private final List<Duration> starts = new ArrayList<>();
    private final List<Acknowledged> lost = new ArrayList<>();
    private final List<String> doubts = new ArrayList<>();

    void started(Duration took) {
        starts.add(took);
    }

    void killed(int acknowledged) {
        signatures.add(acknowledged);
    }

    void found(List<Acknowledged> gone, List<String> doubtful) {
        lost.addAll(gone);
        doubts.addAll(doubtful);
    }

    boolean isClean() {
        return lost.isEmpty() && doubts.isEmpty();
    }

    /** Acknowledged signatures that were gone after a kill. */
    List<Acknowledged> lost() {
        return List.copyOf(lost);
    }

    /** What did not fit together after a kill. */
    List<String> doubts() {
        return List.copyOf(doubts);
    }

    Duration slowestStart() {
        return starts.stream().max(Duration::compareTo).orElseThrow();
    }

    private Duration medianStart() {
        return starts.stream().sorted().toList().get(starts.size() / 2);
    }

    @Override
    public String toString() {
        return "%d kills, %d signatures acknowledged (%d to %d in a cycle), %d lost, %d doubts; ready in %d ms (median), %d ms (slowest)"
                .formatted(
                        signatures.size(),
                        signatures.stream().mapToInt(Integer::intValue).sum(),
                        signatures.stream().mapToInt(Integer::intValue).min().orElse(0),
                        signatures.stream().mapToInt(Integer::intValue).max().orElse(0),
                        lost.size(),
                        doubts.size(),
                        medianStart().toMillis(),
                        slowestStart().toMillis());
    }
}
