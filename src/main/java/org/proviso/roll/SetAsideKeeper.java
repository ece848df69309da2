package org.proviso.roll;

import java.nio.file.Path;
import java.util.Map;
import org.proviso.election.ElectionLoaded;
import org.proviso.files.ContentHash;
import org.proviso.files.csv.CsvTable;
import org.proviso.files.csv.SetAsideFile;
import org.springframework.stereotype.Component;

/** Keeps the rows that were set aside when an election was loaded, each with the list it came in. */
@Component
class SetAsideKeeper {

    /** The streets are no snapshot: they are never replaced. */
    private static final int STREETS = 0;

    private final SetAsideStore asides;

    SetAsideKeeper(SetAsideStore asides) {
        this.asides = asides;
    }

    /** {@code numbers} are those of the lists, by the names of their files. */
    void keep(ElectionLoaded loaded, Map<String, Integer> numbers) {
        ElectionLoaded.Aside aside = loaded.aside();
        if (aside == null) {
            return;
        }
        for (String list : loaded.folder().setAside().keySet()) {
            keep(loaded, aside, list, numbers.getOrDefault(list, STREETS));
        }
    }

    private void keep(ElectionLoaded loaded, ElectionLoaded.Aside aside, String list, int number) {
        Path file = loaded.folder().folder().resolve(list);
        try (SetAsideWriter writer = asides.writer(loaded.electionId(), number, ContentHash.ofFile(file))) {
            SetAsideFile.each(aside.rows(), row -> {
                if (row.list().equals(list)) {
                    writer.take(row);
                }
            });
            String header = list.endsWith(".json") ? "" : CsvTable.headerAsItCame(file);
            asides.add(loaded.electionId(), number, writer.finish(), header);
            asides.decide(loaded.electionId(), number, aside.because(), aside.by());
        }
    }
}
