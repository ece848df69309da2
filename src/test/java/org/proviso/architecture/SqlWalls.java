package org.proviso.architecture;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Where statements of stores have more values in a row without a name than a reader can tell apart. */
record SqlWalls(int stores, List<String> found) {

    private static final int LIMIT = 7;
    private static final Pattern MARKS_IN_A_ROW = Pattern.compile("\\?(?:\\s*,\\s*\\?){" + LIMIT + ",}");

    /** Reads every store under a folder. */
    static SqlWalls under(Path folder) throws IOException {
        List<Path> stores;
        try (Stream<Path> walk = Files.walk(folder)) {
            stores = walk.filter(path -> path.toString().endsWith("Store.java"))
                    .sorted()
                    .toList();
        }
        List<String> found = new ArrayList<>();
        for (Path store : stores) {
            Matcher marks = MARKS_IN_A_ROW.matcher(Files.readString(store));
            while (marks.find()) {
                long count = marks.group().chars().filter(sign -> sign == '?').count();
                found.add(store.getFileName() + " has " + count + " question marks in a row");
            }
        }
        return new SqlWalls(stores.size(), found);
    }
}
