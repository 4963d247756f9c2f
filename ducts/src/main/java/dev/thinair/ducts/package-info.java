/** Duct systems and the air they really carry. */
package dev.thinair.ducts;
