/**
 * The wizard that plans a thread: what is wanted, the ways to make it, the blocks. It shows what {@code truelead.checker.plan} works out.
 */
package truelead.editor.plan;
