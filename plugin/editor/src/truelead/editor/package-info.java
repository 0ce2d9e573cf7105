/**
 * What plugin.xml and code know under one name. All packages below lean on it, and each only on those before it in the order of
 * {@code DirectionTest}.
 */
package truelead.editor;
