package org.proviso.setup;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.shared.Registration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.proviso.ui.frame.AutoRefresh;
import org.proviso.ui.frame.WorkUnderWayLine;
import org.springframework.security.concurrent.DelegatingSecurityContextRunnable;

/**
 * Something that may take long, done by whoever asked but on a thread of its own, so that the page can say how far it is.
 * What is done at once is answered at once.
 */
final class BackgroundWork {

    /** No progress is shown before this. */
    private static final int AT_ONCE = 800;

    private static final int MILLIS = 500;

    private BackgroundWork() {}

    /** Gives the result, or what was thrown, to the page of whoever asked, on its own thread. */
    static <T> CompletableFuture<T> begin(Supplier<T> work, Consumer<T> done, Consumer<RuntimeException> failed) {
        CompletableFuture<T> future = new CompletableFuture<>();
        Runnable task = () -> {
            try {
                future.complete(work.get());
            } catch (RuntimeException | Error e) {
                future.completeExceptionally(e);
            }
        };
        Thread thread = new Thread(new DelegatingSecurityContextRunnable(task), "beside-a-page");
        thread.start();
        if (!isDone(future)) {
            waitFor(future, done, failed);
        } else {
            tell(future, done, failed);
        }
        return future;
    }

    private static <T> void waitFor(CompletableFuture<T> future, Consumer<T> done, Consumer<RuntimeException> failed) {
        WorkUnderWayLine.look();
        Registration[] polls = new Registration[1];
        polls[0] = AutoRefresh.begin(UI.getCurrent(), MILLIS, () -> {
            if (future.isDone()) {
                polls[0].remove();
                tell(future, done, failed);
            }
        });
    }

    private static boolean isDone(CompletableFuture<?> future) {
        try {
            future.get(AT_ONCE, TimeUnit.MILLISECONDS);
            return true;
        } catch (ExecutionException e) {
            return true;
        } catch (TimeoutException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private static <T> void tell(CompletableFuture<T> future, Consumer<T> done, Consumer<RuntimeException> failed) {
        T result;
        try {
            result = future.get();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                failed.accept(cause);
                return;
            }
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return;
        }
        done.accept(result);
    }
}
