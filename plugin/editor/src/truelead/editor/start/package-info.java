/** The first start of the stand-alone workbench, and the perspective. */
package truelead.editor.start;
