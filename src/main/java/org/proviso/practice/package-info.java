/** A first case to practice on, for anybody: an invented envelope from receiving to the proposal, of which nothing is kept. */
@ApplicationModule(
        allowedDependencies = {
            "access",
            "core",
            "core::adjudication.facts",
            "core::adjudication.finding",
            "core::adjudication.judging",
            "core::adjudication.questions",
            "core::rules",
            "files::packs"
        })
@NullMarked
package org.proviso.practice;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
