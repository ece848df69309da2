package org.proviso.cli.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.CompletableFuture;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.access.StaffList;
import org.proviso.core.act.ActResult;
import org.proviso.election.ElectionLoadService;
import org.proviso.election.ElectionService;
import org.proviso.election.LoadResult;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.core.annotation.Order;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Component;
import org.springframework.util.FileSystemUtils;

/**
 * Gives a demonstration that has no election yet the invented general election, as its supervisor would load it. The
 * load is one transaction: a start that is killed on the way leaves nothing, and the next one begins again.
 */
@Component
class DemoElectionLoader {

    private static final Logger LOG = LoggerFactory.getLogger(DemoElectionLoader.class);

    private final ElectionService elections;
    private final ElectionLoadService loading;
    private final AccessService access;
    private final StaffList staff;
    private final CompletableFuture<Path> copied;

    /** If there is no election yet, the sample is copied out while the server starts. */
    DemoElectionLoader(ElectionService elections, ElectionLoadService loading, AccessService access, StaffList staff) {
        this.elections = elections;
        this.loading = loading;
        this.access = access;
        this.staff = staff;
        this.copied = isNeeded() ? CompletableFuture.supplyAsync(DemoElectionLoader::copy) : new CompletableFuture<>();
    }

    private boolean isNeeded() {
        return access.isDemonstration() && elections.all().isEmpty();
    }

    private static Path copy() {
        try {
            Path temporary = Files.createTempDirectory("proviso-sample-");
            return CarriedSample.copyTo(temporary);
        } catch (IOException e) {
            throw new UncheckedIOException("the sample election cannot be copied: " + e.getMessage(), e);
        }
    }

    /** After the demo accounts are open, and before the console says that the office is ready. */
    @EventListener(ApplicationReadyEvent.class)
    @Order(10)
    public void loadOnce() {
        if (!isNeeded()) {
            return;
        }
        LOG.info("Loading the sample election, an invented county with 20,000 voters and 240 envelopes ...");
        Path folder = copied.join();
        try {
            asSupervisor(folder);
        } finally {
            remove(Objects.requireNonNull(folder.getParent(), "the sample is copied into a temporary folder"));
        }
    }

    private static void remove(Path temporary) {
        try {
            FileSystemUtils.deleteRecursively(temporary);
        } catch (IOException e) {
            LOG.warn("The sample's temporary files could not be deleted from {}: {}", temporary, e.getMessage());
        }
    }

    private void asSupervisor(Path folder) {
        SecurityContext before = SecurityContextHolder.getContext();
        try {
            SecurityContext supervisor = SecurityContextHolder.createEmptyContext();
            supervisor.setAuthentication(UsernamePasswordAuthenticationToken.authenticated(
                    supervisor().userName(), "", List.of()));
            SecurityContextHolder.setContext(supervisor);
            if (loading.load(folder) instanceof ActResult.Refused<LoadResult> refused) {
                throw new IllegalStateException("The sample election was not loaded: " + refused.words());
            }
        } finally {
            SecurityContextHolder.setContext(before);
        }
    }

    private OfficeUser supervisor() {
        return staff.usersWith(Permission.LOAD_FILES).stream()
                .filter(OfficeUser::demo)
                .findFirst()
                .orElseThrow(() ->
                        new IllegalStateException("The demonstration has no supervisor account to load its sample."));
    }
}
