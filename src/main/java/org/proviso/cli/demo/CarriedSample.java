package org.proviso.cli.demo;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;

/** The sample election that the program carries: its files, and when the office's work on it begins. */
final class CarriedSample {

    /** The name of its folder, which becomes the election's. */
    static final String NAME = "tamarack-general";

    /** Nine in the morning after its election day, on the county's clock. */
    static final Instant WORK_BEGINS = LocalDateTime.of(2026, 11, 4, 9, 0)
            .atZone(ZoneId.of("America/Detroit"))
            .toInstant();

    private static final String FOLDER = "sample-cases/" + NAME + "/";

    private CarriedSample() {}

    /** Copies its files into a folder of its name under {@code parent}, for a jar is no place to read a folder from. */
    static Path copyTo(Path parent) throws IOException {
        Path folder = parent.resolve(NAME);
        // Not the thread's own class loader: that of a shared worker thread does not see inside the program's jar.
        var resources = new PathMatchingResourcePatternResolver(CarriedSample.class.getClassLoader());
        Resource[] files = resources.getResources("classpath:" + FOLDER + "**/*.*");
        if (files.length == 0) {
            throw new FileNotFoundException("the program is incomplete: no files in " + FOLDER);
        }
        for (Resource file : files) {
            String address = file.getURL().getPath();
            Path copy = folder.resolve(address.substring(address.lastIndexOf(FOLDER) + FOLDER.length()));
            Files.createDirectories(copy.getParent());
            try (InputStream in = file.getInputStream()) {
                Files.copy(in, copy);
            }
        }
        return folder;
    }
}
