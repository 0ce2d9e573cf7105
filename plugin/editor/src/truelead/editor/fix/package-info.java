/** The fixes of findings, wherever they are offered: at the caret, at the ruler, in Problems. */
package truelead.editor.fix;
