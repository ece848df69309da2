package org.proviso.files.table;

import de.siegmar.fastcsv.reader.CsvReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** A list read back from its file: what it says about itself, its headings and rows, and which cells are numbers. */
public record ReadList(
        Map<String, String> about, List<String> headings, List<List<String>> rows, List<String> numbers) {

    /** {@code lines} is how many lines say what the file is about. */
    public static ReadList csv(byte[] file, int lines) {
        List<List<String>> all = new ArrayList<>();
        CsvReader.builder()
                .ofCsvRecord(new String(file, StandardCharsets.UTF_8))
                .forEach(row -> all.add(row.getFields()));
        Map<String, String> about = new LinkedHashMap<>();
        all.subList(0, lines).forEach(row -> about.put(row.get(0), row.get(1)));
        return new ReadList(about, all.get(lines), all.subList(lines + 1, all.size()), List.of());
    }

    public static ReadList xlsx(byte[] file) {
        Map<String, byte[]> parts = parts(file);
        List<String> numbers = new ArrayList<>();
        List<List<String>> list = sheet(parts.get("xl/worksheets/sheet1.xml"), numbers);
        Map<String, String> about = new LinkedHashMap<>();
        sheet(parts.get("xl/worksheets/sheet2.xml"), new ArrayList<>())
                .forEach(row -> about.put(row.get(0), row.size() > 1 ? row.get(1) : ""));
        int width = list.get(0).size();
        list.forEach(row -> {
            while (row.size() < width) {
                row.add("");
            }
        });
        return new ReadList(about, list.get(0), list.subList(1, list.size()), numbers);
    }

    /** The text of a part of the file, as it is written. */
    public static String part(byte[] file, String name) {
        return new String(parts(file).get(name), StandardCharsets.UTF_8);
    }

    /** Read by its directory, as spreadsheets do: a streamed file has no sizes in front of its parts. */
    private static Map<String, byte[]> parts(byte[] file) {
        Map<String, byte[]> parts = new LinkedHashMap<>();
        try {
            Path kept = Files.createTempFile("list", ".xlsx");
            try {
                Files.write(kept, file);
                try (ZipFile zip = new ZipFile(kept.toFile())) {
                    for (ZipEntry entry : Collections.list(zip.entries())) {
                        parts.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
                    }
                }
            } finally {
                Files.delete(kept);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return parts;
    }

    private static List<List<String>> sheet(byte[] xml, List<String> numbers) {
        List<List<String>> rows = new ArrayList<>();
        NodeList lines = parsed(xml).getElementsByTagName("row");
        for (int line = 0; line < lines.getLength(); line++) {
            List<String> row = new ArrayList<>();
            NodeList cells = ((Element) lines.item(line)).getElementsByTagName("c");
            for (int at = 0; at < cells.getLength(); at++) {
                Element cell = (Element) cells.item(at);
                int column = column(cell.getAttribute("r"));
                while (row.size() < column) {
                    row.add("");
                }
                row.add(cell.getTextContent());
                if (!cell.getAttribute("t").equals("inlineStr")
                        && !cell.getTextContent().isEmpty()) {
                    numbers.add(cell.getTextContent());
                }
            }
            rows.add(row);
        }
        return rows;
    }

    private static int column(String place) {
        int column = 0;
        for (char letter : place.replaceAll("\\d", "").toCharArray()) {
            column = column * 26 + letter - 'A' + 1;
        }
        return column - 1;
    }

    private static Document parsed(byte[] xml) {
        try {
            return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new ByteArrayInputStream(xml));
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }
}
