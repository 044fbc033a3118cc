/**
 * The order of work: operations and what must come before what, in a directed acyclic graph whose
 * every edge has its reason in words; the sequence of runs; and the waits.
 */
package org.counterpull.order;
