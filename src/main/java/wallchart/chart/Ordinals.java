package wallchart.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * Keeps rows in the order people gave without rewriting those that stay: ordinals have gaps, what is new gets one between its
 * neighbours, and of what was moved as little as possible gets another.
 */
final class Ordinals {

    static final long GAP = 1L << 20;
    private static final long NEW = 0;

    private Ordinals() {}

    /**
     * Ascending ordinals for a list.
     *
     * @param previous for each entry the ordinal it has, or 0 where it has none
     * @return for each entry its ordinal, the previous one wherever it can stay
     */
    static List<Long> assign(List<Long> previous) {
        var ordinals = new ArrayList<>(Collections.nCopies(previous.size(), NEW));
        for (int index : longestAscending(previous)) {
            ordinals.set(index, previous.get(index));
        }
        int from = 0;
        while (from < ordinals.size()) {
            if (ordinals.get(from) != NEW) {
                from++;
                continue;
            }
            int to = from;
            while (to < ordinals.size() && ordinals.get(to) == NEW) {
                to++;
            }
            if (!fill(ordinals, from, to)) {
                return anew(previous.size());
            }
            from = to;
        }
        return ordinals;
    }

    /** Fills a run of new entries evenly between its neighbours; false where these are too close. */
    private static boolean fill(List<Long> ordinals, int from, int to) {
        long below = from == 0 ? 0 : ordinals.get(from - 1);
        long step = to == ordinals.size() ? GAP : (ordinals.get(to) - below) / (to - from + 1);
        for (int i = from; i < to; i++) {
            ordinals.set(i, below + step * (i - from + 1));
        }
        return step > 0;
    }

    private static List<Long> anew(int size) {
        var ordinals = new ArrayList<Long>();
        for (int i = 1; i <= size; i++) {
            ordinals.add(i * GAP);
        }
        return ordinals;
    }

    /** Indices of a longest strictly ascending subsequence of the ordinals that are there (patience sorting). */
    private static List<Integer> longestAscending(List<Long> ordinals) {
        int[] endOfLength = new int[ordinals.size() + 1];
        int[] before = new int[ordinals.size()];
        Arrays.fill(endOfLength, -1);
        int longest = 0;
        for (int i = 0; i < ordinals.size(); i++) {
            if (ordinals.get(i) != NEW) {
                int length = firstNotBelow(ordinals, endOfLength, longest, ordinals.get(i));
                before[i] = length == 1 ? -1 : endOfLength[length - 1];
                endOfLength[length] = i;
                longest = Math.max(longest, length);
            }
        }
        var indices = new ArrayList<Integer>();
        for (int i = longest == 0 ? -1 : endOfLength[longest]; i >= 0; i = before[i]) {
            indices.add(i);
        }
        return indices;
    }

    private static int firstNotBelow(List<Long> ordinals, int[] endOfLength, int longest, long ordinal) {
        int low = 1;
        int high = longest + 1;
        while (low < high) {
            int middle = (low + high) / 2;
            if (ordinals.get(endOfLength[middle]) < ordinal) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
