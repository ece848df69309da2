/** Signing in and out, the own password, and the lock on every plain page. */
@NullMarked
package org.proviso.access.ui;

import org.jspecify.annotations.NullMarked;
