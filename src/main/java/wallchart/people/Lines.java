package wallchart.people;

import wallchart.store.PlainText;

/** Texts that go into the record as people wrote them. */
final class Lines {

    private Lines() {}

    /** Whether it is one line of at most so many characters that can be written anywhere, and not blank. */
    static boolean isLine(String text, int longest) {
        return !text.isBlank() && PlainText.problem(text, longest).isEmpty();
    }
}
