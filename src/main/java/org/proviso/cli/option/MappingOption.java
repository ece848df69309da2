package org.proviso.cli.option;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.proviso.files.mapping.MappedFolder;
import picocli.CommandLine.Option;

/** The mappings that verbs over an office's own files take. */
public final class MappingOption {

    @Option(
            names = "--mapping",
            paramLabel = "FILE",
            description = "How a file of the office's own is read (YAML); may be given several times."
                    + " The mappings in the folder's mappings/ are used without it.")
    private List<Path> mappings = new ArrayList<>();

    public List<Path> files() {
        return mappings;
    }

    /** The election folder with every file in our columns. */
    public MappedFolder folder(Path folder) {
        return MappedFolder.of(folder, mappings);
    }
}
