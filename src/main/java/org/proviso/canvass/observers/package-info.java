/** Cases as anybody may read them: numbers, answers, rules and outcomes, without a word that says whose they are. */
@NullMarked
package org.proviso.canvass.observers;

import org.jspecify.annotations.NullMarked;
