package org.proviso.sample.signature;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.Adler32;
import java.util.zip.CRC32;

/** Wraps the shades of a slip of paper as a PNG file (W3C, Portable Network Graphics, 2003, sections 5 and 10). */
final class PngFile {

    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};

    private PngFile() {}

    static byte[] of(Paper paper) {
        byte[] shades = paper.shades();
        ByteBuffer header = ByteBuffer.allocate(13).putInt(Paper.WIDTH).putInt(Paper.HEIGHT);
        header.put((byte) 2);
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.writeBytes(SIGNATURE);
        chunk(file, "IHDR", header.array());
        chunk(file, "IDAT", zlib(shades));
        chunk(file, "IEND", new byte[0]);
        return file.toByteArray();
    }

    private static byte[] zlib(byte[] shades) {
        Adler32 sum = new Adler32();
        sum.update(shades);
        byte[] packed = new FixedDeflater(shades).pack();
        return ByteBuffer.allocate(packed.length + 6)
                .put((byte) 0x78)
                .put((byte) 0x01)
                .put(packed)
                .putInt((int) sum.getValue())
                .array();
    }

    private static void chunk(ByteArrayOutputStream file, String type, byte[] data) {
        byte[] named = ByteBuffer.allocate(data.length + 4)
                .put(type.getBytes(StandardCharsets.US_ASCII))
                .put(data)
                .array();
        CRC32 sum = new CRC32();
        sum.update(named);
        file.writeBytes(ByteBuffer.allocate(4).putInt(data.length).array());
        file.writeBytes(named);
        file.writeBytes(ByteBuffer.allocate(4).putInt((int) sum.getValue()).array());
    }
}
