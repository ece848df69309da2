package org.proviso.browser.twists;

import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;

/** A PNG with few colors: a page has hardly more, and the file is a third as long. */
final class SmallPicture {

    private static final int COLORS = 80;

    /** Colors that differ only in the last bits count as one. */
    private static final int COARSE = 0xf8f8f8;

    private SmallPicture() {}

    /** Writes the PNG again, with the colors that are most often in it. */
    static void write(byte[] png, Path file) {
        try {
            BufferedImage whole = ImageIO.read(new ByteArrayInputStream(png));
            Files.createDirectories(file.toAbsolutePath().getParent());
            ImageIO.write(fewer(whole), "png", file.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static BufferedImage fewer(BufferedImage whole) {
        int[] colors = mostFrequent(whole);
        IndexColorModel model = new IndexColorModel(8, colors.length, colors, 0, false, -1, 0);
        BufferedImage small =
                new BufferedImage(whole.getWidth(), whole.getHeight(), BufferedImage.TYPE_BYTE_INDEXED, model);
        Map<Integer, Integer> known = new HashMap<>();
        for (int y = 0; y < whole.getHeight(); y++) {
            for (int x = 0; x < whole.getWidth(); x++) {
                int color = whole.getRGB(x, y) & 0xffffff;
                small.getRaster().setSample(x, y, 0, known.computeIfAbsent(color, one -> nearest(one, colors)));
            }
        }
        return small;
    }

    /** Of each group of colors that are almost the same, the one that is most often there. */
    private static int[] mostFrequent(BufferedImage whole) {
        Map<Integer, Map<Integer, Integer>> groups = new HashMap<>();
        for (int pixel : whole.getRGB(0, 0, whole.getWidth(), whole.getHeight(), null, 0, whole.getWidth())) {
            int color = pixel & 0xffffff;
            groups.computeIfAbsent(color & COARSE, any -> new HashMap<>()).merge(color, 1, Integer::sum);
        }
        return groups.values().stream()
                .sorted(Comparator.comparingInt((Map<Integer, Integer> group) -> -sum(group)))
                .limit(COLORS)
                .mapToInt(SmallPicture::best)
                .toArray();
    }

    /** How often the group is there; the red of a defect is rare among all the gray, and matters. */
    private static int sum(Map<Integer, Integer> group) {
        int color = best(group);
        int strength = Math.max(color >> 16 & 255, Math.max(color >> 8 & 255, color & 255))
                - Math.min(color >> 16 & 255, Math.min(color >> 8 & 255, color & 255));
        return group.values().stream().mapToInt(Integer::intValue).sum() * (1 + strength / 8);
    }

    private static int best(Map<Integer, Integer> group) {
        return List.copyOf(group.entrySet()).stream()
                .max(Map.Entry.comparingByValue())
                .orElseThrow()
                .getKey();
    }

    private static int nearest(int color, int[] colors) {
        int best = 0;
        int least = Integer.MAX_VALUE;
        for (int i = 0; i < colors.length; i++) {
            int red = (color >> 16 & 255) - (colors[i] >> 16 & 255);
            int green = (color >> 8 & 255) - (colors[i] >> 8 & 255);
            int blue = (color & 255) - (colors[i] & 255);
            int far = red * red + green * green + blue * blue;
            if (far < least) {
                least = far;
                best = i;
            }
        }
        return best;
    }

    /** Makes the pictures of a folder small. */
    public static void main(String[] folder) throws IOException {
        try (var files = Files.list(Path.of(folder[0]))) {
            for (Path file :
                    files.filter(one -> one.toString().endsWith(".png")).toList()) {
                write(Files.readAllBytes(file), Path.of(folder[1]).resolve(file.getFileName()));
            }
        }
    }
}
