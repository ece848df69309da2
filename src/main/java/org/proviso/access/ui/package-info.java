/** Signing in and out, changing one's password, and the security rules of the plain pages. */
@NullMarked
package org.proviso.access.ui;

import org.jspecify.annotations.NullMarked;
