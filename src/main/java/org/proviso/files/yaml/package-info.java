/**
 * Reading YAML as a tree whose every value knows its line.
 * Only plain documents are read: no tags, no code.
 */
@NullMarked
package org.proviso.files.yaml;

import org.jspecify.annotations.NullMarked;
