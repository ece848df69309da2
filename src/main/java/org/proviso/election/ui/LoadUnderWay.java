package org.proviso.election.ui;

import java.util.Optional;
import org.proviso.election.LoadWatch;
import org.proviso.ui.frame.WorkUnderWay;
import org.springframework.stereotype.Component;

/** Files are being loaded into the tables. */
@Component
class LoadUnderWay implements WorkUnderWay {

    private final LoadWatch watch;

    LoadUnderWay(LoadWatch watch) {
        this.watch = watch;
    }

    @Override
    public Optional<Message> words() {
        return watch.now().map(step -> new Message("Loading files. " + step.words() + ".", step.figures()));
    }
}
