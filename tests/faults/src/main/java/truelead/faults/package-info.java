/**
 * The fault bench: seeded good threading programs, and faults put into them one at a time. It knows nothing of the
 * checker but its command and the names of the rules; threads, holes and feeds are worked out here a second time.
 */
package truelead.faults;
