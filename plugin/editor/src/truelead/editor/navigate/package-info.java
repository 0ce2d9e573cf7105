/** The ways through a program: to a name, a bracket, a hole, the blocks of a finding. */
package truelead.editor.navigate;
