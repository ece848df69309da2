/** Release in the browser: what waits to be opened, batches, remake sheets and the hand-off. */
@NullMarked
package org.proviso.release.ui;

import org.jspecify.annotations.NullMarked;
