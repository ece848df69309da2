package org.proviso.files.csv;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.proviso.files.InputException;

/**
 * Reads a file as strict UTF-8, with or without a byte order mark. Text before a bad byte is still handed out, so that
 * an earlier mistake is reported first; then the byte is refused with its line.
 */
public final class Utf8Reader extends Reader {

    private static final int BUFFER = 1 << 16;
    private static final int MARK_FIRST = 0xEF;
    private static final byte[] MARK = {(byte) MARK_FIRST, (byte) 0xBB, (byte) 0xBF};

    private final Path path;
    private final InputStream in;
    private final CharsetDecoder decoder = StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    private final ByteBuffer bytes = ByteBuffer.allocate(BUFFER).limit(0);
    private long before;
    private boolean ended;
    private @Nullable String nul;

    public Utf8Reader(Path path) throws IOException {
        this.path = path;
        this.in = Files.newInputStream(path);
        try {
            fill();
            skipMark();
        } catch (IOException | RuntimeException e) {
            in.close();
            throw e;
        }
    }

    @Override
    public int read(char[] into, int offset, int length) throws IOException {
        CharBuffer out = CharBuffer.wrap(into, offset, length);
        while (out.position() == offset) {
            CoderResult result = decoder.decode(bytes, out, ended);
            if (out.position() > offset) {
                break;
            }
            if (result.isError()) {
                throw refused(notUtf8());
            }
            if (nul != null) {
                throw refused(nul);
            }
            if (ended) {
                return -1;
            }
            fill();
        }
        return out.position() - offset;
    }

    @Override
    public void close() throws IOException {
        in.close();
    }

    private void fill() throws IOException {
        before += bytes.position();
        bytes.compact();
        int start = bytes.position();
        while (bytes.hasRemaining() && !ended) {
            int count = in.read(bytes.array(), bytes.position(), bytes.remaining());
            ended = count < 0;
            bytes.position(bytes.position() + Math.max(count, 0));
        }
        int end = bytes.position();
        bytes.flip();
        stopAtNul(start, end);
    }

    private void stopAtNul(int start, int end) {
        byte[] array = bytes.array();
        for (int i = start; i < end; i++) {
            if (array[i] == 0) {
                bytes.limit(i);
                ended = true;
                nul = "contains a NUL byte; this is not a text file, or it was cut off while being written";
                return;
            }
        }
    }

    private void skipMark() {
        int first = bytes.hasRemaining() ? bytes.get(0) & 0xFF : 0;
        if (bytes.remaining() > 1 && first + (bytes.get(1) & 0xFF) == 0xFF + 0xFE && first >= 0xFE) {
            throw refused("is in UTF-16; save it as UTF-8");
        }
        if (bytes.remaining() >= MARK.length
                && first == MARK_FIRST
                && bytes.get(1) == MARK[1]
                && bytes.get(2) == MARK[2]) {
            bytes.position(MARK.length);
        }
    }

    private String notUtf8() {
        int bad = bytes.get(bytes.position()) & 0xFF;
        return "contains the byte " + Integer.toHexString(bad).toUpperCase(Locale.ROOT)
                + ", which is not UTF-8; the file may be Latin-1 or Windows-1252. Save it as UTF-8";
    }

    private InputException refused(String reason) {
        return new InputException(path.getFileName().toString(), lineAt(before + bytes.position()), "", reason);
    }

    /** Counts lines only now that one is needed: reading a good file does not pay for it. */
    private int lineAt(long offset) {
        int line = 1;
        int last = 0;
        try (InputStream again = new BufferedInputStream(Files.newInputStream(path))) {
            for (long i = 0; i < offset; i++) {
                int next = again.read();
                if (next == '\r' || (next == '\n' && last != '\r')) {
                    line++;
                }
                last = next;
            }
        } catch (IOException e) {
            return 0;
        }
        return line;
    }
}
