/** Colours, pictures and small looks that everything shown shares. */
package truelead.editor.look;
