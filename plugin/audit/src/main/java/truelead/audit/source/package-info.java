/** Programs and other files as they are found and read: any bytes, any name, any folder. */
package truelead.audit.source;
