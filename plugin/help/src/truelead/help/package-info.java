/** The book of the guide: chapters of the README and rule pages, as pages for the view and for the platform's help. */
package truelead.help;
