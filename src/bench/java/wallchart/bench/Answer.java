package wallchart.bench;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Reads answers with a Content-Length from one connection, as sparingly as it can: the machine is the server's to use. */
final class Answer {

    private static final int BUFFER = 64 * 1024;
    private static final byte[] LENGTH = "\r\nContent-Length: ".getBytes(StandardCharsets.US_ASCII);
    private static final byte[] END = "\r\n\r\n".getBytes(StandardCharsets.US_ASCII);
    private static final int STATUS_AT = "HTTP/1.1 ".length();

    private final InputStream in;
    private final byte[] buffer = new byte[BUFFER];

    Answer(InputStream in) {
        this.in = in;
    }

    /** Reads one whole answer and gives its status. */
    int receive() throws IOException {
        int filled = 0;
        int head = -1;
        while (head < 0) {
            filled += read(filled);
            head = indexOf(END, filled);
        }
        int whole = head + END.length + number(indexOf(LENGTH, head + END.length) + LENGTH.length);
        while (filled < whole) {
            filled += read(filled);
        }
        if (filled > whole) {
            throw new IOException("more than one answer to one request");
        }
        return number(STATUS_AT);
    }

    private int read(int filled) throws IOException {
        int count = in.read(buffer, filled, BUFFER - filled);
        if (count < 0) {
            throw new EOFException("the connection ended");
        }
        return count;
    }

    private int indexOf(byte[] wanted, int filled) {
        for (int i = 0; i + wanted.length <= filled; i++) {
            if (buffer[i] == wanted[0] && Arrays.equals(buffer, i, i + wanted.length, wanted, 0, wanted.length)) {
                return i;
            }
        }
        return -1;
    }

    private int number(int start) {
        int number = 0;
        for (int i = start; buffer[i] >= '0' && buffer[i] <= '9'; i++) {
            number = number * 10 + buffer[i] - '0';
        }
        return number;
    }
}
