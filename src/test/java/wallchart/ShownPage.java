package wallchart;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A page of ours, README.md or DEVELOPERS.md, and what it shows: code blocks, words in backticks, links. */
record ShownPage(String text) {

    private static final Pattern BLOCK = Pattern.compile("(?ms)^```(\\w*)\n(.*?)^```$");
    private static final Pattern INLINE = Pattern.compile("`([^`\n]+)`");
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#]+)\\)");

    static ShownPage read(String file) throws IOException {
        return new ShownPage(Files.readString(Path.of(file)));
    }

    /** Code blocks of that language; the empty one for commands. */
    List<String> blocks(String language) {
        return BLOCK.matcher(text)
                .results()
                .filter(block -> block.group(1).equals(language))
                .map(block -> block.group(2).strip())
                .toList();
    }

    /** What stands in backticks within the prose. */
    List<String> inBackticks() {
        return INLINE.matcher(BLOCK.matcher(text).replaceAll(""))
                .results()
                .map(word -> word.group(1))
                .toList();
    }

    /** Every command line shown, in blocks and in backticks, that begins with that word. */
    List<String> commands(String first) {
        return Stream.concat(blocks("").stream().flatMap(String::lines), inBackticks().stream())
                .map(String::strip)
                .filter(line -> line.startsWith(first + " "))
                .toList();
    }

    /** Files of this project that the page links to. */
    List<String> links() {
        return LINK.matcher(text)
                .results()
                .map(link -> link.group(1))
                .filter(link -> !link.startsWith("http"))
                .toList();
    }
}
