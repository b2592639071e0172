package wallchart;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A request as a document shows it, a line for curl, understood well enough to be sent where there is no curl.
 *
 * @param headers name and value in turn
 */
record CurlLine(String method, URI address, List<String> headers, Optional<String> body) {

    private static final Pattern WORD = Pattern.compile("'([^']*)'|\"([^\"]*)\"|(\\S+)");

    /** @throws IllegalArgumentException for an option that is not understood: a document keeps to few */
    static CurlLine parse(String line) {
        var words = words(line).iterator();
        if (!words.next().equals("curl")) {
            throw new IllegalArgumentException("no line for curl: " + line);
        }
        URI address = null;
        var headers = new ArrayList<String>();
        Optional<String> body = Optional.empty();
        var method = Optional.<String>empty();
        while (words.hasNext()) {
            var word = words.next();
            switch (word) {
                case "-s" -> {} // silence changes nothing
                case "-c", "-b" -> words.next(); // the client that sends it keeps the cookies
                case "-D" -> words.next(); // where the headers are shown
                case "-X" -> method = Optional.of(words.next());
                case "-H" -> headers.addAll(List.of(words.next().split(": ", 2)));
                case "-d" -> body = Optional.of(words.next());
                default -> {
                    if (!word.startsWith("http://") || address != null) {
                        throw new IllegalArgumentException("not understood: " + word);
                    }
                    address = URI.create(word);
                }
            }
        }
        var usual = body.isPresent() ? "POST" : "GET";
        return new CurlLine(method.orElse(usual), address, List.copyOf(headers), body);
    }

    /** The words a shell would make of a line; quotes may enclose whole words only. */
    static List<String> words(String line) {
        return WORD.matcher(line)
                .results()
                .map(word ->
                        word.group(1) != null ? word.group(1) : word.group(2) != null ? word.group(2) : word.group(3))
                .toList();
    }

    HttpResponse<String> send(HttpClient client) throws IOException, InterruptedException {
        var request = HttpRequest.newBuilder(address);
        if (!headers.isEmpty()) {
            request.headers(headers.toArray(String[]::new));
        }
        request.method(method, body.map(BodyPublishers::ofString).orElseGet(BodyPublishers::noBody));
        return client.send(request.build(), BodyHandlers.ofString());
    }
}
