package org.proviso.setup.first;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.proviso.core.Code;
import org.proviso.core.Election;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.Yaml;

/** The facts of an election as a supervisor types them; they become its {@code election.yaml}. Times are the county's. */
public record ElectionFacts(
        String name,
        LocalDate date,
        Election.Kind kind,
        String county,
        String zone,
        String rulePack,
        Election.DecidingBody decider,
        Election.Office office,
        LocalTime pollsClose,
        List<String> languages,
        Election.Receipts receipts) {

    /** The text of the file. */
    public String yaml() {
        Map<String, Object> root = new LinkedHashMap<>();
        root.put("name", name);
        root.put("date", date.toString());
        root.put("kind", kind.code());
        root.put("jurisdiction", county);
        root.put("zone", zone);
        root.put("rule_pack", rulePack);
        root.put("decider", ordered("members", decider.members(), "quorum", decider.quorum()));
        Map<String, Object> place = ordered("name", office.name(), "address", office.address());
        place.put("phone", office.phone());
        place.put("email", office.email());
        place.put("hours", new LinkedHashMap<>(office.hours()));
        root.put("office", place);
        root.put("polls_close", pollsClose.toString());
        root.put("languages", new ArrayList<>(languages));
        root.put("receipts", receipts.code());
        DumperOptions lines = new DumperOptions();
        lines.setDefaultFlowStyle(DumperOptions.FlowStyle.BLOCK);
        lines.setAllowUnicode(true);
        return new Yaml(lines).dump(root);
    }

    private static Map<String, Object> ordered(String first, Object one, String second, Object other) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put(first, one);
        map.put(second, other);
        return map;
    }

    /** What a kind of election is called. */
    static Map<String, String> kinds() {
        Map<String, String> words = new LinkedHashMap<>();
        for (Election.Kind kind : Election.Kind.values()) {
            words.put(kind.code(), kind.code());
        }
        return words;
    }

    static Election.Kind kind(String code) {
        return Code.find(Election.Kind.class, code).orElse(Election.Kind.GENERAL);
    }
}
