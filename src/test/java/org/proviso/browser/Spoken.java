package org.proviso.browser;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A page as a person hears it: the tree that the browser hands to a screen reader, with each thing's role, name and state
 * in reading order. What is hidden from hearing is not in it.
 */
final class Spoken {

    /** One thing on the page; text that is only the name of the thing around it is left out. */
    private record Part(String role, String name, Map<String, Object> states, List<Part> parts) {

        boolean is(String... roles) {
            return Set.of(roles).contains(role);
        }
    }

    /** What a person has to be able to call by a name. */
    private static final Set<String> NAMED = Set.of(
            "button",
            "link",
            "textbox",
            "searchbox",
            "combobox",
            "listbox",
            "checkbox",
            "radio",
            "radiogroup",
            "switch",
            "spinbutton",
            "slider",
            "tab",
            "menuitem",
            "option",
            "dialog",
            "alertdialog",
            "grid",
            "treegrid",
            "table",
            "image",
            "img",
            "region",
            "navigation",
            "group",
            "heading",
            "DisclosureTriangle",
            "PopUpButton",
            "Date");

    /** Whose name is made of what stands in them: it is said once. */
    private static final Set<String> SAID_BY_NAME =
            Set.of("button", "link", "heading", "checkbox", "radio", "option", "tab", "menuitem", "DisclosureTriangle");

    /** Which only hold others together and are not said. */
    private static final Set<String> SILENT = Set.of(
            "generic",
            "none",
            "RootWebArea",
            "rowgroup",
            "InlineTextBox",
            "LayoutTable",
            "LineBreak",
            "DescriptionList");

    /** What a person does not hear in passing: a label is the name of its box, a closed list its value. */
    private static final Set<String> PASSED_OVER = Set.of("LabelText", "MenuListPopup", "ListMarker", "Legend");

    private final Part page;

    private Spoken(Part page) {
        this.page = page;
    }

    /** The page as it is now. */
    @SuppressWarnings("unchecked")
    static Spoken of(Browser browser) {
        Object nodes = browser.driver()
                .executeCdpCommand("Accessibility.getFullAXTree", Map.of())
                .get("nodes");
        Map<String, Map<String, Object>> byId = new HashMap<>();
        List<Map<String, Object>> all = (List<Map<String, Object>>) nodes;
        all.forEach(node -> byId.put((String) node.get("nodeId"), node));
        return new Spoken(part(byId, all.get(0)));
    }

    @SuppressWarnings("unchecked")
    private static Part part(Map<String, Map<String, Object>> byId, Map<String, Object> node) {
        List<Part> parts = new ArrayList<>();
        for (String child : (List<String>) node.getOrDefault("childIds", List.of())) {
            Map<String, Object> found = byId.get(child);
            if (found != null) {
                parts.add(part(byId, found));
            }
        }
        boolean ignored = Boolean.TRUE.equals(node.get("ignored"));
        return new Part(ignored ? "none" : value(node.get("role")), value(node.get("name")), states(node), parts);
    }

