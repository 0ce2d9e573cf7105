/** Reports for other programs: JSON, JUnit and the list to accept findings by. */
package truelead.audit.data;
