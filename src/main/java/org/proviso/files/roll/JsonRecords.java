package org.proviso.files.roll;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.proviso.files.InputException;
import org.proviso.files.SetAside;
import org.proviso.files.SetAsideRow;
import org.proviso.files.csv.Utf8Reader;

/**
 * Reads a JSON file whose root is an object of one type with one long list, and hands over the list's records one after
 * the other, so that a roll of any length needs the memory of one record.
 */
final class JsonRecords {

    private static final int DEEPEST = 30;
    private static final int LONGEST_TEXT = 1_000_000;
    private static final int MOST_VALUES = 100_000;

    private static final JsonFactory FACTORY = new JsonFactoryBuilder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(DEEPEST)
                    .maxStringLength(LONGEST_TEXT)
                    .build())
            .build();

    private final String file;
    private final JsonParser parser;
    private final @Nullable SetAside aside;
    private int values;
    private @Nullable InputException without;

    private JsonRecords(String file, JsonParser parser, @Nullable SetAside aside) {
        this.file = file;
        this.parser = parser;
        this.aside = aside;
    }

    /**
     * Reads the file to its end: each record of the list, or the exception of the first thing that is wrong. A record
     * that is refused is set aside where somebody takes it.
     */
    static void read(
            Path path,
            String rootType,
            String list,
            List<String> others,
            @Nullable SetAside aside,
            Consumer<JsonValue> each) {
        String file = path.getFileName().toString();
        if (!Files.isRegularFile(path)) {
            throw new InputException(
                    file, 0, "", "is missing from " + path.toAbsolutePath().getParent());
        }
        try (JsonParser parser = FACTORY.createParser(new Utf8Reader(path))) {
            new JsonRecords(file, parser, aside).whole(rootType, list, others, each);
        } catch (IOException e) {
            throw new InputException(file, 0, "", "cannot be read: " + e);
        }
    }

    private void whole(String type, String list, List<String> others, Consumer<JsonValue> each) throws IOException {
        try {
            root(type, list, others, each);
        } catch (JacksonException e) {
            int line = parser.currentLocation().getLineNr();
            String reason = e.getOriginalMessage().replaceAll("\\s+", " ");
            throw new InputException(file, line, "", "is not JSON: " + reason);
        }
    }

    private void root(String type, String list, List<String> others, Consumer<JsonValue> each) throws IOException {
        if (parser.nextToken() != JsonToken.START_OBJECT) {
            boolean empty = parser.currentToken() == null;
            throw empty ? new InputException(file, 0, "", "is empty") : wrong("", "is not a JSON object");
        }
        boolean typed = false;
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String name = parser.currentName();
            parser.nextToken();
            if (name.equals("@type")) {
                requireType(type);
                typed = true;
            } else if (name.equals(list)) {
                records(list, each);
            } else if (others.contains(name)) {
                parser.skipChildren();
            } else {
                throw wrong(name, "is not a known key of " + type);
            }
        }
        if (!typed) {
            throw new InputException(file, 0, "", "is not marked as a " + type);
        }
        if (parser.nextToken() != null) {
            throw wrong("", "has text after its end");
        }
    }

    private void requireType(String type) throws IOException {
        if (!type.equals(parser.getText())) {
            throw wrong("@type", InputException.quoted(parser.getText()) + " is not " + type);
        }
    }

    private void records(String list, Consumer<JsonValue> each) throws IOException {
        if (parser.currentToken() != JsonToken.START_ARRAY) {
            throw wrong(list, "is not a list");
        }
        int count = 0;
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            values = 0;
            without = null;
            JsonValue record = value(list + "[" + ++count + "]");
            if (aside == null) {
                each.accept(record);
            } else {
                eachGood(record, aside, each);
            }
        }
    }

    private void eachGood(JsonValue record, SetAside taken, Consumer<JsonValue> each) {
        try {
            if (without != null) {
                throw without;
            }
            each.accept(record);
        } catch (InputException wrong) {
            taken.take(SetAsideRow.of(wrong, record.asItCame()));
        }
    }

    private JsonValue value(String key) throws IOException {
        int line = line();
        if (++values > MOST_VALUES) {
            throw wrong(key, "is a record with more than 100,000 values");
        }
        return switch (parser.currentToken()) {
            case START_OBJECT -> new JsonValue(file, line, key, members(key));
            case START_ARRAY -> new JsonValue(file, line, key, items(key));
            case VALUE_STRING -> new JsonValue(file, line, key, parser.getText());
            case VALUE_TRUE, VALUE_FALSE -> new JsonValue(file, line, key, parser.getBooleanValue());
            case VALUE_NULL -> nothing(key);
            default -> new JsonValue(file, line, key, parser.getDecimalValue());
        };
    }

    /** Refused at once, or once the record is read to its end and can be set aside. */
    private JsonValue nothing(String key) {
        InputException wrong = wrong(key, "is null; leave out unknown values");
        if (aside == null) {
            throw wrong;
        }
        without = without == null ? wrong : without;
        return new JsonValue(file, line(), key, JsonValue.Nothing.NULL);
    }

    private Map<String, JsonValue> members(String key) throws IOException {
        Map<String, JsonValue> members = new LinkedHashMap<>();
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String name = parser.currentName();
            parser.nextToken();
            members.put(name, value(key + "." + name));
        }
        return members;
    }

    private List<JsonValue> items(String key) throws IOException {
        List<JsonValue> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(value(key + "[" + (items.size() + 1) + "]"));
        }
        return items;
    }

    private int line() {
        return parser.currentTokenLocation().getLineNr();
    }

    private InputException wrong(String key, String reason) {
        return InputException.atKey(file, line(), key, reason);
    }
}
