package org.proviso.architecture;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Where stores read a single value of a column in a way of their own. */
record RowHelpers(int stores, List<String> found) {

    /** Gives a text, a number, a time or, as {@code E}, a code; takes a row and the name of a column. */
    private static final Pattern HELPER = Pattern.compile(
            "\\b(?:String|int|Integer|boolean|Instant|Local\\w+|YesNo|E) (\\w+)\\(ResultSet \\w+, String");

    /** Reads every store under a folder. */
    static RowHelpers under(Path folder) throws IOException {
        List<Path> stores;
        try (Stream<Path> walk = Files.walk(folder)) {
            stores = walk.filter(path -> path.toString().endsWith("Store.java"))
                    .sorted()
                    .toList();
        }
        List<String> found = new ArrayList<>();
        for (Path store : stores) {
            Matcher helper = HELPER.matcher(Files.readString(store));
            while (helper.find()) {
                found.add(store.getFileName() + " reads a column in its own way: " + helper.group(1));
            }
        }
        return new RowHelpers(stores.size(), found);
    }
}
