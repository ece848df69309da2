package org.proviso.browser;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import org.junit.jupiter.api.extension.AfterTestExecutionCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/** Hands out browsers, closes them after each test, and pictures the page on which one failed. */
final class JourneyExtension implements BeforeAllCallback, ParameterResolver, AfterTestExecutionCallback {

    private static final Namespace OURS = Namespace.create(JourneyExtension.class);

    @Override
    public void beforeAll(ExtensionContext context) {
        if (!Browser.isInstalled()) {
            if ("true".equals(System.getenv("CI"))) {
                throw new AssertionError(Browser.MISSING);
            }
            assumeTrue(false, "skipped: " + Browser.MISSING);
        }
    }

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        Class<?> type = parameter.getParameter().getType();
        return type == Browser.class || type == RunningOffice.class;
    }

    @Override
    public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
        RunningOffice office = RunningOffice.shared();
        return parameter.getParameter().getType() == RunningOffice.class
                ? office
                : context.getStore(OURS)
                        .getOrComputeIfAbsent(
                                Browser.class, any -> Browser.open(office.address(), Window.DESK), Browser.class);
    }

    @Override
    public void afterTestExecution(ExtensionContext context) {
        Browser browser = context.getStore(OURS).remove(Browser.class, Browser.class);
        if (browser == null) {
            return;
        }
        try (browser) {
            if (context.getExecutionException().isPresent()) {
                Picture.take(
                        browser, "failed-" + context.getRequiredTestMethod().getName());
            }
        }
    }
}
