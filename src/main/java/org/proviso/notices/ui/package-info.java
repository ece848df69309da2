/** Notices in the browser: voters still to notify, the letters, and their log. */
@NullMarked
package org.proviso.notices.ui;

import org.jspecify.annotations.NullMarked;
