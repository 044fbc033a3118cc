/** Puts a plan together: contacts, joint plans, order, cautions, consumables, checks. */
package org.counterpull.planning;
