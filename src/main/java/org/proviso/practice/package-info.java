/** A first case to practice on, for anybody: an invented envelope from receiving to the proposal, of which nothing is kept. */
@ApplicationModule(allowedDependencies = {"files :: packs", "access"})
@NullMarked
package org.proviso.practice;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
