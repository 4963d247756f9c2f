/** What the interactive shell offers beyond the library itself. */
package dev.thinair.examples.shell;