    @SuppressWarnings("unchecked")
    private static String value(@Nullable Object held) {
        Object value = held == null ? null : ((Map<String, Object>) held).get("value");
        return value == null ? "" : String.valueOf(value).strip();
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> states(Map<String, Object> node) {
        Map<String, Object> states = new HashMap<>();
        for (Map<String, Object> one : (List<Map<String, Object>>) node.getOrDefault("properties", List.of())) {
            states.put((String) one.get("name"), value(one.get("value")));
        }
        states.put("value", value(node.get("value")));
        states.put("description", value(node.get("description")));
        return states;
    }

    /** Line by line what is heard, each thing set in under what it stands in. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add("page: " + page.name());
        say(page, 0, lines);
        return lines;
    }

    private static void say(Part part, int depth, List<String> lines) {
        for (Part one : part.parts()) {
            if (SILENT.contains(one.role())) {
                say(one, depth, lines);
            } else if (one.is("StaticText")) {
                sayText(one, depth, lines);
            } else if (one.is("row")) {
                lines.add(" ".repeat(depth * 2) + "row: " + String.join(" | ", cells(one)));
            } else if (!PASSED_OVER.contains(one.role())) {
                lines.add(" ".repeat(depth * 2) + words(one));
                if (!SAID_BY_NAME.contains(one.role()) && !one.is("textbox", "combobox", "searchbox")) {
                    say(one, depth + 1, lines);
                }
            }
        }
    }

    private static void sayText(Part text, int depth, List<String> lines) {
        String before = lines.get(lines.size() - 1).strip();
        if (!text.name().isEmpty() && !before.endsWith("\"" + text.name() + "\"")) {
            lines.add(" ".repeat(depth * 2) + text.name());
        }
    }

    private static List<String> cells(Part row) {
        List<String> cells = new ArrayList<>();
        for (Part one : row.parts()) {
            if (one.is("cell", "gridcell", "columnheader", "rowheader")) {
                List<String> in = new ArrayList<>(List.of(""));
                say(one, 0, in);
                String words = String.join(" ", in).strip();
                cells.add((one.is("columnheader", "rowheader") ? "[" + one.role() + "] " : "") + words);
            } else {
                cells.addAll(cells(one));
            }
        }
        return cells;
    }

    private static String words(Part one) {
        StringBuilder words = new StringBuilder(one.role());
        String level = (String) one.states().getOrDefault("level", "");
        if (!level.isEmpty() && one.is("heading")) {
            words.append(' ').append(level);
        }
        if (!one.name().isEmpty()) {
            words.append(" \"").append(one.name()).append('"');
        }
        for (String state :
                List.of("value", "checked", "expanded", "pressed", "selected", "invalid", "live", "haspopup")) {
            String value = (String) one.states().getOrDefault(state, "");
            if (!value.isEmpty() && !(state.equals("invalid") && value.equals("false"))) {
                words.append(", ").append(state).append(' ').append(value);
            }
        }
        for (String state : List.of("disabled", "required", "readonly", "multiline")) {
            if ("true".equals(one.states().get(state))) {
                words.append(", ").append(state);
            }
        }
        String more = (String) one.states().getOrDefault("description", "");
        return more.isEmpty() || more.equals(one.name()) ? words.toString() : words + " (" + more + ")";
    }

    /** A sentence for each thing that has no name, for missing or double landmarks, and for headings that skip a level. */
    List<String> findings() {
        List<String> findings = new ArrayList<>();
        if (page.name().isEmpty()) {
            findings.add("the page has no title");
        }
        List<Part> all = new ArrayList<>();
        gather(page, all);
        long first = all.stream()
                .filter(one -> one.is("heading") && "1".equals(one.states().get("level")))
                .count();
        if (first != 1) {
            findings.add(first + " first headings are heard");
        }
        long mains = all.stream().filter(one -> one.is("main")).count();
        if (mains != 1) {
            findings.add(mains + " main parts are heard");
        }
        for (Part one : all) {
            if (NAMED.contains(one.role()) && one.name().isEmpty() && !bare(one)) {
                findings.add("nameless: " + words(one) + " holding \"" + held(one) + "\"");
            }
            if (one.is("table", "grid", "treegrid") && !hasHeader(one)) {
                findings.add("no cell of " + words(one) + " is a header");
            }
        }
        findings.addAll(skips(all));
        return findings;
    }

    /** A group that only holds boxes together, as each opened section does, needs no name. */
    private static boolean bare(Part one) {
        return one.is("group");
    }

    private static List<String> skips(List<Part> all) {
        List<String> skips = new ArrayList<>();
        int before = 0;
        for (Part one : all) {
            if (one.is("heading")) {
                int level = Integer.parseInt((String) one.states().getOrDefault("level", "0"));
                if (level > before + 1) {
                    skips.add(words(one) + " comes after level " + before);
                }
                before = level;
            }
        }
        return skips;
    }

    private static boolean hasHeader(Part table) {
        List<Part> in = new ArrayList<>();
        gather(table, in);
        return in.stream().anyMatch(one -> one.is("columnheader", "rowheader"));
    }

    private static String held(Part one) {
        List<String> lines = new ArrayList<>(List.of(""));
        say(one, 0, lines);
        String words = String.join(" ", lines).strip();
        return words.length() > 60 ? words.substring(0, 60) + "..." : words;
    }

    private static void gather(Part part, List<Part> all) {
        all.add(part);
        part.parts().forEach(one -> gather(one, all));
    }
}
