package org.proviso.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/**
 * The names of an invented county: from a folder of frequency tables (Census Bureau 1990, as {@code rank,name,percent,…},
 * and {@code nicknames.csv}) or, without one, from syllables with a like skew and a short list of nicknames.
 */
record NameTables(Draw surnames, Draw women, Draw men, Map<String, List<String>> nicknames) {

    private static final String[] STARTS = {
        "Al", "Bran", "Cor", "Des", "Ev", "Fal", "Gri", "Hav", "Ist", "Jor", "Kas", "Lor", "Mar", "Nev", "Ol", "Per",
        "Quin", "Ras", "Sel", "Tor", "Ul", "Ver", "Wes", "Yar", "Zan"
    };
    private static final String[] MIDDLES = {
        "a", "e", "i", "o", "u", "an", "en", "in", "on", "ar", "er", "ir", "or", "al", "el", "il", "ol", "and", "est"
    };
    private static final String[] ENDS = {
        "bach", "by", "cott", "dale", "den", "er", "ez", "field", "ham", "ino", "kins", "la", "lin", "man", "mont",
        "na", "ner", "o", "ridge", "s", "son", "stein", "ton", "vich", "well", "wood"
    };

    /** The tables of a folder, or the invented ones where none is given. */
    static NameTables of(@Nullable Path folder) throws IOException {
        if (folder == null) {
            return new NameTables(
                    syllables(60_000, 11, 25), syllables(2_500, 12, 6), syllables(1_200, 13, 6), shortForms());
        }
        return new NameTables(
                table(folder.resolve("us-census-1990-surnames-top20000.csv")),
                table(folder.resolve("us-census-1990-given-female.csv")),
                table(folder.resolve("us-census-1990-given-male.csv")),
                nicknames(folder.resolve("nicknames.csv")));
    }

    /** A share printed as 0.000 is drawn by its rank. */
    private static Draw table(Path file) throws IOException {
        List<String> names = new ArrayList<>();
        List<Double> weights = new ArrayList<>();
        List<String> lines = Files.readAllLines(file);
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",");
            names.add(capital(cells[1]));
            weights.add(Math.max(Double.parseDouble(cells[2]), 1.0 / Double.parseDouble(cells[0])));
        }
        return new Draw(names, weights);
    }

    private static Map<String, List<String>> nicknames(Path file) throws IOException {
        Map<String, List<String>> known = new HashMap<>();
        for (String line : Files.readAllLines(file)) {
            String[] cells = line.split(",");
            known.computeIfAbsent(capital(cells[0]), name -> new ArrayList<>()).add(capital(cells[2]));
        }
        return known;
    }

    /** Names by Zipf's law, flattened at the top by {@code shift}. */
    private static Draw syllables(int count, long seed, int shift) {
        SplittableRandom random = new SplittableRandom(seed);
        List<String> names = new ArrayList<>();
        List<Double> weights = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            StringBuilder name = new StringBuilder(STARTS[random.nextInt(STARTS.length)]);
            for (int more = i < count / 20 ? 0 : 1 + i % 2; more > 0; more--) {
                name.append(MIDDLES[random.nextInt(MIDDLES.length)]);
            }
            names.add(name.append(ENDS[random.nextInt(ENDS.length)]).toString());
            weights.add(1.0 / (i + shift));
        }
        return new Draw(names, weights);
    }

    /** A made-up name's short form: its beginning, or its beginning with an ending. */
    private static Map<String, List<String>> shortForms() {
        return new HashMap<>() {
            @Override
            public List<String> getOrDefault(Object name, List<String> otherwise) {
                String whole = (String) name;
                return whole.length() < 6 ? otherwise : List.of(whole.substring(0, 4), whole.substring(0, 3) + "ie");
            }
        };
    }

    static String capital(String word) {
        return word.isEmpty()
                ? word
                : word.substring(0, 1).toUpperCase(Locale.ROOT)
                        + word.substring(1).toLowerCase(Locale.ROOT);
    }
}
