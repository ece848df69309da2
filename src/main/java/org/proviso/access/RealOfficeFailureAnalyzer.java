package org.proviso.access;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Says on the console how to start the server over the data of a real office. */
class RealOfficeFailureAnalyzer extends AbstractFailureAnalyzer<RealOfficeException> {

    @Override
    protected FailureAnalysis analyze(Throwable failure, RealOfficeException cause) {
        return new FailureAnalysis(
                cause.getMessage(),
                "Start the server with --proviso.demo=false, or look at the demonstration in another folder with"
                        + " --proviso.data=FOLDER.",
                cause);
    }
}
